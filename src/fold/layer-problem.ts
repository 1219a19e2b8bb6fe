import type { Link } from './assembly.ts'

/**
 * Something that must hold between the orders of some pairs. A literal is a pair's number times two, plus one when it
 * is meant the other way round. `even`, `odd`: so many of the literals are true. `mixed`: not all are alike.
 */
export interface Rule {
  readonly kind: 'even' | 'odd' | 'mixed'
  readonly literals: readonly number[]
  readonly clash: Clash
}

/** What to name when a rule cannot be kept. */
export interface Clash {
  readonly plates: readonly number[]
  readonly crease?: Link
}

/** Which pairs of plates overlap, and the rules for which of each pair is in front. */
export interface LayerProblem {
  readonly plates: number
  readonly pairs: readonly (readonly [front: number, back: number])[]
  readonly rules: readonly Rule[]
}

/** Collects pairs and rules, each once. */
export interface ProblemBuilder {
  /** The literal "i lies in front of j"; undefined when they do not overlap. */
  readonly inFront: (i: number, j: number) => number | undefined
  readonly overlap: (i: number, j: number) => void
  /** i and j both lie in front of, or both behind, the other: for each pair of literals that are there. */
  readonly alike: (x: number | undefined, y: number | undefined, clash: Clash) => void
  readonly add: (kind: Rule['kind'], literals: readonly (number | undefined)[], clash: Clash) => void
  readonly problem: () => LayerProblem
}

export function problemBuilder(plates: number): ProblemBuilder {
  const numbers = new Int32Array(plates * plates).fill(-1)
  const pairs: [number, number][] = []
  const rules: Rule[] = []
  const known = new Set<number | string>()
  const inFront = (i: number, j: number): number | undefined => {
    const pair = numbers[Math.min(i, j) * plates + Math.max(i, j)] ?? -1
    return pair < 0 ? undefined : pair * 2 + (i < j ? 0 : 1)
  }
  const add: ProblemBuilder['add'] = (kind, literals, clash) => {
    if (!areThere(literals)) return
    const key = keyOf(kind, literals)
    if (known.has(key)) return
    known.add(key)
    rules.push({ kind, literals, clash })
  }
  return {
    inFront,
    add,
    alike: (x, y, clash) => add('even', [x, y], clash),
    overlap: (i, j) => {
      const at = Math.min(i, j) * plates + Math.max(i, j)
      if (i === j || numbers[at] !== -1) return
      numbers[at] = pairs.length
      pairs.push([Math.min(i, j), Math.max(i, j)])
    },
    problem: () => ({ plates, pairs, rules }),
  }
}

const areThere = (literals: readonly (number | undefined)[]): literals is readonly number[] =>
  !literals.includes(undefined)

/** Up to three literals below 2^16 make one number. Rules of more are few. */
function keyOf(kind: Rule['kind'], literals: readonly number[]): number | string {
  if (literals.length > 3) return literals.toSorted((a, b) => a - b).join()
  const [a = 0, b = 0, c = 0] = literals
  // Rules of three come with their plates in ascending order already.
  const [x, y] = literals.length === 2 && a > b ? [b, a] : [a, b]
  return ((x * 65536 + y) * 65536 + c) * 3 + kinds.indexOf(kind)
}

const kinds: readonly Rule['kind'][] = ['even', 'odd', 'mixed']
