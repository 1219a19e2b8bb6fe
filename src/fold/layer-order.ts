import { circlesOf } from './layer-circles.ts'
import type { Clash, LayerProblem, Rule } from './layer-problem.ts'

/** Assignments tried before a search gives up; a card needs a handful. */
const mostTries = 20000

/** What a search found out beside its results. */
export interface SearchReport {
  /** How often each rule got in the way. */
  readonly blame: Map<Rule, number>
  /** Whether it gave up before it had tried everything. */
  gaveUp: boolean
}

/**
 * All ways to say of every pair which plate lies in front, so that all rules hold, by search with unit propagation. Of
 * two ways that are both right, the one that puts plates in front that come first in the structure is given first.
 */
export function* layerOrdersOf(problem: LayerProblem, report?: SearchReport): Generator<Int8Array> {
  const { pairs, rules } = problem
  const circles = circlesOf(problem)
  const value = new Int8Array(pairs.length).fill(-1)
  const trail: number[] = []
  const touching: Rule[][] = pairs.map(() => [])
  for (const rule of rules) for (const literal of rule.literals) touching[literal >> 1]?.push(rule)

  const set = (literal: number, truth: boolean): void => {
    value[literal >> 1] = Number(truth) ^ (literal & 1)
    trail.push(literal >> 1)
  }
  const blame = (rule: Rule | undefined): false => {
    if (rule) report?.blame.set(rule, (report.blame.get(rule) ?? 0) + 1)
    return false
  }
  const holds = (rule: Rule): boolean => {
    const verdict = check(rule, value)
    if (verdict === 'broken') return blame(rule)
    if (verdict) set(verdict.literal, verdict.truth)
    return true
  }
  const settled = (from: number): boolean => {
    for (let at = from; at < trail.length; at++) {
      const pair = trail[at] ?? 0
      for (const rule of touching[pair] ?? []) if (!holds(rule)) return false
      const round = circles.settle(pair, value, set)
      if (round !== undefined) return blame(circles.ruleOf(round))
    }
    return true
  }
  let tries = 0
  function* search(from: number): Generator<Int8Array> {
    if (!settled(from)) return
    const pair = value.indexOf(-1)
    if (pair < 0) yield value.slice()
    if (pair < 0) return
    for (const truth of [true, false]) {
      if (++tries > mostTries) {
        if (report) report.gaveUp = true
        return
      }
      const mark = trail.length
      set(pair * 2, truth)
      yield* search(mark)
      for (const undone of trail.splice(mark)) value[undone] = -1
    }
  }
  for (const rule of rules) if (rule.literals.length === 1 && !holds(rule)) return
  yield* search(0)
}

type Verdict = 'broken' | { readonly literal: number; readonly truth: boolean } | undefined

/** Whether a rule is broken, or forces the one literal of it that is still open. */
function check({ kind, literals }: Rule, value: Int8Array): Verdict {
  let open = -1
  let trues = 0
  for (const literal of literals) {
    const v = value[literal >> 1] ?? -1
    if (v >= 0) trues += v ^ (literal & 1)
    else if (open >= 0) return undefined
    else open = literal
  }
  const missing = (trues % 2 === 1) !== (kind === 'odd')
  if (open >= 0) return { literal: open, truth: missing }
  return missing ? 'broken' : undefined
}

/**
 * The plates from front to back. Plates that are not compared by overlap keep the order of the structure.
 *
 * @returns undefined when plates lie in front of each other in a circle.
 */
export function frontToBack({ plates, pairs }: LayerProblem, value: Int8Array): number[] | undefined {
  const behind: number[][] = Array.from({ length: plates }, () => [])
  const covered = Array.from({ length: plates }, () => 0)
  for (const [pair, [i, j]] of pairs.entries()) {
    const [front, back] = value[pair] === 1 ? [i, j] : [j, i]
    behind[front]?.push(back)
    covered[back] = (covered[back] ?? 0) + 1
  }
  const order: number[] = []
  const done = new Set<number>()
  while (order.length < plates) {
    const next = covered.findIndex((n, i) => n === 0 && !done.has(i))
    if (next < 0) return undefined
    done.add(next)
    order.push(next)
    for (const back of behind[next] ?? []) covered[back] = (covered[back] ?? 0) - 1
  }
  return order
}

/** The rule that got in the way most often, those about creases first. */
export function worstClash(blame: ReadonlyMap<Rule, number>): Clash | undefined {
  const weight = ([rule, times]: [Rule, number]): number => times + (rule.clash.crease ? 1e9 : 0)
  return [...blame].sort((a, b) => weight(b) - weight(a))[0]?.[0].clash
}
