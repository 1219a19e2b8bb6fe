import type { LayerProblem, Rule } from './layer-problem.ts'

/** The circles in which the plates of a problem must not go. */
export interface Circles {
  /**
   * Sets what must be so that no circle through a pair is closed.
   *
   * @param value of each pair: 1 when its first plate is in front, 0 when it is behind, -1 when that is open.
   * @returns a circle that is closed already.
   */
  readonly settle: (
    pair: number,
    value: Int8Array,
    set: (literal: number, truth: boolean) => void,
  ) => number | undefined
  /** A circle as a rule, always the same one, to be blamed. */
  readonly ruleOf: (circle: number) => Rule
}

export function circlesOf({ pairs, circles }: LayerProblem): Circles {
  // The circles of a pair stand one behind the other, each pair's behind those of the pair before.
  const starts = new Int32Array(pairs.length + 1)
  for (const literal of circles) starts[(literal >> 1) + 1] = (starts[(literal >> 1) + 1] ?? 0) + 1
  for (let pair = 0; pair < pairs.length; pair++)
    starts[pair + 1] = (starts[pair + 1] ?? 0) + (starts[pair] ?? 0)
  const ends = starts.slice()
  const through = new Int32Array(circles.length)
  for (let at = 0; at < circles.length; at++) {
    const pair = (circles[at] ?? 0) >> 1
    const end = ends[pair] ?? 0
    through[end] = at - (at % 3)
    ends[pair] = end + 1
  }
  const rules = new Map<number, Rule>()
  return {
    settle: (pair, value, set) => {
      const truth = (literal: number): number => {
        const known = value[literal >> 1] ?? -1
        return known < 0 ? -1 : known ^ (literal & 1)
      }
      for (let at = starts[pair] ?? 0; at < (starts[pair + 1] ?? 0); at++) {
        const circle = through[at] ?? 0
        const [a, b, c] = [circles[circle] ?? 0, circles[circle + 1] ?? 0, circles[circle + 2] ?? 0]
        const [x, y, z] = [truth(a), truth(b), truth(c)]
        if (x === y && y === z) return circle
        if (x === y && z < 0) set(c, x === 0)
        else if (y === z && x < 0) set(a, y === 0)
        else if (x === z && y < 0) set(b, x === 0)
      }
      return undefined
    },
    ruleOf: (circle) => {
      const [i] = pairs[(circles[circle] ?? 0) >> 1] ?? [0]
      const [, k] = pairs[(circles[circle + 1] ?? 0) >> 1] ?? [0, 0]
      const literals = circles.slice(circle, circle + 3)
      const rule = rules.get(circle) ?? { kind: 'odd', literals, clash: { plates: [i, k] } }
      rules.set(circle, rule)
      return rule
    },
  }
}
