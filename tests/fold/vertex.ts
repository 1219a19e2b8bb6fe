import Fraction from 'fraction.js'
import type { Fold, Hinge, Plate, Structure } from '../../src/card/structure.ts'
import { mm, zero } from '../../src/length/length.ts'
import { pieceOf, point } from './build.ts'

export interface VertexSpec {
  /** Angles between one crease and the next, counter-clockwise, in degrees. */
  readonly sectors: readonly number[]
  /** The fold of each crease; crease i comes before sector i. */
  readonly folds: readonly Fold[]
  /** Whether all creases are folded in the shut sheet. */
  readonly allFolded?: boolean
  readonly lead?: { readonly crease: number; readonly degrees: number }
}

const near = (x: number) => mm(new Fraction(Math.round(x * 1e7), 10_000_000))

/** A round sheet with creases from its middle to its edge. Its sectors are called `s0`, `s1` … */
export function vertex({ sectors, folds, allFolded = true, lead }: VertexSpec): Structure {
  const n = sectors.length
  const starts = sectors.map((_, i) => sectors.slice(0, i).reduce((a, b) => a + b, 0))
  const middle = point(zero, zero)
  const rim = (degrees: number) =>
    point(near(100 * Math.cos((degrees * Math.PI) / 180)), near(100 * Math.sin((degrees * Math.PI) / 180)))
  const plates = sectors.map((sector, i): Plate => {
    const start = starts[i] ?? 0
    const parts = Math.ceil(sector / 60)
    const inner = Array.from({ length: parts - 1 }, (_, k) => rim(start + (sector * (k + 1)) / parts))
    const end = i === n - 1 ? rim(starts[0] ?? 0) : rim(starts[i + 1] ?? 0)
    return { name: `s${i}`, piece: 'sheet', outline: [middle, rim(start), ...inner, end], holes: [] }
  })
  const hinges = sectors.map(
    (_, i): Hinge => ({
      between: [`s${(i + n - 1) % n}`, `s${i}`],
      line: { from: middle, to: rim(starts[i] ?? 0) },
      fold: folds[i] ?? 'valley',
    }),
  )
  return {
    pieces: [pieceOf('sheet', { width: mm(200), height: mm(200) }, zero)],
    plates,
    hinges,
    bonds: [],
    stops: [],
    ...(allFolded && { shut: hinges.map(({ between }) => ({ hinge: between, degrees: 180 })) }),
    display: {
      angles: lead ? [{ hinge: hinges[lead.crease]?.between ?? ['', ''], degrees: lead.degrees }] : [],
      plate: 's0',
      rests: 'flat',
      turn: 0,
    },
  }
}
