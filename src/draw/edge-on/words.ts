import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import { listOf } from '../../length/finding.ts'
import { formatLength } from '../../length/format.ts'
import { mustCover, nearest } from '../../length/grid.ts'
import { inches, type Length, mm, type Unit } from '../../length/length.ts'
import { sentence } from '../flat/words.ts'
import { toMm } from '../plane.ts'
import type { ChosenCut } from './place.ts'
import type { Cut } from './section.ts'

/** What a finger can tell of a thickness. */
const felt = { mm: mm(0.1), in: inches(1, 32) } as const

/** `about 2.1 mm` */
export const thickText = (thickness: Length, unit: Unit): string =>
  `about ${formatLength(mustCover(thickness, felt[unit]), unit)}`

export const asLength = (x: number): Length => mm(Math.round(x * 1e6) / 1e6)

/** `12 times as thick as they are` */
export const timesText = (times: number): string =>
  times === 1 ? 'as thick as they are' : `${times} times as thick as they are`

/** What stands below the drawing: by how much the thickness is exaggerated, and where the card is cut. */
export function edgeCaption(
  { cut, same }: ChosenCut,
  card: Card,
  closed: Closed,
  times: number,
  unit: Unit,
): string[] {
  const how = `Layers drawn ${timesText(times)}; front on top${cut.along === 'height' ? ', lower edge on the left' : ''}.`
  const missing = missingFrom(cut, card)
  return [
    how,
    ...(same || (isMiddle(cut, closed) && missing.length === 0)
      ? []
      : [`${sentence(whereText(cut, card, closed, unit))}.`]),
    ...(missing.length > 0 && missing.length < 4 ? [`Not in this cut: ${listOf(missing)}.`] : []),
  ]
}

const isMiddle = ({ along, at }: Cut, { size }: Closed): boolean =>
  Math.abs(at - toMm(along === 'width' ? size.height : size.width) / 2) < 1e-3

/** Pieces that lie elsewhere. */
function missingFrom({ bars }: Cut, { structure: { pieces, plates } }: Card): string[] {
  const here = new Set(bars.map(({ plate }) => plates.find(({ name }) => name === plate)?.piece))
  const there = new Set(plates.map(({ piece }) => piece))
  return pieces.map(({ name }) => name).filter((name) => there.has(name) && !here.has(name))
}

function whereText(cut: Cut, { grid }: Card, closed: Closed, unit: Unit): string {
  if (isMiddle(cut, closed)) return 'cut across the middle'
  const mark = nearest(asLength(cut.at), grid)
  const about = Math.abs(toMm(mark) - cut.at) > 1e-3 ? 'about ' : ''
  const from = cut.along === 'width' ? 'above the lower edge' : 'from the left edge'
  return `cut ${about}${formatLength(mark, unit)} ${from}, where most layers lie`
}

/** What a sighted reader takes from the drawing. */
export function edgeWords(
  chosen: ChosenCut,
  card: Card,
  closed: Closed,
  times: number,
  of: string | undefined,
  unit: Unit,
): string {
  const { cut, same } = chosen
  const here = new Set(cut.bars.map(({ plate }) => plate))
  const order = closed.order.filter((name) => here.has(name))
  const missing = closed.order.filter((name) => !here.has(name))
  const bends = cut.crossings.filter(({ folded }) => folded).sort((a, b) => a.at - b.at)
  const thickest = Math.max(...cut.columns.map(({ thickness }) => thickness))
  const long = formatLength(cut.along === 'width' ? closed.size.width : closed.size.height, unit)
  const foam = card.structure.bonds.filter((b) => toMm(b.height) > 0 && here.has(b.plate) && here.has(b.onto))
  const letters = card.lettering.filter(({ name }) => cut.pads.some(({ pad }) => pad.name === name))
  const thick = thickText(asLength(thickest), unit)
  const elsewhere = Math.abs(thickest - toMm(closed.thickness)) > 1e-3
  return [
    `The ${card.fold} card shut, seen along its folds from its ${cut.along === 'width' ? 'lower edge' : 'right edge, the lower edge on the left'}${same ? '' : `, ${whereText(cut, card, closed, unit)}`}: ${long} wide and ${thick} thick; layers drawn ${timesText(times)}.`,
    ...(elsewhere ? [`Elsewhere it is ${thickText(closed.thickness, unit)} thick.`] : []),
    `From front to back: ${listOf(order)}.`,
    ...(bends.length > 0
      ? [
          `Folded: ${bends.map(({ hinge, at }) => `${listOf(hinge.between)} ${sideText(at, cut.long)}`).join('; ')}.`,
        ]
      : []),
    ...foam.map(({ plate, onto }) => `Foam holds ${plate} away from ${onto}.`),
    ...letters.map((one) => `The letters ${one.letters.join('')} are on ${one.on}.`),
    ...(missing.length > 0 ? [`Not in this cut: ${listOf(missing)}.`] : []),
    ...(of ? [`With a heavier outline and a bold name: ${of}.`] : []),
  ].join(' ')
}

const sideText = (at: number, long: number): string =>
  at < 0.02 * long ? 'at the left' : at > 0.98 * long ? 'at the right' : 'between the two edges'
