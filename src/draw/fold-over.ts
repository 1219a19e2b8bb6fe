import type { Hinge, Structure } from '../card/structure.ts'
import { type Flat, flatLine, flatLoop } from './plane.ts'

/** A panel of a sheet that lies flat or is folded over, in the frame of the sheet. */
export interface FoldedPanel {
  readonly name: string
  readonly loop: readonly Flat[]
  /** Whether its outside is up. */
  readonly over: boolean
}

/**
 * A sheet of which some panels are folded over the panel that they hang on, in the order in which they come to lie: what
 * is not folded first, then each on what was folded before it.
 *
 * @param stays the panel that stays where it is; every folded one hangs on it.
 */
export function foldedOver(
  { plates, hinges }: Pick<Structure, 'plates' | 'hinges'>,
  stays: string,
  folded: readonly string[],
): FoldedPanel[] {
  const loopOf = (name: string): Flat[] => {
    const plate = plates.find((one) => one.name === name)
    return plate ? flatLoop(plate.outline) : []
  }
  const flat = plates.map(({ name }) => name).filter((name) => !folded.includes(name))
  return [
    ...flat.map((name): FoldedPanel => ({ name, loop: loopOf(name), over: false })),
    ...folded.map((name): FoldedPanel => {
      const hinge = hinges.find(({ between }) => between.includes(stays) && between.includes(name))
      return { name, loop: hinge ? loopOf(name).map(mirrorIn(hinge)) : loopOf(name), over: true }
    }),
  ]
}

/** The reflection in a crease, which is where folding by 180° takes a point. */
function mirrorIn({ line }: Pick<Hinge, 'line'>): (spot: Flat) => Flat {
  const [[x1, y1], [x2, y2]] = flatLine(line)
  const length = Math.hypot(x2 - x1, y2 - y1)
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length]
  return ([x, y]) => {
    const along = (x - x1) * ux + (y - y1) * uy
    return [2 * (x1 + along * ux) - x, 2 * (y1 + along * uy) - y]
  }
}

/** Which corner of a panel folding carries farthest. */
export function tipOf(flat: readonly Flat[], folded: readonly Flat[]): number {
  const ways = flat.map(([x, y], i) => Math.hypot((folded[i]?.[0] ?? x) - x, (folded[i]?.[1] ?? y) - y))
  return ways.indexOf(Math.max(...ways))
}
