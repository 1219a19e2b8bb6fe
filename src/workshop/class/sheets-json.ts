import type { Size, Unit } from '../../length/length.ts'
import { cutByCut } from '../cutting/cut-by-cut.ts'
import type { CuttingPlan, Layout } from '../cutting/cutting.ts'
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
        /** The strip that is taken up for it; what was cut last is in hand where none is. */
        readonly take?: string
        /** Whether it is turned a quarter first. */
        readonly turn: boolean
        /** Pieces that are finished with it. */
        readonly label: readonly string[]
        /** Strips that are laid aside then. */
        readonly aside: readonly string[]
      }[]
    }[]
  }[]
  readonly short: readonly Omit<CuttingPlan['short'][number], 'reason'>[]
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
      cuts: cutsJson({ placed, cuts }, sheet.size, unit),
    })),
  })),
  short: short.map(({ reason: _, ...said }) => said),
})

type LayoutJson = SheetsJson['plans'][number]['layouts'][number]

function cutsJson(layout: Pick<Layout, 'placed' | 'cuts'>, sheet: Size, unit: Unit): LayoutJson['cuts'] {
  const steps = cutByCut(layout, sheet)
  return layout.cuts.map(({ across, at, from, to, against, set }, i) => {
    const { takes, turns = false, finished = [], aside = [] } = steps[i] ?? {}
    return {
      across,
      at: lengthJson(at, unit),
      from: lengthJson(from, unit),
      to: lengthJson(to, unit),
      against,
      set: lengthJson(set, unit),
      ...(takes !== undefined && { take: takes }),
      turn: turns,
      label: finished.map(({ piece }) => piece),
      aside,
    }
  })
}
