import type { Unit } from '../../length/length.ts'
import type { CuttingPlan } from '../cutting/cutting.ts'
import { type LengthJson, lengthJson, type SizeJson, sizeJson } from '../length-json.ts'

/** What `sheets --json` answers: positions from the sheet's lower left corner, cuts in their order. */
export interface SheetsJson {
  readonly plans: readonly {
    readonly stock: string
    readonly sheet: SizeJson
    readonly used: number
    readonly lowerBound: number
    readonly proven: boolean
    readonly layouts: readonly {
      readonly times: number
      readonly placed: readonly (SizeJson & {
        readonly piece: string
        readonly lesson: string
        readonly x: LengthJson
        readonly y: LengthJson
        readonly turned: boolean
      })[]
      readonly cuts: readonly {
        readonly across: 'width' | 'height'
        readonly at: LengthJson
        readonly from: LengthJson
        readonly to: LengthJson
        /** The edge held against the stop, and how far the stop is from the knife. */
        readonly against: string
        readonly set: LengthJson
      }[]
    }[]
  }[]
  readonly short: CuttingPlan['short']
}

/** A cutting plan for other programs. */
export const sheetsJson = ({ plans, short }: CuttingPlan, unit: Unit): SheetsJson => ({
  plans: plans.map(({ stock, sheet, used, lowerBound, proven, layouts }) => ({
    stock,
    sheet: sizeJson(sheet.size, unit),
    used,
    lowerBound,
    proven,
    layouts: layouts.map(({ times, placed, cuts }) => ({
      times,
      placed: placed.map(({ piece, lesson, x, y, width, height, turned }) => ({
        piece,
        lesson,
        x: lengthJson(x, unit),
        y: lengthJson(y, unit),
        ...sizeJson({ width, height }, unit),
        turned,
      })),
      cuts: cuts.map(({ across, at, from, to, against, set }) => ({
        across,
        at: lengthJson(at, unit),
        from: lengthJson(from, unit),
        to: lengthJson(to, unit),
        against,
        set: lengthJson(set, unit),
      })),
    })),
  })),
  short,
})
