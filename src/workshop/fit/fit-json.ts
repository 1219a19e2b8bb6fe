import { formatGrid } from '../../length/format.ts'
import type { Length, Size, Unit } from '../../length/length.ts'
import { type FindingJson, findingJson } from '../finding-json.ts'
import { type LengthJson, lengthJson, type SizeJson, sizeJson } from '../length-json.ts'
import type { Answer, FoundSize, NextSize, StockLayouts } from './answer.ts'
import type { Miss } from './limit.ts'

export interface NextJson {
  readonly closed: SizeJson
  /** What is in the way: the card itself, its lettering, or something that was asked. */
  readonly why: readonly Miss[]
}

/** How one sheet is cut; `x` and `y` from its lower left corner, cuts in the order in which they are made. */
export interface LayoutJson {
  readonly stock: string
  readonly sheet: SizeJson
  readonly placed: readonly (SizeJson & {
    readonly piece: string
    readonly x: LengthJson
    readonly y: LengthJson
    readonly turned: boolean
  })[]
  readonly cuts: readonly {
    readonly across: 'width' | 'height'
    readonly at: LengthJson
    /** From the edge of what is in hand: where the trimmer is set. */
    readonly set: LengthJson
    readonly from: LengthJson
    readonly to: LengthJson
  }[]
}

export interface FoundJson {
  readonly closed: SizeJson
  readonly thickness: LengthJson
  readonly layouts: readonly LayoutJson[]
  /** What the envelope leaves over the card, the shorter side first. */
  readonly room?: SizeJson
  /** How much of the sheet the piece uses, and what is left beside it and above it. */
  readonly use?: SizeJson & {
    readonly share: number
    readonly whole: boolean
    readonly turned: boolean
    readonly beside: LengthJson
    readonly above: LengthJson
  }
  readonly findings: readonly FindingJson[]
}

/** What `fit --json` answers. */
export interface FitJson {
  readonly lesson: string
  readonly units: Unit
  readonly grid: string
  readonly asked: {
    readonly paper: readonly { readonly stock: string; readonly sheets: readonly SizeJson[] }[]
    readonly envelope?: { readonly name: string; readonly size: SizeJson; readonly holds: SizeJson }
    readonly whole?: { readonly piece: string; readonly sheet: SizeJson }
    readonly lettering: boolean
  }
  /** The bounds, how many sizes lie between them, and what all of them keep. */
  readonly searched: {
    readonly from: SizeJson
    readonly to: SizeJson
    readonly sizes: number
    readonly keeps: 'proportions' | 'width' | 'height'
  }
  /** Missing when no size does all that is asked; then `nearest` says what comes nearest. */
  readonly found?: FoundJson
  readonly next?: NextJson
  readonly alike: readonly SizeJson[]
  readonly otherShape?: FoundJson
  readonly ranges: readonly {
    readonly from: SizeJson
    readonly to: SizeJson
    readonly below?: NextJson
    readonly above?: NextJson
  }[]
  readonly nearest?: NextJson
}

/** The answer for other programs. */
export function fitJson(answer: Answer): FitJson {
  const { lesson, unit, grid, asked, searched, found, next, alike, otherShape, ranges, nearest } = answer
  const S = (size: Size): SizeJson => sizeJson(size, unit)
  const { supplies, envelope, whole, lettering } = asked
  return {
    lesson,
    units: unit,
    grid: formatGrid(grid),
    asked: {
      paper: supplies.map(({ stock, sheets }) => ({ stock, sheets: sheets.map(({ size }) => S(size)) })),
      ...(envelope && {
        envelope: { name: envelope.name, size: S(envelope.size), holds: S(envelope.holds) },
      }),
      ...(whole && { whole: { piece: whole.piece, sheet: S(whole.sheet.size) } }),
      lettering,
    },
    searched: { ...searched, from: S(searched.from), to: S(searched.to) },
    ...(found && { found: foundJson(found, unit) }),
    ...(next && { next: nextJson(next, unit) }),
    alike: alike.map(S),
    ...(otherShape && { otherShape: foundJson(otherShape, unit) }),
    ranges: ranges.map(({ from, to, below, above }) => ({
      from: S(from),
      to: S(to),
      ...(below && { below: nextJson(below, unit) }),
      ...(above && { above: nextJson(above, unit) }),
    })),
    ...(nearest && { nearest: nextJson(nearest, unit) }),
  }
}

const nextJson = ({ closed, misses }: NextSize, unit: Unit): NextJson => ({
  closed: sizeJson(closed, unit),
  why: misses,
})

function foundJson({ closed, thickness, warnings, cutting, room, use }: FoundSize, unit: Unit): FoundJson {
  const L = (x: Length): LengthJson => lengthJson(x, unit)
  return {
    closed: sizeJson(closed, unit),
    thickness: L(thickness),
    layouts: cutting.flatMap((one) => layoutsJson(one, unit)),
    ...(room && { room: sizeJson(room, unit) }),
    ...(use && {
      use: {
        ...sizeJson(use.piece, unit),
        share: use.share,
        whole: use.whole,
        turned: use.turned,
        beside: L(use.beside),
        above: L(use.above),
      },
    }),
    findings: warnings.map(findingJson),
  }
}

function layoutsJson({ supply, layouts }: StockLayouts, unit: Unit): LayoutJson[] {
  const L = (x: Length): LengthJson => lengthJson(x, unit)
  return layouts.flatMap(({ sheet, placed, cuts }): LayoutJson[] => {
    const given = supply.sheets[sheet]
    if (!given) return []
    return [
      {
        stock: supply.stock,
        sheet: sizeJson(given.size, unit),
        placed: placed.map(({ name, x, y, turned, ...size }) => ({
          piece: name,
          x: L(x),
          y: L(y),
          ...sizeJson(size, unit),
          turned,
        })),
        cuts: cuts.map(({ across, at, set, from, to }) => ({
          across,
          at: L(at),
          set: L(set),
          from: L(from),
          to: L(to),
        })),
      },
    ]
  })
}
