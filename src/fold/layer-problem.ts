import type { Link } from './assembly.ts'

/**
 * Something that must hold between the orders of some pairs: so many of the literals are true. A literal is a pair's number
 * times two, plus one when it is meant the other way round.
 */
export interface Rule {
  readonly kind: 'even' | 'odd'
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
  /**
   * Three literals each, "i in front of j, j of k, k of i", which are never all true or all false. There are as many as
   * the cube of the plates that lie on each other, so they are plain numbers.
   */
  readonly circles: readonly number[]
}

/** Collects pairs and rules, each once. */
export interface ProblemBuilder {
  /** The literal "i lies in front of j"; undefined when they do not overlap. */
  readonly inFront: (i: number, j: number) => number | undefined
  readonly overlap: (i: number, j: number) => void
  /** i and j both lie in front of, or both behind, the other: for each pair of literals that are there. */
  readonly alike: (x: number | undefined, y: number | undefined, clash: Clash) => void
  readonly add: (kind: Rule['kind'], literals: readonly (number | undefined)[], clash: Clash) => void
  /** i, j and k, in ascending order, all overlap and do not go round in a circle. */
  readonly noCircle: (i: number, j: number, k: number) => void
  readonly problem: () => LayerProblem
}

export function problemBuilder(plates: number): ProblemBuilder {
  const numbers = new Int32Array(plates * plates).fill(-1)
  const pairs: [number, number][] = []
  const rules: Rule[] = []
  const known = new Set<string>()
  const circles: number[] = []
  const circled = new Uint32Array(Math.ceil(plates ** 3 / 32))
  const inFront = (i: number, j: number): number | undefined => {
    const pair = numbers[Math.min(i, j) * plates + Math.max(i, j)] ?? -1
    return pair < 0 ? undefined : pair * 2 + (i < j ? 0 : 1)
  }
  const add: ProblemBuilder['add'] = (kind, literals, clash) => {
    if (!areThere(literals)) return
    const key = kind + literals.toSorted((a, b) => a - b).join()
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
    noCircle: (i, j, k) => {
      const triple = (i * plates + j) * plates + k
      const [word, bit] = [triple >>> 5, 1 << (triple & 31)]
      if ((circled[word] ?? 0) & bit) return
      circled[word] = (circled[word] ?? 0) | bit
      const pair = (a: number, b: number): number => 2 * (numbers[a * plates + b] ?? 0)
      circles.push(pair(i, j), pair(j, k), pair(i, k) + 1)
    },
    problem: () => ({ plates, pairs, rules, circles }),
  }
}

const areThere = (literals: readonly (number | undefined)[]): literals is readonly number[] =>
  !literals.includes(undefined)
