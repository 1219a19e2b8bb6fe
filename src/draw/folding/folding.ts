import { listOf } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import { boxAround, boxOf } from '../box.ts'
import type { FigureFinding } from '../figure.ts'
import { type FigureOptions, usualRoom } from '../fit.ts'
import { rim, type Sheet } from '../frame.ts'
import { nameShare, point, usualText } from '../ink.ts'
import { picked } from '../picked.ts'
import { makePalette } from '../stock.ts'
import { type DrawnStage, drawnStages } from './drawn.ts'
import { bestLayout, type Cell, signRoom } from './layout.ts'
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
  _unit: Unit,
  options: FigureOptions,
): Sheet | FigureFinding {
  const way = wayTo(card, of)
  if ('rule' in way) return way
  const drawn = stagesOfWay(way)
  const size = (options.text ?? usualText) * point * nameShare
  const usual = { ...usualRoom, ...options }
  const room = { maxWidth: usual.maxWidth - 2 * rim, maxHeight: usual.maxHeight - 2 * rim }
  const hasWords = picked(options.labels)('names')
  const cells = drawn.map((one, i): Cell => cellOf(one, `${i + 1}`, hasWords ? one.words : ''))
  const long = Math.max(...cells.map(({ box }) => Math.max(box.right - box.left, box.bottom - box.top)))
  const most = Math.min(options.mostScale ?? 1, 1)
  const least = Math.min(most, 14 / long)
  const { laid, scale } = bestLayout(cells, room, { least, most }, size, signRoom(hasWords ? size : 0))
  const pen = { scale, size, hasWords, palette: makePalette(card.card.structure) }
  const marks = drawn.flatMap((one, i) => {
    const place = laid.cells[i]
    return place ? stageMarks(card.card, way.camera, one, place, { ...pen, number: `${i + 1}` }) : []
  })
  return {
    marks,
    title: way.piece ? `Folding the ${way.piece.name}` : 'Folding the card',
    alternative: told(card, way, drawn),
    ...(options.key !== undefined && { key: options.key }),
  }
}

function cellOf({ stage, paths, isTurned }: DrawnStage, number: string, words: string): Cell {
  const box = boxOf([stage.picture.box, ...paths.map(({ spots }) => boxAround(spots))])
  return { box, number, words, isTurned }
}

/** The stages in words, for who cannot see them. */
function told({ card }: ProvenCard, way: Way, drawn: readonly DrawnStage[]): string {
  const subject = way.piece
    ? `the ${way.piece.name}`
    : `the ${card.fold}${/\b(card|box|band)$/.test(card.fold) ? '' : ' card'}`
  const stages = drawn.map(
    ({ words, isTurned }, i) => `${i + 1}, ${isTurned ? 'turn over, then ' : ''}${words}`,
  )
  const shown = new Set(drawn.flatMap(({ stage }) => [...stage.pose.keys()]))
  const missing = way.structure.pieces.filter(
    ({ name, kind }) =>
      kind !== 'loose' &&
      !way.structure.plates.some((plate) => plate.piece === name && shown.has(plate.name)),
  )
  const apart =
    missing.length > 0
      ? ` Made apart and not shown: ${listOf(missing.map(({ name }) => `the ${name}`))}.`
      : ''
  return `Folding ${subject}, in ${drawn.length} stages: ${stages.join('. ')}.${apart}`
}

/** The same at every scale, and most of the work. */
function stagesOfWay(way: Way): readonly DrawnStage[] {
  const known = strips.get(way)
  if (known) return known
  const drawn = drawnStages(way)
  strips.set(way, drawn)
  return drawn
}

const strips = new WeakMap<Way, readonly DrawnStage[]>()
