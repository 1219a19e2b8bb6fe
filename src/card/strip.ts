import { type Length, plus, type Size, zero } from '../length/length.ts'
import type { Fold, Hinge, Piece, Plate, Point, Polygon, Segment, Stock } from './structure.ts'
import type { Built } from './style.ts'

/** A panel of a strip, and the crease between it and the next one. */
export interface Panel {
  readonly name: string
  readonly length: Length
}

export interface StripInput {
  /** `base`, unless it is another piece of the mechanism. */
  readonly piece?: string
  readonly stock: Stock
  /** Panels from left to right, or from the lower edge upwards. */
  readonly panels: readonly Panel[]
  /** The crease behind each panel but the last. */
  readonly folds: readonly Fold[]
  /** How long the creases are. */
  readonly across: Length
  /** `width`: creases upright, panels side by side. `height`: creases level, panels one above the other. */
  readonly along: 'width' | 'height'
}

/** A piece of the mechanism: one strip of panels with creases between them. */
export interface Strip {
  readonly pieces: readonly [Piece]
  readonly plates: readonly Plate[]
  readonly hinges: readonly Hinge[]
}

export const point = (x: Length, y: Length): Point => ({ x, y })

export const line = (x0: Length, y0: Length, x1: Length, y1: Length): Segment => ({
  from: point(x0, y0),
  to: point(x1, y1),
})

/** A rectangle with its lower left corner at `at`. */
export const rectangle = ({ width, height }: Size, at: Point = point(zero, zero)): Polygon => {
  const [right, top] = [plus(at.x, width), plus(at.y, height)]
  return [at, point(right, at.y), point(right, top), point(at.x, top)]
}

/** A piece of the mechanism without creases: one plate of the same name. */
export const sheet = (name: string, stock: Stock, size: Size): { piece: Piece; plate: Plate } => ({
  piece: { name, kind: 'base', stock, count: 1, size, cuts: [] },
  plate: { name, piece: name, outline: rectangle(size), holes: [] },
})

/** Builds a piece from its panels. */
export function strip({ piece = 'base', stock, panels, folds, across, along }: StripInput): Strip {
  const upright = along === 'width'
  const plates: Plate[] = []
  const hinges: Hinge[] = []
  let end = zero
  for (const [i, { name, length }] of panels.entries()) {
    const fold = folds[i - 1]
    const before = plates.at(-1)
    if (before && fold) {
      const crease = upright ? line(end, zero, end, across) : line(zero, end, across, end)
      hinges.push({ between: [before.name, name], line: crease, fold })
    }
    const at = upright ? point(end, zero) : point(zero, end)
    const size = upright ? { width: length, height: across } : { width: across, height: length }
    plates.push({ name, piece, outline: rectangle(size, at), holes: [] })
    end = plus(end, length)
  }
  const size = upright ? { width: end, height: across } : { width: across, height: end }
  return { pieces: [{ name: piece, kind: 'base', stock, count: 1, size, cuts: [] }], plates, hinges }
}

/**
 * A card that is one strip with upright creases, and is shown standing on its lower edge.
 *
 * @param plate the panel that stays put.
 * @param angles how far each crease is bent, in degrees from flat.
 * @param turn of the standing card, in degrees.
 */
export function upright(
  input: Omit<StripInput, 'along'>,
  plate: string,
  angles: readonly (readonly [one: string, other: string, degrees: number])[],
  turn = 0,
): Built {
  return {
    ...strip({ ...input, along: 'width' }),
    bonds: [],
    stops: [],
    display: {
      angles: angles.map(([one, other, degrees]) => ({ hinge: [one, other], degrees })),
      plate,
      rests: 'upright',
      turn,
    },
  }
}
