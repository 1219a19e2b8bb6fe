import {
  type Length,
  larger,
  minus,
  plus,
  type Size,
  same,
  shorter,
  smaller,
  times,
  zero,
} from '../../length/length.ts'
import { type Panel, point, type Strip } from '../strip.ts'
import type { Fold, Hinge, Plate, Segment, Stock } from '../structure.ts'
import type { Built } from '../style.ts'
import { ascending, joinedRuns, outlineOf, type Stretch, sharedAt } from './stretches.ts'

/** A sheet with an upright spine in its middle: as wide as two panels, and as high. */
export interface SlitSheet {
  readonly stock: Stock
  readonly panel: Size
}

/**
 * A band between two slits. It leaves one plate at a valley, steps on with mountains and valleys by turns, and comes to
 * another plate at a valley: its panels are an even number.
 */
export interface Band {
  /** The plate that it comes from, and how far before the spine. */
  readonly wall: string
  readonly height: Length
  /** The plate that it comes to. */
  readonly floor: string
  readonly panels: readonly Panel[]
  /** Where its slits are, from the lower edge. */
  readonly from: Length
  readonly to: Length
}

/** A panel of a band or of the card, as a rectangle. */
interface Part extends Stretch {
  readonly name: string
}

interface Placed extends Band {
  readonly start: Length
  readonly end: Length
  readonly parts: readonly Part[]
}

/**
 * A card with a front, a back and bands between slits, all of one sheet, shown open at a right angle. A plate is what is
 * left of its rectangle when the bands that begin or end on it are cut out.
 *
 * @param led the creases that are bent; the others follow.
 */
export function slitCard(
  sheet: SlitSheet,
  bands: readonly Band[],
  led: readonly (readonly [string, string])[],
): Built {
  const angles = led.map((hinge) => ({ hinge, degrees: 90 }))
  const base = slitSheet(sheet, bands)
  return {
    ...base,
    bonds: [],
    stops: [],
    // Many bands can be laid flat in many ways, and the one that is meant is known.
    shut: base.hinges.map(({ between }) => ({ hinge: between, degrees: 180 })),
    display: { angles, plate: 'back', rests: 'upright', turn: -70 },
  }
}

function slitSheet({ stock, panel }: SlitSheet, bands: readonly Band[]): Strip {
  const { width, height } = panel
  const size = { width: times(width, 2), height }
  const placed = bands.map((band) => place(band, width))
  const parts: Part[] = [
    { name: 'front', left: zero, right: width, from: zero, to: height },
    { name: 'back', left: width, right: size.width, from: zero, to: height },
    ...placed.flatMap((band) => band.parts),
  ]
  const stretches = new Map(parts.map((part) => [part.name, stretchesOf(part, placed)]))
  const creases = (one: string, other: string, x: Length, fold: Fold): Hinge[] =>
    sharedAt(x, stretches.get(one) ?? [], stretches.get(other) ?? []).map(({ from, to }) => ({
      between: [one, other],
      line: { from: point(x, from), to: point(x, to) },
      fold,
    }))
  const hinges = [
    ...creases('front', 'back', width, 'valley'),
    ...placed.flatMap(({ wall, floor, parts, start }) => {
      const names = [wall, ...parts.map((part) => part.name), floor]
      const xs = [start, ...parts.map((part) => part.right)]
      return xs.flatMap((x, i) =>
        creases(names[i] ?? '', names[i + 1] ?? '', x, i % 2 === 0 ? 'valley' : 'mountain'),
      )
    }),
  ]
  const plates = parts.map(({ name }): Plate => {
    const outline = outlineOf(stretches.get(name) ?? [])
    return { name, piece: 'base', outline, holes: [] }
  })
  const cuts = slitsOf(placed, height)
  return { pieces: [{ name: 'base', kind: 'base', stock, count: 1, size, cuts }], plates, hinges }
}

function place(band: Band, spine: Length): Placed {
  const start = minus(spine, band.height)
  let end = start
  const parts = band.panels.map(({ name, length }): Part => {
    const left = end
    end = plus(end, length)
    return { name, left, right: end, from: band.from, to: band.to }
  })
  return { ...band, start, end, parts }
}

/** A plate cut at every slit: a band that begins on it shortens it from the right, one that ends on it from the left. */
function stretchesOf({ name, left, right, from, to }: Part, bands: readonly Placed[]): Stretch[] {
  const own = bands.filter(({ wall, floor }) => wall === name || floor === name)
  const ends = ascending([from, to, ...own.flatMap((band) => [band.from, band.to])])
  return ends.slice(1).map((end, i) => {
    const begin = ends[i] ?? from
    const here = own.filter((band) => band.from.lte(begin) && band.to.gte(end))
    return {
      from: begin,
      to: end,
      left: here.filter((b) => b.floor === name).reduce((x, b) => larger(x, b.end), left),
      right: here.filter((b) => b.wall === name).reduce((x, b) => smaller(x, b.start), right),
    }
  })
}

/** The slits of all bands; bands that touch share one, and on the edge of the sheet there is nothing to cut. */
function slitsOf(bands: readonly Placed[], height: Length): Segment[] {
  const levels = ascending(bands.flatMap(({ from, to }) => [from, to]))
  return levels
    .filter((y) => y.gt(0) && shorter(y, height))
    .flatMap((y) => {
      const own = bands.filter(({ from, to }) => same(from, y) || same(to, y))
      const runs = joinedRuns(own.map(({ start, end }) => ({ from: start, to: end })))
      return runs.map(({ from, to }) => ({ from: point(from, y), to: point(to, y) }))
    })
}
