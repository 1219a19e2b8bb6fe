import Fraction from 'fraction.js'
import type { Piece, Plate, Polygon } from '../../src/card/structure.ts'
import { formatSize } from '../../src/length/format.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'

type Axis = 'x' | 'y'
const nothing = new Fraction(0)

export const least = (polygon: Polygon, axis: Axis): Fraction =>
  polygon.map((p): Fraction => p[axis]).reduce((a, b) => (b.lt(a) ? b : a))
export const most = (polygon: Polygon, axis: Axis): Fraction =>
  polygon.map((p): Fraction => p[axis]).reduce((a, b) => (b.gt(a) ? b : a))

/** Area within an outline, exactly. */
const areaOf = (polygon: Polygon): Fraction =>
  polygon
    .reduce((sum: Fraction, to, i) => {
      const from = polygon.at(i - 1) ?? to
      return sum.add(from.x.mul(to.y)).sub(to.x.mul(from.y))
    }, nothing)
    .div(2)
    .abs()

const spread = (polygon: Polygon, axis: Axis): Fraction => most(polygon, axis).sub(least(polygon, axis))

/** Plates that are cut alike lie in one place of their piece; each place once. */
function placesOf(piece: Piece, plates: readonly Plate[]): Polygon[] {
  const own = plates.filter((plate) => plate.piece === piece.name).map(({ outline }) => outline)
  const text = (polygon: Polygon): string =>
    polygon.map(({ x, y }) => `${x.toFraction()},${y.toFraction()}`).join()
  return [...new Map(own.map((outline) => [text(outline), outline])).values()]
}

/** Pieces whose panels do not come to the size that is printed for them, whose scores do not lie where two panels meet. */
export function troublesOfPieces({ card: { structure, unit } }: ProvenCard): string[] {
  return structure.pieces
    .filter(({ kind }) => kind !== 'loose')
    .flatMap((piece) => {
      const outlines = placesOf(piece, structure.plates)
      const all = outlines.flat()
      const told = (why: string): string[] => [`${piece.name}, ${formatSize(piece.size, unit)}: ${why}`]
      const { width, height } = piece.size
      const own = structure.plates.filter((plate) => plate.piece === piece.name)
      const windows = own.flatMap(({ holes }) => holes.map((hole) => hole.length)).reduce((a, b) => a + b, 0)
      const isTrimmed = piece.cuts.length > windows / piece.count
      const [left, right, low, high] = [least(all, 'x'), most(all, 'x'), least(all, 'y'), most(all, 'y')]
      const rest = [left, low, width.sub(right), height.sub(high)]
      if (rest.some((x) => x.lt(0))) return told('is smaller than its panels')
      const over = outlines.map(areaOf).reduce((area, one) => area.sub(one), width.mul(height))
      if (over.lt(0)) return told('has less room than its panels')
      if (isTrimmed) return []
      if (rest.some((x) => x.gt(0)) || over.gt(0)) return told('is larger than its panels')
      for (const [along, across] of [
        ['x', 'y'],
        ['y', 'x'],
      ] as const) {
        const whole = across === 'x' ? width : height
        if (!outlines.every((outline) => outline.length === 4 && spread(outline, across).equals(whole)))
          continue
        const parts = outlines.map((outline) => spread(outline, along)).reduce((a, b) => a.add(b))
        if (!parts.equals(along === 'x' ? width : height)) return told('is not the sum of its panels')
        const names = own.map(({ name }) => name)
        const ends = new Set(outlines.map((outline) => least(outline, along).toFraction()))
        const scores = structure.hinges
          .filter(({ between: [one] }) => names.includes(one))
          .map(({ line }) => line)
        if (
          scores.some(({ from, to }) => !from[along].equals(to[along]) || !ends.has(from[along].toFraction()))
        )
          return told('is scored where no panel ends')
        if (new Set(scores.map(({ from }) => from[along].toFraction())).size !== ends.size - 1)
          return told('has not one score between two panels')
      }
      return []
    })
}
