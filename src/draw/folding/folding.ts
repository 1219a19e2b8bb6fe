import type { ProvenCard } from '../../lesson/lesson.ts'
import type { Locale } from '../../wording/locales.ts'
import type { Wording } from '../../wording/wording.ts'
import { boxAround, boxOf } from '../box.ts'
import type { FigureFinding } from '../figure.ts'
import { type FigureOptions, usualRoom } from '../fit.ts'
import { rim, type Sheet } from '../frame.ts'
import { nameShare, point, usualText } from '../ink.ts'
import { cardName } from '../phrases.ts'
import { picked } from '../picked.ts'
import { makePalette } from '../stock.ts'
import { type DrawnStage, drawnStages } from './drawn.ts'
import { bestLayout, type Cell, signOf } from './layout.ts'
import { stageMarks } from './marks.ts'
import { wayTo } from './target.ts'
import type { Way } from './way.ts'

/**
 * How the card is folded: a strip of three to six stages, all seen by one eye and at one scale.
 *
 * @param of a piece that has creases: it is folded alone, from flat to how it lies in the shut card, or how it is bent
 * before it is stuck on. Without it the whole card is made, from the flat sheet with what can be stuck on it there to the shut card; a card that does not
 * stand on the way there stands in the last stage.
 */
export function drawFolding(
  card: ProvenCard,
  of: string | undefined,
  wording: Wording,
  options: FigureOptions,
): Sheet | FigureFinding {
  const way = wayTo(card, of)
  if ('rule' in way) return way
  const drawn = stagesOfWay(way, wording)
  const size = (options.text ?? usualText) * point * nameShare
  const usual = { ...usualRoom, ...options }
  const room = { maxWidth: usual.maxWidth - 2 * rim, maxHeight: usual.maxHeight - 2 * rim }
  const hasWords = picked(options.labels)('names')
  const sign = signOf(hasWords ? wording.say('figures.turn-over') : '', size)
  const cells = drawn.map((one, i): Cell => cellOf(one, `${i + 1}`, hasWords ? one.words : ''))
  const long = Math.max(...cells.map(({ box }) => Math.max(box.right - box.left, box.bottom - box.top)))
  const most = Math.min(options.mostScale ?? 1, 1)
  const least = Math.min(most, 14 / long)
  const { laid, scale } = bestLayout(cells, room, { least, most }, size, sign)
  const pen = { scale, size, sign, palette: makePalette(card.card.structure) }
  const marks = drawn.flatMap((one, i) => {
    const place = laid.cells[i]
    return place ? stageMarks(card.card, way.camera, one, place, { ...pen, number: `${i + 1}` }) : []
  })
  return {
    marks,
    title: way.piece
      ? wording.say('figures.folding-piece', { piece: wording.name(way.piece.name) })
      : wording.say('figures.folding-card'),
    alternative: told(card, way, drawn, wording),
    ...(options.key !== undefined && { key: options.key }),
  }
}

function cellOf({ stage, paths, isTurned }: DrawnStage, number: string, words: string): Cell {
  const box = boxOf([stage.picture.box, ...paths.map(({ spots }) => boxAround(spots))])
  return { box, number, words, isTurned }
}

/** The stages in words, for who cannot see them. */
function told({ card }: ProvenCard, way: Way, drawn: readonly DrawnStage[], wording: Wording): string {
  const { say, name, list } = wording
  const stages = drawn.map(({ words, isTurned }, i) =>
    say('figures.folding-stage', { number: i + 1, words, turned: isTurned ? 'yes' : 'no' }),
  )
  const shown = new Set(drawn.flatMap(({ stage }) => [...stage.pose.keys()]))
  const missing = way.structure.pieces.filter(
    (piece) =>
      piece.kind !== 'loose' &&
      !way.structure.plates.some((plate) => plate.piece === piece.name && shown.has(plate.name)),
  )
  const values = { count: drawn.length, stages: stages.join('. ') }
  return [
    way.piece
      ? say('figures.piece-folded', { piece: name(way.piece.name), ...values })
      : say('figures.card-folded', { card: cardName(card, wording), ...values }),
    ...(missing.length > 0
      ? [
          say('figures.made-apart', {
            pieces: list(missing.map((piece) => say('figures.the-piece', { piece: name(piece.name) }))),
          }),
        ]
      : []),
  ].join(' ')
}

/** The same at every scale, and most of the work. */
function stagesOfWay(way: Way, wording: Wording): readonly DrawnStage[] {
  const known = strips.get(way) ?? new Map<Locale, readonly DrawnStage[]>()
  strips.set(way, known)
  const drawn = known.get(wording.locale) ?? drawnStages(way, wording)
  known.set(wording.locale, drawn)
  return drawn
}

const strips = new WeakMap<Way, Map<Locale, readonly DrawnStage[]>>()
