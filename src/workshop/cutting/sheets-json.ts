import type { Unit } from '../../length/length.ts'
import { type LengthJson, lengthJson, type SizeJson, sizeJson } from '../length-json.ts'
import type { Along, CuttingPlan, Edge, ShortPiece } from './cutting.ts'

/** What `sheets --json` writes. */
export interface SheetsJson {
  readonly plans: readonly PlanJson[]
  readonly short: readonly ShortPiece[]
}

export interface PlanJson {
  readonly stock: string
  readonly sheet: SizeJson
  readonly used: number
  readonly lowerBound: number
  readonly proven: boolean
  readonly layouts: readonly LayoutJson[]
}

export interface LayoutJson {
  readonly times: number
  readonly placed: readonly PlacedJson[]
  readonly cuts: readonly CutJson[]
}

export interface PlacedJson extends SizeJson {
  readonly piece: string
  readonly lesson: string
  readonly x: LengthJson
  readonly y: LengthJson
  readonly turned: boolean
}

/** A cut: `set` is how far the trimmer's stop is from the knife, with the edge `against` held at it. */
export interface CutJson {
  readonly across: Along
  readonly at: LengthJson
  readonly from: LengthJson
  readonly to: LengthJson
  readonly against: Edge
  readonly set: LengthJson
}

/**
 * A cutting plan for other programs.
 *
 * @param unit of the texts of lengths.
 */
export function sheetsJson({ plans, short }: CuttingPlan, unit: Unit): SheetsJson {
  return {
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
  }
}
