import { inches, type Length, minus, mm, type Size } from '../../length/length.ts'

/** Who names the size. The letters of the US trade are also those of ISO sheets, so a name is never said without it. */
export type Series = 'ISO 269' | 'US trade'

/** A bought envelope. Sizes have the shorter side first. */
export interface StandardEnvelope {
  readonly name: string
  readonly series: Series
  /** From edge to edge. */
  readonly size: Size
  /** The largest flat card that goes in without force. */
  readonly holds: Size
  /** A larger one, where another list of sizes has it: the card goes in, but tightly. */
  readonly atMost?: Size
}

/** `A7 (US trade)`. */
export const fullName = ({ name, series }: StandardEnvelope): string => `${name} (${series})`

/**
 * What an ISO envelope must have each way over what goes in, in mm. The standard gives no inside sizes; 7 mm is the least
 * that any of its envelopes has over the ISO sheet it is made for, which is the A7 sheet in C7 (computed).
 */
const isoRoom = 7

/**
 * ISO 269. C3 to C7: PWG 5101.1 media names as coded in OpenPrinting/cups, cups/pwg-media.c, read 2026-08. DL and C6/C5
 * there too, and in DIN 678-1:1998 and DIN 680:1995 as quoted on the ConTeXt mailing list, 2004. C7/C6 and B4 to B6: the
 * table of ISO 269 as reproduced in encyclopedia articles on envelope formats, read 2026-11.
 */
const iso: readonly (readonly [name: string, width: number, height: number])[] = [
  ['C7', 81, 114],
  ['C7/C6', 81, 162],
  ['C6', 114, 162],
  ['B6', 125, 176],
  ['DL', 110, 220],
  ['C6/C5', 114, 229],
  ['C5', 162, 229],
  ['B5', 176, 250],
  ['C4', 229, 324],
  ['B4', 250, 353],
  ['C3', 324, 458],
]

/** Sizes in inches: the envelope, the published largest insert, and the largest insert on another list. */
type Us = readonly [
  name: string,
  size: readonly [number, number],
  holds: readonly [number, number],
  atMost?: readonly [number, number],
]

/**
 * US announcement envelopes with their largest enclosures: ThoughtCo, "Envelope Design Styles", read 2026-11. For A1 and
 * A2 another list has larger ones: boone_envelope_knowledge.md in bobtucker1129/quote_bot @ 2f310c0b5057, read 2026-11.
 * A9 is left out: no list at hand has its enclosure.
 */
const announcement: readonly Us[] = [
  ['A1', [3.625, 5.125], [3.5, 4.75], [3.5, 5]],
  ['A2', [4.375, 5.75], [4.125, 5.5], [4.25, 5.5]],
  ['A6', [4.75, 6.5], [4.5, 6.25]],
  ['A7', [5.25, 7.25], [5, 7]],
  ['A8', [5.5, 8.125], [5.25, 7.875]],
  ['A-Long', [3.875, 8.875], [3.625, 8.625]],
  ['A10', [6, 9.5], [5.75, 9.25]],
]

/** US commercial envelopes with their largest enclosures: SizeChartly, envelope size chart, read 2026-11. */
const commercial: readonly Us[] = [
  ['6 1/4', [3.5, 6], [3.25, 5.75]],
  ['6 3/4', [3.625, 6.5], [3.5, 6.25]],
  ['Monarch (7 3/4)', [3.875, 7.5], [3.75, 7.25]],
  ['#9', [3.875, 8.875], [3.75, 8.675]],
  ['#10', [4.125, 9.5], [4, 9.25]],
]

const size = ([width, height]: readonly [number, number], unit: (n: number) => Length): Size => ({
  width: unit(width),
  height: unit(height),
})

const isoEnvelope = ([name, ...sides]: (typeof iso)[number]): StandardEnvelope => {
  const outer = size(sides, mm)
  return { name, series: 'ISO 269', size: outer, holds: holdsOf(outer) }
}

/** The largest flat card for an envelope that no list has a card for: what an ISO envelope would take. */
export function holdsOf({ width, height }: Size): Size {
  const room = mm(isoRoom)
  return { width: minus(width, room), height: minus(height, room) }
}

const usEnvelope = ([name, outer, holds, atMost]: Us): StandardEnvelope => ({
  name,
  series: 'US trade',
  size: size(outer, inches),
  holds: size(holds, inches),
  ...(atMost && { atMost: size(atMost, inches) }),
})

/** The standard envelopes, the smallest first. */
export const standardEnvelopes: readonly StandardEnvelope[] = [
  ...iso.map(isoEnvelope),
  ...[...announcement, ...commercial].map(usEnvelope),
].sort((a, b) => a.size.width.mul(a.size.height).compare(b.size.width.mul(b.size.height)))
