import type { Hinge, Plate, Point, Structure } from '../card/structure.ts'
import { toMm } from '../length/length.ts'

type Spot = readonly [x: number, y: number]

/** The flat pieces as vertices, edges and faces. Plates share vertices where a crease joins them, and only there. */
export interface FlatMesh {
  /** In the frame of the piece, in mm, and how far the piece is moved to the right. */
  readonly vertices: readonly { plate: string; x: number; y: number; shift: number }[]
  readonly edges: readonly { vertices: readonly [number, number]; assignment: 'B' | 'M' | 'V' }[]
  readonly faces: readonly { plate: string; vertices: readonly number[] }[]
  readonly windows: readonly { plate: string; vertices: readonly number[] }[]
}

/** Points nearer than this, in mm, are one. */
const same = 1e-6

/**
 * @param shifts how far to the right each piece is moved, in mm.
 */
export function meshOf({ plates, hinges }: Structure, shifts: ReadonlyMap<string, number>): FlatMesh {
  const lines = hinges.map((hinge) => ({
    hinge,
    ends: [spot(hinge.line.from), spot(hinge.line.to)] as const,
  }))
  const vertices: { plate: string; x: number; y: number; shift: number }[] = []
  const owners: Set<string>[] = []
  const vertexAt = ({ name, piece }: Plate, [x, y]: Spot): number => {
    const partners = lines.filter((line) => isOn([x, y], line.ends)).map(({ hinge }) => hinge.between)
    const joined = reach(name, partners)
    const known = vertices.findIndex(
      (v, i) => Math.hypot(v.x - x, v.y - y) < same && [...joined].some((plate) => owners[i]?.has(plate)),
    )
    if (known >= 0) return known
    owners.push(joined)
    return vertices.push({ plate: name, x, y, shift: shifts.get(piece) ?? 0 }) - 1
  }
  const corners = plates.flatMap(({ piece, outline }) => outline.map((p) => ({ piece, at: spot(p) })))
  const loop = (plate: Plate, ring: readonly Point[]): number[] =>
    ring.map(spot).flatMap((from, i, all) => {
      const to = all[(i + 1) % all.length] ?? from
      // Where a neighbour has a corner, or a crease ends, on this edge.
      const between = [
        ...corners.filter(({ piece }) => piece === plate.piece).map(({ at }) => at),
        ...lines.filter(({ hinge }) => hinge.between.includes(plate.name)).flatMap(({ ends }) => [...ends]),
      ].filter((p) => isOn(p, [from, to]) && distance(p, from) > same && distance(p, to) > same)
      const sorted = between.sort((a, b) => distance(a, from) - distance(b, from))
      const apart = sorted.filter((p, k) => k === 0 || distance(p, sorted[k - 1] ?? p) > same)
      return [from, ...apart].map((p) => vertexAt(plate, p))
    })
  const faces = plates.map((plate) => ({ plate: plate.name, vertices: loop(plate, plate.outline) }))
  const windows = plates.flatMap((plate) =>
    plate.holes.map((hole) => ({ plate: plate.name, vertices: loop(plate, hole) })),
  )
  return { vertices, faces, windows, edges: edgesOf([...faces, ...windows], vertices, lines) }
}

function edgesOf(
  loops: FlatMesh['faces'],
  vertices: FlatMesh['vertices'],
  lines: readonly { hinge: Hinge; ends: readonly [Spot, Spot] }[],
): FlatMesh['edges'] {
  const edges = new Map<string, { vertices: [number, number]; plates: string[] }>()
  for (const { plate, vertices: ring } of loops)
    for (const [i, from] of ring.entries()) {
      const to = ring[(i + 1) % ring.length] ?? from
      const key = [from, to].sort((a, b) => a - b).join()
      const edge = edges.get(key) ?? { vertices: [from, to], plates: [] }
      edge.plates.push(plate)
      edges.set(key, edge)
    }
  return [...edges.values()].map(({ vertices: [from, to], plates }) => {
    const [a, b] = [vertices[from], vertices[to]]
    const middle: Spot = [((a?.x ?? 0) + (b?.x ?? 0)) / 2, ((a?.y ?? 0) + (b?.y ?? 0)) / 2]
    const crease = lines.find(
      ({ hinge, ends }) =>
        plates.length > 1 && plates.every((p) => hinge.between.includes(p)) && isOn(middle, ends),
    )
    const assignment = !crease ? 'B' : crease.hinge.fold === 'valley' ? 'V' : 'M'
    return { vertices: [from, to], assignment }
  })
}

/** The plates that hang together by creases through one point. */
function reach(start: string, pairs: readonly (readonly [string, string])[]): Set<string> {
  const found = new Set([start])
  for (let before = 0; before < found.size; ) {
    before = found.size
    for (const [a, b] of pairs) if (found.has(a) || found.has(b)) found.add(a).add(b)
  }
  return found
}

const spot = ({ x, y }: Point): Spot => [toMm(x), toMm(y)]

const distance = ([x, y]: Spot, [p, q]: Spot): number => Math.hypot(p - x, q - y)

const isOn = (p: Spot, [from, to]: readonly [Spot, Spot]): boolean =>
  distance(p, from) + distance(p, to) < distance(from, to) + same
