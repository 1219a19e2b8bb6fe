import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, plus, shorter, smaller, times, zero } from '../../length/length.ts'
import type { BuildInput, Count, Limit, Panels, Parameter } from '../style.ts'
import { closedBySpine } from './on-top.ts'
import type { Band } from './slits.ts'
import { sidesOf } from './spine.ts'

export type StairLength = 'height' | 'depth' | 'step'

/** How many steps a band of stairs has. */
export const stairCount: Count = { help: 'how many steps the band has', usual: 3, least: 1, most: 6 }

/** The names of its panels, from the front of the card to the back. */
const namesOf = (steps: number): readonly (readonly [tread: string, riser: string])[] =>
  Array.from({ length: steps }, (_, i) => [`tread ${i + 1}`, `riser ${i + 1}`] as const)

export const stairPanels = (steps: number): Panels => ({
  front: 'back',
  back: 'face',
  ...Object.fromEntries(
    namesOf(steps).flatMap(([tread, riser]) => [
      [tread, 'face'],
      [riser, 'face'],
    ]),
  ),
})

/** Steps that are all alike and just fill the shut card: n of them, and as much again behind the first tread. */
export function stairParameters(steps: number, spine: 'left' | 'top'): Record<StairLength, Parameter> {
  const { across } = sidesOf(spine)
  return {
    step: {
      help: 'depth of each tread but the first, and height of each riser but the last',
      usual: `${across} / ${steps + 1}`,
      round: 'down',
    },
    height: { help: 'from the spine up to the first tread', usual: `step * ${steps}`, round: 'down' },
    depth: { help: 'from the spine forward to the last riser', usual: `step * ${steps}`, round: 'down' },
  }
}

type Lengths = Readonly<Record<StairLength, Length>>

/** What the first tread and the last riser have left. */
const ends = ({ height, depth, step }: Lengths, steps: number): [tread: Length, riser: Length] => {
  const others = times(step, steps - 1)
  return [minus(depth, others), minus(height, others)]
}

/**
 * A band of stairs: tread 1 · M · riser 1 · V · tread 2 · M · riser 2 … between a crease V at the height h from the
 * spine on the front and one at the depth d on the back. Treads add up to d and stay parallel to the back, risers add up
 * to h and stay parallel to the front, so the ring closes at every angle as a box of h and d does.
 *
 * All treads but the first and all risers but the last are one step s. So, shut, every edge lies as far from the spine:
 * at h + (d - (n - 1)·s), which may not be more than the panel.
 */
export function stairs(lengths: Lengths, steps: number, from: Length, to: Length): Band {
  const [tread, riser] = ends(lengths, steps)
  return {
    wall: 'front',
    height: lengths.height,
    floor: 'back',
    panels: namesOf(steps).flatMap(([one, other], i) => [
      { name: one, length: i === 0 ? tread : lengths.step },
      { name: other, length: i === steps - 1 ? riser : lengths.step },
    ]),
    from,
    to,
  }
}

/** All creases: a ring of 2n + 2 leaves 2n - 1 of them free, and square steps bend all of them by the same angle. */
export function stairCreases(steps: number): [string, string][] {
  const all = ['back', 'front', ...namesOf(steps).flat(), 'back']
  return all.slice(1).map((name, i) => [all[i] ?? '', name])
}

export function stairLimits(input: BuildInput<StairLength, 'steps', 'spine'>): Limit<StairLength>[] {
  const { lengths, counts, grid, say } = input
  const { height, depth, step } = lengths
  const [tread] = ends(lengths, counts.steps)
  const others = counts.steps - 1
  for (const about of ['height', 'depth'] as const)
    if (others === 0 && !shorter(zero, lengths[about]))
      return [
        {
          about,
          message: `A ${about} of ${say(lengths[about])} leaves no stairs`,
          suggestion: `Make the ${about} at least ${say(grid)}`,
        },
      ]
  const most = fitInside(part(minus(smaller(height, depth), grid), Math.max(1, others)), grid)
  if (others > 0 && (shorter(most, step) || !shorter(zero, step)))
    return [
      {
        about: 'step',
        message: `${counts.steps} steps of ${say(step)} cannot be cut from stairs ${say(height)} high and ${say(depth)} deep`,
        suggestion: shorter(zero, most)
          ? `Make the step at most ${say(most)}`
          : `Make the stairs at least ${say(times(grid, counts.steps))} high and deep, or write fewer steps`,
      },
    ]
  const out = minus(plus(height, tread), closedBySpine(input).width)
  if (!shorter(zero, out)) return []
  const cures = (['height', 'depth'] as const)
    .map((key) => [key, minus(lengths[key], out)] as const)
    .filter(([, length]) => shorter(times(step, others), length))
    .map(([key, length]) => `the ${key} at most ${say(length)}`)
  return [
    {
      about: 'height',
      message: `The stairs stick out of the shut card by ${say(out)}`,
      suggestion: `Make ${cures.length > 0 ? cures.join(', or ') : 'the stairs lower and less deep, or the card larger'}`,
    },
  ]
}
