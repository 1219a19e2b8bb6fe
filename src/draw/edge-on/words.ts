import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import { mustCover, nearest } from '../../length/grid.ts'
import { inches, type Length, mm } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import { about, cardName, namesOf, sentence } from '../phrases.ts'
import { toMm } from '../plane.ts'
import type { ChosenCut } from './place.ts'
import type { Cut } from './section.ts'

/** What a finger can tell of a thickness. */
const felt = { mm: mm(0.1), in: inches(1, 32) } as const

/** `about 2.1 mm` */
export const thickText = (thickness: Length, wording: Wording): string =>
  about(mustCover(thickness, felt[wording.unit]), wording)

export const asLength = (x: number): Length => mm(Math.round(x * 1e6) / 1e6)

/** What stands below the drawing: by how much the thickness is exaggerated, and where the card is cut. */
export function edgeCaption(
  { cut, same }: ChosenCut,
  card: Card,
  closed: Closed,
  times: number,
  wording: Wording,
): string[] {
  const { say } = wording
  const missing = missingFrom(cut, card)
  return [
    say('figures.edge-caption', { times, along: cut.along }),
    ...(same || (isMiddle(cut, closed) && missing.length === 0)
      ? []
      : [`${sentence(whereText(cut, card, closed, wording))}.`]),
    ...(missing.length > 0 && missing.length < 4
      ? [say('figures.not-in-this-cut', { panels: namesOf(missing, wording) })]
      : []),
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

function whereText(cut: Cut, { grid }: Card, closed: Closed, wording: Wording): string {
  if (isMiddle(cut, closed)) return wording.say('figures.cut-in-the-middle')
  const mark = nearest(asLength(cut.at), grid)
  const isAbout = Math.abs(toMm(mark) - cut.at) > 1e-3
  return wording.say('figures.cut-at', {
    at: isAbout ? about(mark, wording) : wording.length(mark),
    along: cut.along,
  })
}

/** What a sighted reader takes from the drawing. */
export function edgeWords(
  chosen: ChosenCut,
  card: Card,
  closed: Closed,
  times: number,
  of: string | undefined,
  wording: Wording,
): string {
  const { say, name } = wording
  const { cut, same } = chosen
  const here = new Set(cut.bars.map(({ plate }) => plate))
  const order = closed.order.filter((one) => here.has(one))
  const missing = closed.order.filter((one) => !here.has(one))
  const bends = cut.crossings.filter(({ folded }) => folded).sort((a, b) => a.at - b.at)
  const thickest = Math.max(...cut.columns.map(({ thickness }) => thickness))
  const foam = card.structure.bonds.filter((b) => toMm(b.height) > 0 && here.has(b.plate) && here.has(b.onto))
  const letters = card.lettering.filter((one) => cut.pads.some(({ pad }) => pad.name === one.name))
  const elsewhere = Math.abs(thickest - toMm(closed.thickness)) > 1e-3
  const folded = bends.map(({ hinge, at }) =>
    say('figures.bend-at', { panels: namesOf(hinge.between, wording), place: placeOf(at, cut.long) }),
  )
  return [
    say('figures.seen-edge-on', {
      card: cardName(card, wording),
      along: cut.along,
      same: same ? 'yes' : 'no',
      where: whereText(cut, card, closed, wording),
      long: wording.length(cut.along === 'width' ? closed.size.width : closed.size.height),
      thick: thickText(asLength(thickest), wording),
      times,
    }),
    ...(elsewhere ? [say('figures.elsewhere', { thick: thickText(closed.thickness, wording) })] : []),
    say('figures.front-to-back', { panels: namesOf(order, wording) }),
    ...(folded.length > 0 ? [say('figures.bends', { bends: folded.join('; ') })] : []),
    ...foam.map(({ plate, onto }) => say('figures.foam-holds', { upper: name(plate), lower: name(onto) })),
    ...letters.map((one) =>
      say('figures.letters-on', { letters: one.letters.join(''), piece: name(one.on) }),
    ),
    ...(missing.length > 0 ? [say('figures.not-in-this-cut', { panels: namesOf(missing, wording) })] : []),
    ...(of ? [say('figures.heavier', { piece: name(of) })] : []),
  ].join(' ')
}

const placeOf = (at: number, long: number): 'left' | 'right' | 'between' =>
  at < 0.02 * long ? 'left' : at > 0.98 * long ? 'right' : 'between'
