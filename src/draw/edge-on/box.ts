import type { Structure } from '../../card/structure.ts'
import type { Closed, Placement, Pose } from '../../fold/pose.ts'
import { type Flat, flatLine, flatLoop, toMm } from '../plane.ts'
import { inSpace } from '../space.ts'

/** A plate of a box where it is cut: from one end to the other, z upwards. In mm. */
export interface WallCut {
  readonly plate: string
  readonly caliper: number
  readonly from: Flat
  readonly to: Flat
}

/** A cut across the middle of a box, seen as the plate that stays put lies on the table. */
export interface BoxCut {
  readonly along: 'width' | 'height'
  readonly walls: readonly WallCut[]
  /** Creases where they are cut: two plates, and the place. */
  readonly corners: readonly { readonly between: readonly [string, string]; readonly at: Flat }[]
}

/** Of the two cuts across the middle, the one through more plates; along the width if both are alike. */
export function cutBox(structure: Structure, closed: Closed, wanted: readonly string[]): BoxCut {
  const [wide, high] = (['width', 'height'] as const).map((along) => cutAlong(structure, closed, along))
  const score = (cut: BoxCut | undefined): number => {
    const plates = new Set((cut?.walls ?? []).map(({ plate }) => plate))
    return 100 * wanted.filter((name) => plates.has(name)).length + plates.size
  }
  const better = score(high) > score(wide) ? high : wide
  return better ?? { along: 'width', walls: [], corners: [] }
}

function cutAlong({ plates, pieces, hinges }: Structure, { pose }: Closed, along: BoxCut['along']): BoxCut {
  const [axis, other] = along === 'width' ? ([0, 1] as const) : ([1, 0] as const)
  const middle = middleOf(plates, pose, other)
  const spotsOn = (place: Placement, loop: readonly Flat[], closed: boolean): Flat[] => {
    const spots = loop.map((spot) => inSpace(place, spot))
    return spots.flatMap((p, i): Flat[] => {
      const before = spots.at(i - 1)
      if (!before || (i === 0 && !closed)) return []
      const [a, b] = [before[other] - middle, p[other] - middle]
      if (a > 0 === b > 0) return []
      const share = a / (a - b)
      return [[before[axis] + (p[axis] - before[axis]) * share, before[2] + (p[2] - before[2]) * share]]
    })
  }
  const calipers = new Map(pieces.map(({ name, stock }) => [name, toMm(stock.caliper)]))
  return {
    along,
    walls: plates.flatMap(({ name, piece, outline, holes }): WallCut[] => {
      const place = pose.get(name)
      if (!place) return []
      const spots = [outline, ...holes].flatMap((loop) => spotsOn(place, flatLoop(loop), true))
      // From end to end along the cut: between two of them in turn is paper, and then a window.
      const ends = spots.sort((a, b) => a[0] - b[0] || a[1] - b[1])
      return ends.flatMap((from, i): WallCut[] => {
        const to = ends[i + 1]
        if (i % 2 === 1 || !to || Math.hypot(to[0] - from[0], to[1] - from[1]) < 1e-3) return []
        return [{ plate: name, caliper: calipers.get(piece) ?? 0, from, to }]
      })
    }),
    corners: hinges.flatMap(({ between, line }) => {
      const place = pose.get(between[0])
      const [at] = place ? spotsOn(place, flatLine(line), false) : []
      return at ? [{ between, at }] : []
    }),
  }
}

/** The middle of everything along an axis, a hair aside: no corner lies just on it. */
function middleOf(plates: Structure['plates'], pose: Pose, axis: 0 | 1): number {
  const all = plates.flatMap(({ name, outline }) => {
    const place = pose.get(name)
    return place ? flatLoop(outline).map((spot) => inSpace(place, spot)[axis]) : []
  })
  return (Math.min(...all) + Math.max(...all)) / 2 + 0.0123
}
