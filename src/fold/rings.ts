import type { Link } from './assembly.ts'

/** How the bodies of an assembly hang together. */
export interface Rings {
  /** The link that each body was first reached by, and from which body; undefined for the first. */
  readonly reached: readonly (Reached | undefined)[]
  /** One ring for each link that joins bodies that hang together already: its links, that link last. */
  readonly cycles: readonly (readonly number[])[]
  /** Which group of rings that share links each link belongs to; -1 for a link in no ring. */
  readonly groupOf: readonly number[]
}

export interface Reached {
  readonly link: number
  readonly from: number
}

/**
 * Finds a spanning tree and its fundamental cycles. Bodies must be numbered so that each hangs on an earlier one.
 *
 * Links that lie on a common ring, however long, are in one group: two fundamental cycles that share a link belong
 * together, and those are the blocks of the graph.
 */
export function ringsOf(bodies: number, links: readonly Link[]): Rings {
  const reached: (Reached | undefined)[] = Array.from({ length: bodies })
  const tree = new Set<number>()
  for (let body = 1; body < bodies; body++) {
    const link = links.findIndex(({ a, b }) => (a === body && b < body) || (b === body && a < body))
    const { a, b } = links[link] ?? { a: 0, b: 0 }
    reached[body] = { link, from: a === body ? b : a }
    tree.add(link)
  }
  const wayTo = (body: number): number[] => {
    const step = reached[body]
    return step ? [...wayTo(step.from), step.link] : []
  }
  const cycles = links.flatMap(({ a, b }, i) => {
    if (tree.has(i)) return []
    const [left, right] = [wayTo(a), wayTo(b)]
    const fork = left.findIndex((link, k) => link !== right[k])
    const shared = fork < 0 ? left.length : fork
    return [[...left.slice(shared), ...right.slice(shared), i]]
  })
  const groupOf = links.map(() => -1)
  for (const [i, cycle] of cycles.entries()) {
    const merged = new Set(cycle.map((link) => groupOf[link] ?? -1).filter((group) => group >= 0))
    for (const [link, group] of groupOf.entries()) if (merged.has(group)) groupOf[link] = i
    for (const link of cycle) groupOf[link] = i
  }
  return { reached, cycles, groupOf }
}
