import type { Box } from '../box.ts'
import { colours, weights } from '../ink.ts'
import { capHeight, label } from '../label.ts'
import { line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { spread } from '../spread.ts'
import { dot } from './marks.ts'
import { isMeant, type Named, type Target } from './names.ts'

/** From the drawing to the names beside it, and to where their lines turn level. */
const [away, kink] = [3.6, 0.5] as const

type Side = -1 | 1

/** A name beside the drawing: where it points, and how high it would like to stand. y downwards. */
interface Aside {
  readonly name: Named
  readonly dots: readonly Spot[]
  readonly wanted: number
}

/**
 * Names beside the drawing, on the side where that which they name is, each as level with it as the others let it: of
 * upright walls, and of what is so crowded that no line from above or below finds room.
 */
export function sideNames(names: readonly Named[], box: Box, size: number, of: string | undefined): Mark[] {
  const middle = (box.left + box.right) / 2
  const sideOf = ({ targets }: Named): Side =>
    Math.max(...targets.map(({ from, to }) => (from + to) / 2)) > middle ? 1 : -1
  return ([-1, 1] as const).flatMap((side) => {
    const own = asides(
      names.filter((name) => sideOf(name) === side),
      side,
    )
    const at = spread(
      own.map(({ wanted }) => ({ at: wanted, width: capHeight * size })),
      0.6 * size,
    )
    const end = side < 0 ? box.left - away : box.right + away
    const turn = side < 0 ? box.left - kink : box.right + kink
    const thin = { class: 'leader', width: weights.dimension }
    return own.flatMap(({ name, dots }, i): Mark[] => {
      const y = at[i] ?? 0
      const bold = isMeant(name, of)
      return [
        ...dots.flatMap((spot) => [
          line([end, y], [turn, spot[1]], thin),
          line([turn, spot[1]], spot, thin),
          dot(spot),
        ]),
        label(name.text, [end + side * 0.7, y + (capHeight * size) / 2], {
          class: 'name',
          size,
          colour: colours.slate,
          anchor: side < 0 ? 'end' : 'start',
          ...(bold && { bold }),
        }),
      ]
    })
  })
}

/** From the topmost to the lowest. Of walls side by side the outermost is pointed at lowest: no line meets another's dot. */
function asides(names: readonly Named[], side: Side): Aside[] {
  const outer = ({ targets }: Named): number => Math.max(...targets.map(({ from }) => from * side))
  const walls = names.filter(isUpright).sort((a, b) => outer(a) - outer(b))
  const upright = walls.map((name, i): Aside => {
    const [low, high] = rangeOf(name.targets)
    const wanted = -(high - ((high - low) * (i + 1)) / (walls.length + 1))
    return { name, wanted, dots: name.targets.map(({ from, to }): Spot => [(from + to) / 2, wanted]) }
  })
  const level = names
    .filter((name) => !isUpright(name))
    .map((name): Aside => {
      const own = name.any ? name.targets.slice(side < 0 ? 0 : -1).slice(0, 1) : name.targets
      const dots = own.map(({ from, to, z }): Spot => {
        const x = side < 0 ? Math.min(to, from + 1) : Math.max(from, to - 1)
        return [x, -z(x)]
      })
      return { name, dots, wanted: dots.reduce((sum, [, y]) => sum + y, 0) / dots.length }
    })
  return [...upright, ...level].sort((a, b) => a.wanted - b.wanted)
}

export const isUpright = ({ targets }: Named): boolean =>
  targets.every(({ upright }) => upright !== undefined)

/** The heights that all walls of a name have in common. */
const rangeOf = (targets: readonly Target[]): readonly [number, number] => [
  Math.max(...targets.map(({ upright }) => upright?.[0] ?? 0)),
  Math.min(...targets.map(({ upright }) => upright?.[1] ?? 0)),
]
