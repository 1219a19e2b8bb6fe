import type { Structure } from '../../card/structure.ts'
import type { Closed, Pose } from '../../fold/pose.ts'
import { type Camera, project } from '../camera.ts'
import { heightsOf } from '../edge-on/heights.ts'
import type { Column } from '../edge-on/section.ts'
import { type Face, facesOf } from '../face/face.ts'
import { colours, weights } from '../ink.ts'
import { area, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { flatLine, toMm } from '../plane.ts'
import { inSpace } from '../space.ts'
import type { Palette } from '../stock.ts'

/** From the front, a little from the right and from below: what lies deeper peeks out there, by so much for its depth. */
export const slantedBy = (share: number): Camera => ({
  right: [1, 0, -0.7 * share],
  up: [0, 1, 0.7 * share],
  eye: [0, 0, 1],
})

/** A plate with both its surfaces: the one that is seen from the front, and the one that it lies on. */
export interface Sheet3 {
  readonly front: Face
  readonly back: Face
}

/** The plates in the order in which they lie, from the one on the table upwards, each as thick as it is. */
export function sheetsUpwards(structure: Structure, closed: Closed): Sheet3[] {
  const { pose, order } = closed
  const heights = levelsIn(structure, closed)
  const calipers = new Map(structure.pieces.map(({ name, stock }) => [name, toMm(stock.caliper)]))
  const half = (name: string): number => {
    const plate = structure.plates.find((one) => one.name === name)
    return (calipers.get(plate?.piece ?? '') ?? 0) / 2
  }
  const moved = (way: number): Pose =>
    new Map(
      [...pose].map(([name, place]) => {
        const [x, y] = place.origin
        return [name, { ...place, origin: [x, y, (heights.get(name) ?? 0) + way * half(name)] as const }]
      }),
    )
  const [fronts, backs] = [facesOf(structure, moved(1)), facesOf(structure, moved(-1))]
  const byName = (faces: readonly Face[], name: string) => faces.find(({ plate }) => plate.name === name)
  return [...order].reverse().flatMap((name): Sheet3[] => {
    const [front, back] = [byName(fronts, name), byName(backs, name)]
    return front && back ? [{ front, back }] : []
  })
}

/** How high the middle of each plate lies above the table, in mm: as in a cut, but all over the card. */
function levelsIn({ hinges, bonds }: Structure, { map, plates }: Closed): Map<string, number> {
  const faceUp = new Map(plates.map((laid) => [laid.plate, laid.faceUp]))
  const columns = map.map(({ sheets, thickness }): Column => {
    const own = sheets.map(({ plate, caliper, behind }) => ({
      plate,
      caliper: toMm(caliper),
      behind: toMm(behind),
    }))
    const all = own.reduce((sum, { caliper, behind }) => sum + caliper + behind, 0)
    return { from: 0, to: 0, sheets: own, thickness: toMm(thickness), before: toMm(thickness) - all }
  })
  const crossings = hinges.map((hinge) => ({
    hinge,
    folded: faceUp.get(hinge.between[0]) !== faceUp.get(hinge.between[1]),
  }))
  const heights = heightsOf({ columns, crossings }, bonds)
  return new Map(
    [...heights].map(([name, all]) => [name, Math.max(...all.flatMap((height) => height ?? []))]),
  )
}

/** The lower surface of a sheet where it shows beyond the upper one. */
export function underside({ back }: Sheet3, camera: Camera, scale: number, palette: Palette): Mark {
  const loops = [back.outline, ...back.holes].map((loop) => loop.map(({ at }) => project(camera, at, scale)))
  const { tint, opacity } = palette(back.piece.stock, true)
  return area(loops, {
    class: 'underside',
    fill: tint,
    ...(opacity !== undefined && { opacity }),
    stroke: { width: weights.hidden },
  })
}

/** The same with the lines of a sheet of which only an edge is seen: heavy ones would run into one another there. */
export const thinner = (mark: Mark): Mark => ({
  ...mark,
  node: () => {
    const node = mark.node()
    return Number(node.properties.strokeWidth) > weights.hidden
      ? { ...node, properties: { ...node.properties, strokeWidth: String(weights.hidden) } }
      : node
  },
})

/** A folded crease as it is seen from outside: round, from one sheet to the other. */
export interface Spine {
  /** The sheet that is nearer to the front; the spine is drawn just before it, over all that is inside the fold. */
  readonly nearer: string
  readonly mark: Mark
}

/** The spines of a shut card. */
export function spinesOf(
  structure: Structure,
  sheets: readonly Sheet3[],
  camera: Camera,
  scale: number,
  palette: Palette,
): Spine[] {
  const place = (name: string): number => sheets.findIndex(({ front }) => front.plate.name === name)
  return structure.hinges.flatMap(({ between, line }): Spine[] => {
    const [p, q] = between.map(place)
    const [low, high] = [sheets[Math.min(p ?? -1, q ?? -1)], sheets[Math.max(p ?? -1, q ?? -1)]]
    if (!low || !high || low === high) return []
    // Flat creases have both sheets the same way up.
    if (low.front.place.normal[2] > 0 === high.front.place.normal[2] > 0) return []
    const out = outwards(
      high.front,
      flatLine(line).map((spot) => inSpace(high.front.place, spot)),
    )
    const caps = flatLine(line).map((spot) => {
      const [top, bottom] = [high.front, low.back].map((face) =>
        project(camera, inSpace(face.place, spot), scale),
      ) as [Spot, Spot]
      return bulge(top, bottom, out)
    })
    const { tint } = palette(high.front.piece.stock, high.front.place.normal[2] < 0)
    const stroke = { width: weights.hidden, colour: colours.ink }
    return [
      {
        nearer: high.front.plate.name,
        mark: area([hull(caps.flat())], { class: 'spine', fill: tint, stroke }),
      },
    ]
  })
}

/** On the paper, away from the plate at its crease. */
function outwards(face: Face, [a, b]: readonly (readonly [number, number, number])[]): Spot {
  if (!a || !b) return [0, 0]
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1
  const normal: Spot = [(b[1] - a[1]) / long, -(b[0] - a[0]) / long]
  const side = face.outline.reduce(
    (sum, { at }) => sum + (at[0] - a[0]) * normal[0] + (at[1] - a[1]) * normal[1],
    0,
  )
  const way = side > 0 ? -1 : 1
  // y runs downwards on the paper.
  return [way * normal[0], -way * normal[1]]
}

/** A round end of a fold, from its upper to its lower sheet. */
function bulge(top: Spot, bottom: Spot, out: Spot): Spot[] {
  const round = Math.min(1, 0.35 * Math.hypot(bottom[0] - top[0], bottom[1] - top[1]))
  return Array.from({ length: 13 }, (_, i) => {
    const share = i / 12
    const away = round * Math.sin(share * Math.PI) ** 0.7
    return [
      top[0] + (bottom[0] - top[0]) * share + out[0] * away,
      top[1] + (bottom[1] - top[1]) * share + out[1] * away,
    ]
  })
}

/** The smallest convex outline round the spots: what a round end sweeps along its crease. Andrew's monotone chain. */
function hull(spots: readonly Spot[]): Spot[] {
  const sorted = [...spots].sort((a, b) => a[0] - b[0] || a[1] - b[1])
  const turn = (o: Spot, a: Spot, b: Spot): number =>
    (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0])
  const half = (all: readonly Spot[]): Spot[] => {
    const chain: Spot[] = []
    for (const spot of all) {
      while (chain.length > 1 && turn(chain.at(-2) as Spot, chain.at(-1) as Spot, spot) <= 0) chain.pop()
      chain.push(spot)
    }
    return chain.slice(0, -1)
  }
  return [...half(sorted), ...half([...sorted].reverse())]
}
