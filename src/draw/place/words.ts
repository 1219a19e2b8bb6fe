import { isOnGrid } from '../../length/grid.ts'
import { inches, type Length } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Entry } from '../legend.ts'
import { namesOf, sentence } from '../phrases.ts'
import type { Picked } from '../picked.ts'
import type { PlaceView } from './view.ts'

const edges = ['left', 'right', 'top', 'bottom'] as const
const pairs = [
  ['left', 'right', 'sides'],
  ['top', 'bottom', 'ends'],
] as const

/** `1/16 in from each side, flush at top and bottom`. */
function borderWords({ border }: PlaceView, wording: Wording): string {
  const { say } = wording
  const first = border.left
  if (edges.every((edge) => border[edge].equals(first)))
    return first.equals(0)
      ? say('figures.flush-all-round')
      : say('figures.border-all-round', { border: wording.length(first) })
  const sides = pairs.flatMap(([a, b, both]): { edge: string; width: Length }[] =>
    border[a].equals(border[b])
      ? [{ edge: both, width: border[a] }]
      : [a, b].map((edge) => ({ edge, width: border[edge] })),
  )
  const away = sides.filter(({ width }) => !width.equals(0))
  const flush = sides.filter(({ width }) => width.equals(0))
  return [
    ...(away.length > 0
      ? [
          wording.list(
            away.map(({ edge, width }) =>
              say('figures.border-from', { border: wording.length(width), edge }),
            ),
          ),
        ]
      : []),
    ...(flush.length > 0
      ? [
          say('figures.flush-at', {
            edges: wording.list(flush.map(({ edge }) => say('figures.flush-edge', { edge }))),
          }),
        ]
      : []),
  ].join(', ')
}

/** Foam is sold in millimetres or in parts of an inch; a height that no inch ruler has is said in millimetres. */
const foamHeight = (raise: Length, wording: Wording): string =>
  (isOnGrid(raise, inches(1, 64)) ? wording : wording.in('mm')).length(raise)

/** What the drawing shows, in a line or two below it. */
export function placeLegend(view: PlaceView, wording: Wording, has: Picked): Entry[] {
  const { say } = wording
  const { panels, elsewhere, raise, back, ground } = view
  const spans = view.laid.length < panels.length
  const others = [...(spans ? [] : panels.slice(1).map((p) => p.name)), ...elsewhere]
  return [
    ...(back
      ? [{ text: say('figures.seen-from', { side: ground.kind === 'base' ? 'outside' : 'back' }) }]
      : []),
    ...(has('borders') ? [{ text: borderWords(view, wording) }] : []),
    ...(has('names') && others.length > 0
      ? [{ text: say('figures.the-same-on', { panels: namesOf(others, wording) }) }]
      : []),
    ...(raise.equals(0) || !has('thickness')
      ? []
      : [{ text: say('figures.on-foam', { height: foamHeight(raise, wording) }) }]),
  ]
}

/** What a sighted reader takes from the drawing. */
export function placeWords(view: PlaceView, wording: Wording, has: Picked): string {
  const { say } = wording
  const { piece, panels, raise, onto = 'none' } = view
  return [
    say('figures.in-place', {
      piece: sentence(wording.name(piece.name)),
      stock: wording.name(piece.stock.name),
      sized: has('size') ? 'yes' : 'no',
      size: wording.size(piece.size),
      how: view.laid.length < panels.length ? 'across' : 'on',
      onto,
      panels: namesOf([...panels.map((p) => p.name), ...view.elsewhere], wording),
      raised: raise.equals(0) || !has('thickness') ? 'no' : 'yes',
      height: foamHeight(raise, wording),
      bordered: has('borders') ? 'yes' : 'no',
      borders: has('borders') ? borderWords(view, wording) : '',
    }),
    ...(piece.stock.direction === 'upright' ? [say('figures.pattern-upright')] : []),
  ].join(' ')
}
