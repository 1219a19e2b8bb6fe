import type { Hinge, Pad, Structure } from '../../card/structure.ts'
import type { Closed, MapCell } from '../../fold/pose.ts'
import { type Flat, flatLine, flatLoop, toMm } from '../plane.ts'
import { inSpace } from '../space.ts'

/** A stretch of a cut through the shut card in which the same sheets lie on each other. In mm. */
export interface Column {
  readonly from: number
  readonly to: number
  /** Foam and pads in front of all sheets. */
  readonly before: number
  /** From front to back; `behind` is the foam and the pads on the back of each. */
  readonly sheets: readonly { readonly plate: string; readonly caliper: number; readonly behind: number }[]
  readonly thickness: number
}

/** A plate where it is cut: once, or more often if it has windows. */
export interface Bar {
  readonly plate: string
  readonly caliper: number
  readonly from: number
  readonly to: number
}

/** A crease where it is cut, and whether it is folded on itself or lies flat. */
export interface Crossing {
  readonly hinge: Hinge
  readonly at: number
  readonly folded: boolean
}

/** Something on a plate that is no plate: a letter. */
export interface CutPad {
  readonly pad: Pad
  readonly from: number
  readonly to: number
  /** Whether it lies on the side of its plate that looks to the front. */
  readonly inFront: boolean
}

/** A cut through the shut card, at right angles to the table. Along it, mm from the left or the lower edge. */
export interface Cut {
  /** Along the width, at a height above the lower edge; or along the height, at a distance from the left edge. */
  readonly along: 'width' | 'height'
  readonly at: number
  readonly long: number
  readonly columns: readonly Column[]
  readonly bars: readonly Bar[]
  readonly crossings: readonly Crossing[]
  readonly pads: readonly CutPad[]
}

/** Shorter than this, in mm, a stretch is an error of rounding. */
const sliver = 1e-3

/** Cuts the shut card along a straight line. */
export function cutAt(structure: Structure, closed: Closed, along: Cut['along'], at: number): Cut {
  const turn = ([x, y]: Flat): Flat => (along === 'width' ? [x, y] : [y, x])
  const columns = columnsAt(closed.map, turn, at)
  const faceUp = new Map(closed.plates.map((laid) => [laid.plate, laid.faceUp]))
  const laid = (plate: string, spots: readonly Flat[]): Flat[] => {
    const place = closed.pose.get(plate)
    return place ? spots.map((spot) => turn(inSpace(place, spot) as unknown as Flat)) : []
  }
  return {
    along,
    at,
    long: toMm(along === 'width' ? closed.size.width : closed.size.height),
    columns,
    bars: barsOf(columns),
    crossings: structure.hinges.flatMap((hinge): Crossing[] => {
      const [p, q] = hinge.between
      const [u] = spansAt(laid(p, flatLine(hinge.line)), at)
      return u === undefined ? [] : [{ hinge, at: u, folded: faceUp.get(p) !== faceUp.get(q) }]
    }),
    pads: (structure.pads ?? []).flatMap((pad): CutPad[] => {
      const [from, to] = spansAt(laid(pad.onto, flatLoop(pad.outline)), at)
      const inFront = (pad.side === 'face') === faceUp.get(pad.onto)
      return from !== undefined && to !== undefined && to - from > sliver ? [{ pad, from, to, inFront }] : []
    }),
  }
}

/** The cells that a line runs through, in their order along it. */
function columnsAt(map: readonly MapCell[], turn: (p: Flat) => Flat, at: number): Column[] {
  return map
    .flatMap(({ outline, sheets, thickness }): Column[] => {
      const [from, to] = spansAt(outline.map(turn), at)
      if (from === undefined || to === undefined || to - from < sliver) return []
      const own = sheets.map((sheet) => ({
        plate: sheet.plate,
        caliper: toMm(sheet.caliper),
        behind: toMm(sheet.behind),
      }))
      const all = own.reduce((sum, { caliper, behind }) => sum + caliper + behind, 0)
      return [{ from, to, sheets: own, thickness: toMm(thickness), before: toMm(thickness) - all }]
    })
    .sort((a, b) => a.from - b.from)
}

/** Where a level line meets a convex outline, or a straight line: from the least to the greatest u. */
function spansAt(loop: readonly Flat[], at: number): number[] {
  const us = loop.flatMap(([u1, v1], i) => {
    const [u0, v0] = loop.at(i - 1) ?? [u1, v1]
    return v0 > at === v1 > at ? [] : [u0 + ((at - v0) / (v1 - v0)) * (u1 - u0)]
  })
  return us.length > 0 ? [Math.min(...us), Math.max(...us)] : []
}

function barsOf(columns: readonly Column[]): Bar[] {
  const bars = new Map<string, Bar[]>()
  for (const { from, to, sheets } of columns)
    for (const { plate, caliper } of sheets) {
      const own = bars.get(plate) ?? []
      const last = own.at(-1)
      if (last && from - last.to < sliver) own[own.length - 1] = { ...last, to }
      else own.push({ plate, caliper, from, to })
      bars.set(plate, own)
    }
  return [...bars.values()].flat()
}
