import type { Whole } from './affine.ts'
import type { Bodies } from './bodies.ts'
import type { Model } from './model.ts'

/** One more body: plate `here` of it hangs on plate `there` of an earlier one along `line`, in their piece. */
interface Step {
  readonly there: number
  readonly here: number
  readonly line: readonly [Whole, Whole]
}

/** In which order bodies are added to the one of plate `root`, so that each hangs on an earlier one. */
export function growthOf({ hinges }: Model, { of }: Bodies, root: number): Step[] {
  const bodyOf = (plate: number): number => of[plate] ?? 0
  const reached = new Set([bodyOf(root)])
  const steps: Step[] = []
  for (;;) {
    // The body with most creases to those that are there already: rings are closed as early as can be.
    const open = hinges.filter(({ p, q }) => reached.has(bodyOf(p)) !== reached.has(bodyOf(q)))
    const next = open.map(({ p, q }) => (reached.has(bodyOf(p)) ? bodyOf(q) : bodyOf(p)))
    const most = next.reduce((a, b) => (count(next, b) > count(next, a) ? b : a), next[0] ?? -1)
    const hinge = open.find(({ p, q }) => bodyOf(p) === most || bodyOf(q) === most)
    if (!hinge) return steps
    const { p, q, line } = hinge
    steps.push(reached.has(bodyOf(p)) ? { there: p, here: q, line } : { there: q, here: p, line })
    reached.add(most)
  }
}

const count = (all: readonly number[], one: number): number => all.filter((x) => x === one).length
