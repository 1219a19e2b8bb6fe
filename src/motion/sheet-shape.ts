import { BufferGeometry, Float32BufferAttribute, ShapeUtils, Vector2 } from 'three'
import { hatchSpot } from './paper.ts'
import type { Flat, HatchTold, PlateTold } from './told.ts'

/** The three sides of a plate as shapes: what shows of its face, of its back, and all round of its edge. */
export interface SheetShapes {
  readonly face: BufferGeometry
  readonly back: BufferGeometry
  readonly rim: BufferGeometry
}

/** A plate as thick as its sheet, its middle at z = 0. */
export function sheetShapes(
  { outline, holes, cuts, caliper }: PlateTold,
  hatch: HatchTold | null,
): SheetShapes {
  const flat = [outline, ...holes].map((loop) => loop.map(([x, y]) => new Vector2(x, y)))
  const [shape = [], ...windows] = flat
  const triangles = ShapeUtils.triangulateShape(shape, windows).flat()
  const spots = [outline, ...holes].flat()
  const side = (z: number, order: readonly number[]): BufferGeometry => {
    const geometry = new BufferGeometry()
    geometry.setAttribute(
      'position',
      new Float32BufferAttribute(
        spots.flatMap(([x, y]) => [x, y, z]),
        3,
      ),
    )
    const marks = spots.flatMap((spot) => (hatch ? hatchSpot(hatch, spot) : [0, 0]))
    geometry.setAttribute('uv', new Float32BufferAttribute(marks, 2))
    geometry.setIndex([...order])
    return geometry
  }
  return {
    face: side(caliper / 2, triangles),
    back: side(-caliper / 2, [...triangles].reverse()),
    rim: rimShape(cuts, caliper / 2),
  }
}

/** The cut edges, as high as the sheet is thick; seen from both sides. */
function rimShape(cuts: readonly (readonly [Flat, Flat])[], half: number): BufferGeometry {
  const geometry = new BufferGeometry()
  const corners = cuts.flatMap(([[x, y], [p, q]]) => [x, y, half, x, y, -half, p, q, -half, p, q, half])
  geometry.setAttribute('position', new Float32BufferAttribute(corners, 3))
  geometry.setIndex(cuts.flatMap((_, i) => [0, 1, 2, 0, 2, 3].map((k) => 4 * i + k)))
  return geometry
}
