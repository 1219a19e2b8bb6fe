import type { Card } from '../card/card.ts'
import { ontoPanel } from '../card/onto.ts'
import type { Piece } from '../card/structure.ts'
import { numberIn, type Size } from '../length/length.ts'
import { flatParts } from './flat/parts.ts'
import { type Flat, flatLine, flatLoop, toMm } from './plane.ts'

/** A line that a machine follows, in mm from the lower left corner of its piece, y upwards. */
export interface Path {
  readonly spots: readonly Flat[]
  readonly closed: boolean
}

/** What is done along a line. */
export const cutKinds = ['cut', 'valley', 'mountain', 'mark'] as const
export type CutKind = (typeof cutKinds)[number]

/** Everything a machine does to one piece, its inside or its front up. */
export interface CutLines {
  readonly name: string
  readonly stock: string
  /** How many of it one card has. */
  readonly count: number
  /** Exactly, and in mm. */
  readonly size: Size
  readonly width: number
  readonly height: number
  readonly lines: Readonly<Record<CutKind, readonly Path[]>>
}

/** The lines of every piece of a card, its envelope last. */
export function cutLinesOf(card: Card): CutLines[] {
  const { envelope } = card
  const sheet = envelope && { ...card, structure: envelope.structure, layers: [], lettering: [] }
  return [
    ...card.structure.pieces.map((piece) => cutLines(card, piece)),
    ...(sheet ? sheet.structure.pieces.map((piece) => cutLines(sheet, piece)) : []),
  ]
}

function cutLines(card: Card, piece: Piece): CutLines {
  const { outline, holes, slits, creases } = flatParts(card, piece)
  const scored = (fold: 'valley' | 'mountain'): Path[] =>
    creases.filter((hinge) => hinge.fold === fold).map(({ line }) => open(flatLine(line)))
  return {
    name: piece.name,
    stock: piece.stock.name,
    count: piece.count,
    size: piece.size,
    width: numberIn(piece.size.width, 'mm'),
    height: numberIn(piece.size.height, 'mm'),
    lines: {
      // Windows and slits first: what is cut out of a sheet lies still only while the sheet is whole.
      cut: [...slits.map(open), ...[...holes, ...outline].map(closed)],
      valley: scored('valley'),
      mountain: scored('mountain'),
      mark: [...letterMarks(card, piece), ...layerMarks(card, piece)],
    },
  }
}

const open = (spots: readonly Flat[]): Path => ({ spots, closed: false })
const closed = (spots: readonly Flat[]): Path => ({ spots, closed: true })

/** Marks are short, in mm, so that what is stuck there covers them. */
const short = 3

/** The left edge of each letter, from the lower edge of its strip. */
function letterMarks({ lettering }: Card, { name, size }: Piece): Path[] {
  const high = Math.min(short, toMm(size.height) / 2)
  return lettering
    .filter(({ on }) => on === name)
    .flatMap(({ marks }) =>
      marks.map((mark) =>
        open([
          [toMm(mark), 0],
          [toMm(mark), high],
        ]),
      ),
    )
}

/** The corners of the layers on the side that lies up, as angles inside them. A span has its place in the folded card. */
function layerMarks({ structure, layers }: Card, { name }: Piece): Path[] {
  const laid = new Set(layers.flatMap(({ plates }) => plates))
  const own = new Set(structure.plates.filter(({ piece }) => piece === name).map((plate) => plate.name))
  return structure.bonds.flatMap((bond) => {
    const plate = structure.plates.find((one) => one.name === bond.plate)
    if (!plate || !laid.has(plate.name) || bond.side !== 'face' || !own.has(bond.onto)) return []
    const loop = flatLoop(plate.outline).map(ontoPanel(bond))
    return loop.map((corner, i) => {
      const [before, after] = [loop.at(i - 1) ?? corner, loop[(i + 1) % loop.length] ?? corner]
      return open([towards(corner, before), corner, towards(corner, after)])
    })
  })
}

/** A short way from a corner along an edge. */
function towards([x, y]: Flat, [tx, ty]: Flat): Flat {
  const length = Math.hypot(tx - x, ty - y)
  const part = length === 0 ? 0 : Math.min(short, length / 3) / length
  return [x + (tx - x) * part, y + (ty - y) * part]
}
