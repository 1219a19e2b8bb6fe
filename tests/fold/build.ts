import type {
  Bond,
  Display,
  Fold,
  Hinge,
  Piece,
  Plate,
  Polygon,
  Stop,
  Structure,
} from '../../src/card/structure.ts'
import { type Length, mm, plus, zero } from '../../src/length/length.ts'

export const point = (x: Length, y: Length) => ({ x, y })

export const rectangle = (left: Length, bottom: Length, width: Length, height: Length): Polygon => [
  point(left, bottom),
  point(plus(left, width), bottom),
  point(plus(left, width), plus(bottom, height)),
  point(left, plus(bottom, height)),
]

/** A strip such as `{ a: 10, b: 20 }` with folds 'V' and 'M' between its panels, creases upright or level. */
export interface StripSpec {
  readonly piece?: string
  readonly panels: readonly (readonly [name: string, length: Length])[]
  readonly folds: string
  readonly across: Length
  readonly along?: 'width' | 'height'
  readonly caliper?: Length
}

export interface Parts {
  readonly pieces: readonly Piece[]
  readonly plates: readonly Plate[]
  readonly hinges: readonly Hinge[]
}

export function strip({
  piece = 'base',
  panels,
  folds,
  across,
  along = 'width',
  caliper = mm(0),
}: StripSpec): Parts {
  const upright = along === 'width'
  const plates: Plate[] = []
  const hinges: Hinge[] = []
  let end = zero
  for (const [i, [name, length]] of panels.entries()) {
    const before = panels[i - 1]?.[0]
    const fold: Fold = folds[i - 1] === 'V' ? 'valley' : 'mountain'
    if (before)
      hinges.push({
        between: [before, name],
        line: upright
          ? { from: point(end, zero), to: point(end, across) }
          : { from: point(zero, end), to: point(across, end) },
        fold,
      })
    const outline = upright ? rectangle(end, zero, length, across) : rectangle(zero, end, across, length)
    plates.push({ name, piece, outline, holes: [] })
    end = plus(end, length)
  }
  const size = upright ? { width: end, height: across } : { width: across, height: end }
  return { pieces: [pieceOf(piece, size, caliper)], plates, hinges }
}

/** A piece without creases: one plate of the same name. */
export function sheet(name: string, width: Length, height: Length, caliper: Length = mm(0)): Parts {
  return {
    pieces: [pieceOf(name, { width, height }, caliper)],
    plates: [{ name, piece: name, outline: rectangle(zero, zero, width, height), holes: [] }],
    hinges: [],
  }
}

export const pieceOf = (name: string, size: Piece['size'], caliper: Length): Piece => ({
  name,
  kind: 'base',
  stock: { name: 'card', caliper },
  count: 1,
  size,
  cuts: [],
})

/** `plate` stuck on the face of `onto`, its lower left corner moved by x and y, unless `more` says otherwise. */
export const stuck = (plate: string, onto: string, x: Length, y: Length, more: Partial<Bond> = {}): Bond => ({
  plate,
  onto,
  side: 'face',
  over: false,
  turn: 0,
  at: point(x, y),
  height: zero,
  ...more,
})

export interface CardSpec {
  readonly parts: readonly Parts[]
  readonly bonds?: readonly Bond[]
  readonly stops?: readonly Stop[]
  readonly plate: string
  readonly angles?: readonly (readonly [string, string, number])[]
  readonly rests?: Display['rests']
  readonly turn?: number
}

export function card({
  parts,
  bonds = [],
  stops = [],
  plate,
  angles = [],
  rests = 'upright',
  turn = 0,
}: CardSpec): Structure {
  return {
    pieces: parts.flatMap((p) => p.pieces),
    plates: parts.flatMap((p) => p.plates),
    hinges: parts.flatMap((p) => p.hinges),
    bonds,
    stops,
    display: { plate, rests, turn, angles: angles.map(([a, b, degrees]) => ({ hinge: [a, b], degrees })) },
  }
}
