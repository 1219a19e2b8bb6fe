import { type Length, over, type Size, smaller, times, zero } from '../../../length/length.ts'
import { type Area, type Box, type Kind, smallestBoxes } from './boxes.ts'
import { cover } from './cover.ts'
import { layOut, type Stroke } from './lay-out.ts'
import { selectionsOf, waysToPart } from './selections.ts'

/** A piece to cut, and how many of it. */
export interface Wanted {
  readonly name: string
  readonly size: Size
  readonly count: number
  /** Whether it may be turned a quarter: a pattern with a top may not. */
  readonly turns: boolean
}

/** A piece where it lies on its sheet, from the sheet's lower left corner; width and height as it lies. */
export interface Placed extends Size {
  readonly name: string
  readonly x: Length
  readonly y: Length
  readonly turned: boolean
}

/** A cut from edge to edge of what is in hand: `across: 'width'` is an upright one, measured from the left edge. */
export interface Cut {
  readonly across: Stroke['across']
  readonly at: Length
  /** The same from the edge of what is in hand: where the trimmer is set. */
  readonly set: Length
  readonly from: Length
  readonly to: Length
}

/** How one sheet is cut. */
export interface Layout {
  /** Which of the sheets, counted from 0. */
  readonly sheet: number
  readonly placed: readonly Placed[]
  /** In the order in which the trimmer makes them. */
  readonly cuts: readonly Cut[]
}

/** What came of it: the layouts; or what is in the way: one piece too large, too little paper, or no way of cutting. */
export type Cutting =
  | { readonly is: 'cut'; readonly layouts: readonly Layout[] }
  | { readonly is: 'too large'; readonly piece: Wanted }
  | { readonly is: 'too much' | 'no way' }
  | { readonly is: 'too many'; readonly pieces: number }

/** Ways of parting that can still be gone through while a person waits: those of eleven different pieces. */
const mostWays = 3 ** 11

/**
 * Cuts pieces from sheets with cuts from edge to edge, as a trimmer makes them. The answer is exact: when it says that
 * they do not come out, there is no such way. Nothing is lost between two cuts, as with a blade.
 */
export function cutFrom(wanted: readonly Wanted[], sheets: readonly Size[]): Cutting {
  const large = wanted.find(({ size, turns }) => !sheets.some((sheet) => goesOn(size, sheet, turns)))
  if (large) return { is: 'too large', piece: large }
  if (wanted.length === 0) return { is: 'cut', layouts: [] }
  const { kinds, names, areas, mark } = inMarks(wanted, sheets)
  if (paperOf(kinds) > paperOf(areas.map((area) => ({ ...area, count: 1 })))) return { is: 'too much' }
  const counts = kinds.map(({ count }) => count)
  if (waysToPart(counts) > mostWays)
    return { is: 'too many', pieces: counts.reduce((sum, count) => sum + count, 0) }
  const selections = selectionsOf(counts)
  const shares = cover(selections, smallestBoxes(kinds, selections, areas), areas)
  if (!shares) return { is: 'no way' }
  const next = names.map((list) => list.values())
  return {
    is: 'cut',
    layouts: shares.flatMap(({ sheet, box }) => {
      const area = sheets[sheet]
      return area ? [{ sheet, ...onSheet(box, area, mark, (kind) => next[kind]?.next().value ?? '') }] : []
    }),
  }
}

/** Whether a piece lies on a sheet. */
const goesOn = ({ width, height }: Size, sheet: Size, turns: boolean): boolean =>
  (width.lte(sheet.width) && height.lte(sheet.height)) ||
  (turns && height.lte(sheet.width) && width.lte(sheet.height))

const paperOf = (list: readonly (Area & { readonly count: number })[]): number =>
  list.reduce((sum, { width, height, count }) => sum + width * height * count, 0)

/** The pieces in whole marks, those alike together with all their names; and of each sheet the marks that it has. */
function inMarks(
  wanted: readonly Wanted[],
  sheets: readonly Size[],
): { kinds: Kind[]; names: string[][]; areas: Area[]; mark: Length } {
  const sides = wanted.flatMap(({ size }) => [size.width, size.height])
  const mark = sides.reduce<Length>((a, b) => a.gcd(b) as Length, zero)
  const marks = (x: Length): number => over(x, mark).floor().valueOf()
  const kinds: (Kind & { count: number })[] = []
  const names: string[][] = []
  for (const { name, size, count, turns } of wanted) {
    const [width, height] = [marks(size.width), marks(size.height)]
    const alike = kinds.findIndex((k) => k.width === width && k.height === height && k.turns === turns)
    const kind = alike < 0 ? kinds.push({ width, height, count: 0, turns }) - 1 : alike
    names[kind] = [...(names[kind] ?? []), ...Array.from({ length: count }, () => name)]
    kinds[kind] = { width, height, turns, count: (kinds[kind]?.count ?? 0) + count }
  }
  const areas = sheets.map(({ width, height }) => ({ width: marks(width), height: marks(height) }))
  return { kinds, names, areas, mark }
}

function onSheet(
  box: Box,
  sheet: Size,
  mark: Length,
  nameOf: (kind: number) => string,
): Pick<Layout, 'placed' | 'cuts'> {
  const up = (x: Length): number => over(x, mark).ceil().valueOf()
  const { laid, strokes } = layOut(box, { width: up(sheet.width), height: up(sheet.height) })
  const at = (n: number): Length => times(mark, n)
  return {
    placed: laid.map(({ kind, x, y, width, height, turned }) => ({
      name: nameOf(kind),
      x: at(x),
      y: at(y),
      width: at(width),
      height: at(height),
      turned,
    })),
    cuts: strokes.map(({ across, at: where, set, from, to }) => ({
      across,
      at: at(where),
      set: at(set),
      from: at(from),
      // A sheet may end between two marks.
      to: smaller(at(to), across === 'width' ? sheet.height : sheet.width),
    })),
  }
}
