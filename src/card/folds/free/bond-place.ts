import Fraction from 'fraction.js'
import { type Length, minus, mm, negative, plus, times, toMm, zero } from '../../../length/length.ts'
import { point } from '../../strip.ts'
import type { Bond, Point } from '../../structure.ts'
import { turnOf } from '../../turn.ts'
import { type Box, round } from './box.ts'
import { level, startAt } from './distances.ts'
import type { LaidSheet } from './layout.ts'
import type { WrittenBond } from './read-bonds.ts'
import type { Along } from './written.ts'

/** A panel that something is stuck on or with, and the sheet that it is part of. */
interface Place {
  readonly sheet: LaidSheet
  readonly box: Box
  readonly along: Along
}

/**
 * Where a bond carries its panel. Without a word about it, the panel begins where the other one begins; but along the
 * creases of a sheet that they are both part of it stays where it is, because folding does not move it that way.
 */
export function bondOf(bond: WrittenBond, sheets: readonly LaidSheet[]): Bond[] {
  const [panel, onto] = [bond.panel, bond.onto].map((name) => placeOf(name, sheets))
  if (!panel || !onto) return []
  const { side, over } = bond
  // Turned over about a line along its creases: x becomes -x, and for level creases that is turned round as well.
  const turn = (((bond.turn + (over && panel.along === 'height' ? 180 : 0)) % 360) + 360) % 360
  const lies = round(cornersOf(panel.box).map((corner) => boxAt(turned(corner, over, turn))))
  const beside = panel.sheet === onto.sheet && bond.turn === 0
  const x =
    bond.x ?? (beside && panel.along === 'height' ? undefined : { edge: 'left' as const, length: level })
  const y =
    bond.y ?? (beside && panel.along === 'width' ? undefined : { edge: 'bottom' as const, length: level })
  const at = point(
    x ? minus(startAt(x, onto.box, minus(lies.right, lies.left)), lies.left) : zero,
    y ? minus(startAt(y, onto.box, minus(lies.top, lies.bottom)), lies.bottom) : zero,
  )
  return [{ plate: bond.panel, onto: bond.onto, side, over, turn, at, height: bond.height() }]
}

function placeOf(name: string, sheets: readonly LaidSheet[]): Place | undefined {
  const sheet = sheets.find(({ boxes }) => boxes.has(name))
  const box = sheet?.boxes.get(name)
  const strip = sheet?.sheet.strips.find(({ panels }) => panels.some((panel) => panel.name === name))
  return sheet && box && strip && { sheet, box, along: strip.along }
}

const cornersOf = ({ left, right, bottom, top }: Box): Point[] => [
  point(left, bottom),
  point(right, bottom),
  point(right, top),
  point(left, top),
]

const boxAt = ({ x, y }: Point): Box => ({ left: x, right: x, bottom: y, top: y })

/** A point turned over or not, then counter-clockwise. Exact for quarter turns, and to a thousandth of a mm for others. */
function turned({ x, y }: Point, over: boolean, degrees: number): Point {
  const [cos, sin] = turnOf(degrees)
  const own = over ? negative(x) : x
  if (degrees % 90 === 0)
    return point(minus(times(own, cos), times(y, sin)), plus(times(own, sin), times(y, cos)))
  const [a, b] = [toMm(own), toMm(y)]
  return point(thousandths(a * cos - b * sin), thousandths(a * sin + b * cos))
}

const thousandths = (x: number): Length => mm(new Fraction(Math.round(x * 1000), 1000))
