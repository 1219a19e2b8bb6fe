import Fraction from 'fraction.js'
import type { Piece, Structure } from '../card/structure.ts'
import { type Length, larger, minus, mm, plus, type Size, shorter, smaller, toMm } from '../length/length.ts'
import type { Closed } from './pose.ts'
import { spotAt } from './space.ts'

/** A rectangle of the shut card. */
export interface Box {
  readonly left: Length
  readonly right: Length
  readonly bottom: Length
  readonly top: Length
}

export type BoxEdge = keyof Box

/** Something that is stuck on and reaches beyond the panels of the mechanism when the card is shut. */
export interface Overhang {
  /** The plate, or the pad on it. */
  readonly name: string
  readonly plate: string
  readonly kind: Piece['kind'] | 'pad'
  readonly box: Box
  /** Beyond which edges, and how far. */
  readonly beyond: Readonly<Partial<Record<BoxEdge, Length>>>
}

/** Less than this, in mm, is an error of rounding. */
const least = mm(new Fraction(1, 1000))

/** The rectangle round the mechanism's own panels when the card is shut. */
export function mechanismBox({ plates, pieces }: Structure, closed: Closed): Box | undefined {
  const base = new Set(pieces.filter(({ kind }) => kind === 'base').map(({ name }) => name))
  const own = new Set(plates.filter(({ piece }) => base.has(piece)).map(({ name }) => name))
  const boxes = closed.plates.filter(({ plate }) => own.has(plate)).map(boxOfLaid)
  return boxes.length > 0 ? boxes.reduce(round) : undefined
}

export const sizeOfBox = ({ left, right, bottom, top }: Box): Size => ({
  width: minus(right, left),
  height: minus(top, bottom),
})

/** Everything that reaches beyond the mechanism's own panels when the card is shut. */
export function overhangsOf(structure: Structure, closed: Closed): Overhang[] {
  const card = mechanismBox(structure, closed)
  const pieces = new Map(structure.pieces.map((piece) => [piece.name, piece.kind]))
  const kinds = new Map(structure.plates.map(({ name, piece }) => [name, pieces.get(piece) ?? 'base']))
  const parts = closed.plates.flatMap((laid): Omit<Overhang, 'beyond'>[] => {
    const [name, kind] = [laid.plate, kinds.get(laid.plate) ?? 'base']
    return kind === 'base' ? [] : [{ name, plate: name, kind, box: boxOfLaid(laid) }]
  })
  return [...parts, ...padsIn(structure, closed)].flatMap((part) => {
    const beyond = card ? beyondEdges(part.box, card) : {}
    return Object.keys(beyond).length > 0 ? [{ ...part, beyond }] : []
  })
}

function padsIn({ pads = [] }: Structure, { pose }: Closed): Omit<Overhang, 'beyond'>[] {
  return pads.flatMap(({ name, onto, outline }) => {
    const at = pose.get(onto)
    if (!at) return []
    const spots = outline.map(({ x, y }) => spotAt(at, toMm(x), toMm(y)))
    const box = spots.map(
      ([x, y]): Box => ({ left: exact(x), right: exact(x), bottom: exact(y), top: exact(y) }),
    )
    return [{ name, plate: onto, kind: 'pad', box: box.reduce(round) }]
  })
}

const exact = (x: number): Length => mm(new Fraction(Math.round(x * 1e6), 1_000_000))

const boxOfLaid = ({ left, bottom, size }: Closed['plates'][number]): Box => ({
  left,
  right: plus(left, size.width),
  bottom,
  top: plus(bottom, size.height),
})

const round = (a: Box, b: Box): Box => ({
  left: smaller(a.left, b.left),
  right: larger(a.right, b.right),
  bottom: smaller(a.bottom, b.bottom),
  top: larger(a.top, b.top),
})

function beyondEdges(part: Box, card: Box): Overhang['beyond'] {
  const all: readonly [BoxEdge, Length][] = [
    ['left', minus(card.left, part.left)],
    ['right', minus(part.right, card.right)],
    ['bottom', minus(card.bottom, part.bottom)],
    ['top', minus(part.top, card.top)],
  ]
  return Object.fromEntries(all.filter(([, by]) => shorter(least, by)))
}
