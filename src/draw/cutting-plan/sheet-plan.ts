import type { Length, Size } from '../../length/length.ts'
import type { Spot } from '../num.ts'
import { toMm } from '../plane.ts'

/** A sheet and how it is cut up: everything from its lower left corner. */
export interface SheetPlan {
  readonly stock: string
  /** A line below the drawing. */
  readonly remark?: string
  readonly sheet: Size
  readonly placed: readonly (Size & {
    readonly name: string
    readonly x: Length
    readonly y: Length
    /** Its pattern has a top. */
    readonly upright: boolean
  })[]
  /** From edge to edge of what is in hand, in their order; `across: 'width'` is an upright one. */
  readonly cuts: readonly {
    readonly across: 'width' | 'height'
    readonly at: Length
    readonly from: Length
    readonly to: Length
  }[]
}

/** From the sheet to the paper. */
export type Place = (p: readonly [number, number]) => Spot

export const rectangle = (place: Place, x: number, y: number, w: number, h: number): Spot[] => [
  place([x, y]),
  place([x + w, y]),
  place([x + w, y + h]),
  place([x, y + h]),
]

/** The outline of a piece on the paper. */
export const loopOf = ({ x, y, width, height }: SheetPlan['placed'][number], place: Place): Spot[] =>
  rectangle(place, toMm(x), toMm(y), toMm(width), toMm(height))

/** Half the height of the box that the number of a cut stands in, in text sizes. */
export const half = 0.62
