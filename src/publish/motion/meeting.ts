import type { Hinge, Structure } from '../../card/structure.ts'
import { flatLine } from '../../draw/plane.ts'
import { type Rigid, spotOf, type Vector } from '../../motion/rigid.ts'

/**
 * The walls of a box that stands in another are as high above the table as the floor that they hang on. A pose lifts what
 * is stuck on by the thickness of what is under it, but not what only hangs on it by creases: here that is carried along,
 * from plate to plate, starting with the one that stays put.
 */
export function creasesMeeting(
  { hinges, bonds, display }: Pick<Structure, 'hinges' | 'bonds' | 'display'>,
  places: ReadonlyMap<string, Rigid>,
): Map<string, Rigid> {
  const moves = new Map<string, Vector>([[display.plate, [0, 0, 0]]])
  const reach = (from: string, to: string, by: Vector): boolean => {
    const known = moves.get(from)
    if (!known || moves.has(to) || !places.has(to)) return false
    moves.set(to, [known[0] + by[0], known[1] + by[1], known[2] + by[2]])
    return true
  }
  for (let grown = true; grown; ) {
    grown = false
    for (const { plate, onto } of bonds)
      grown = reach(onto, plate, [0, 0, 0]) || reach(plate, onto, [0, 0, 0]) || grown
    for (const hinge of hinges) {
      const [a, b] = hinge.between
      const gap = gapAt(hinge, places.get(a), places.get(b))
      grown = reach(a, b, gap) || reach(b, a, [-gap[0], -gap[1], -gap[2]]) || grown
    }
  }
  return new Map(
    [...places].map(([name, { at, turn }]) => {
      const [x, y, z] = moves.get(name) ?? [0, 0, 0]
      return [name, { at: [at[0] + x, at[1] + y, at[2] + z], turn }]
    }),
  )
}

/** How the second plate must be moved for the middles of a crease to meet. */
function gapAt({ line }: Hinge, a: Rigid | undefined, b: Rigid | undefined): Vector {
  if (!a || !b) return [0, 0, 0]
  const [[x, y], [p, q]] = flatLine(line)
  const middle: Vector = [(x + p) / 2, (y + q) / 2, 0]
  const [there, here] = [spotOf(a, middle), spotOf(b, middle)]
  return [there[0] - here[0], there[1] - here[1], there[2] - here[2]]
}
