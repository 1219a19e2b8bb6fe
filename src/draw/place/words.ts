import { listOf } from '../../length/finding.ts'
import { formatLength, formatSize } from '../../length/format.ts'
import { isOnGrid } from '../../length/grid.ts'
import { inches, type Length, type Unit } from '../../length/length.ts'
import { sentence } from '../flat/words.ts'
import type { Entry } from '../legend.ts'
import type { Picked } from '../picked.ts'
import type { PlaceView } from './view.ts'

const edges = ['left', 'right', 'top', 'bottom'] as const
const pairs = [
  ['left', 'right', 'each side'],
  ['top', 'bottom', 'top and bottom'],
] as const

/** `1/16 in from each side, flush at top and bottom`. */
function borderWords({ border }: PlaceView, unit: Unit): string {
  const zero = (x: Length) => x.equals(0)
  const first = border.left
  if (edges.every((edge) => border[edge].equals(first)))
    return zero(first) ? 'flush on all four sides' : `${formatLength(first, unit)} from the edge all round`
  const flush: string[] = []
  const away: string[] = []
  for (const [a, b, both] of pairs) {
    if (border[a].equals(border[b])) {
      if (zero(border[a])) flush.push(both === 'each side' ? 'both sides' : both)
      else away.push(`${formatLength(border[a], unit)} from ${both}`)
    } else
      for (const edge of [a, b])
        if (zero(border[edge])) flush.push(`the ${edge}`)
        else away.push(`${formatLength(border[edge], unit)} from the ${edge}`)
  }
  return [
    ...(away.length > 0 ? [listOf(away)] : []),
    ...(flush.length > 0 ? [`flush at ${listOf(flush)}`] : []),
  ].join(', ')
}

/** Foam is sold in millimetres or in parts of an inch; a height that no inch ruler has is said in millimetres. */
const foamHeight = (raise: Length, unit: Unit): string =>
  formatLength(raise, isOnGrid(raise, inches(1, 64)) ? unit : 'mm')

/** What the drawing shows, in a line or two below it. */
export function placeLegend(view: PlaceView, unit: Unit, has: Picked): Entry[] {
  const { panels, elsewhere, raise, back, ground } = view
  const spans = view.laid.length < panels.length
  const others = [...(spans ? [] : panels.slice(1).map((p) => p.name)), ...elsewhere]
  return [
    ...(back
      ? [{ text: ground.kind === 'base' ? 'seen from the outside of the card' : 'seen from the back' }]
      : []),
    ...(has('borders') ? [{ text: borderWords(view, unit) }] : []),
    ...(has('names') && others.length > 0 ? [{ text: `the same on ${listOf(others)}` }] : []),
    ...(raise.equals(0) || !has('thickness') ? [] : [{ text: `on foam ${foamHeight(raise, unit)} high` }]),
  ]
}

/** What a sighted reader takes from the drawing. */
export function placeWords(view: PlaceView, unit: Unit, has: Picked): string {
  const { piece, panels, raise, onto } = view
  const where = listOf([...panels.map((p) => p.name), ...view.elsewhere])
  const foam = raise.equals(0) || !has('thickness') ? '' : `, on foam ${foamHeight(raise, unit)} high`
  const reaches = view.laid.length < panels.length
  return [
    `${sentence(piece.name)}, ${piece.stock.name},${has('size') ? ` ${formatSize(piece.size, unit)} (width first),` : ''}`,
    `${reaches ? 'reaches across' : 'sits on'} ${onto ? `${onto} ` : ''}${where}${foam}${has('borders') ? `: ${borderWords(view, unit)}` : ''}.`,
    ...(piece.stock.direction === 'upright' ? ['The pattern stands upright.'] : []),
  ].join(' ')
}
