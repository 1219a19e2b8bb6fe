import type { Bend, Hinge } from '../../structure.ts'
import type { WrittenBond } from './read-bonds.ts'

/** What joins two things that move as one: the names of those, after bonds have made one of several plates. */
interface Joint {
  readonly hinge: readonly [string, string]
  readonly a: string
  readonly b: string
}

/**
 * The creases that a card is shown by when the lesson does not say: each at a right angle. Where creases hang together in
 * a ring, leading one leads the others, so of each ring it is the first.
 */
export function usualLeads(hinges: readonly Hinge[], bonds: readonly WrittenBond[]): Bend[] {
  const bodyOf = bodies(bonds)
  const joints = hinges
    .map(({ between: [a, b] }): Joint => ({ hinge: [a, b], a: bodyOf(a), b: bodyOf(b) }))
    .filter(({ a, b }) => a !== b)
  const ringOf = ringsOf(joints)
  return joints
    .filter((_, i) => ringOf[i] === undefined || ringOf.indexOf(ringOf[i]) === i)
    .map(({ hinge }) => ({ hinge: [hinge[0], hinge[1]], degrees: 90 }))
}

/** The name of what a plate moves with. */
function bodies(bonds: readonly WrittenBond[]): (plate: string) => string {
  const onto = new Map<string, string>()
  const top = (plate: string): string => {
    const next = onto.get(plate)
    return next === undefined ? plate : top(next)
  }
  for (const { panel, onto: other } of bonds) if (top(panel) !== top(other)) onto.set(top(panel), top(other))
  return top
}

/** A number for each joint that lies on a ring: the same for all that lie on rings with joints in common. */
function ringsOf(joints: readonly Joint[]): (number | undefined)[] {
  const ring: (number | undefined)[] = joints.map(() => undefined)
  const tree: number[] = []
  for (const [i, joint] of joints.entries()) {
    const way = wayBetween(joints, tree, joint.a, joint.b)
    if (!way) {
      tree.push(i)
      continue
    }
    const merged = new Set(way.map((k) => ring[k]).filter((number) => number !== undefined))
    for (const [k, number] of ring.entries())
      if ((number !== undefined && merged.has(number)) || k === i || way.includes(k)) ring[k] = i
  }
  return ring
}

/** The joints of the tree from one thing to another; undefined when it does not join them yet. */
function wayBetween(
  joints: readonly Joint[],
  tree: readonly number[],
  from: string,
  to: string,
): number[] | undefined {
  if (from === to) return []
  for (const i of tree) {
    const { a, b } = joints[i] ?? { a: '', b: '' }
    if (a !== from && b !== from) continue
    const rest = wayBetween(
      joints,
      tree.filter((k) => k !== i),
      a === from ? b : a,
      to,
    )
    if (rest) return [i, ...rest]
  }
  return undefined
}
