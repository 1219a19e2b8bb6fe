import {
  BufferGeometry,
  DoubleSide,
  DynamicDrawUsage,
  Float32BufferAttribute,
  Mesh,
  MeshBasicMaterial,
} from 'three'
import { isThere } from './framing.ts'
import { dimmed, shaded } from './light.ts'
import { type Rigid, spotOf, turned, type Vector } from './rigid.ts'
import type { CardTold } from './told.ts'

/** The bends of the paper, and how they follow the plates. */
export interface Spines {
  readonly mesh: Mesh
  readonly follow: (places: readonly Rigid[], moment: number, towards: Vector) => void
}

/** Between two plates that lie on each other, the crease is as thick as what is between them. */
export function spinesOf(card: CardTold): Spines {
  const shape = new BufferGeometry()
  const count = card.creases.length * 2
  const corners = new Float32BufferAttribute(new Float32Array(count * 12), 3)
  const colours = new Float32BufferAttribute(new Float32Array(count * 12), 3)
  corners.setUsage(DynamicDrawUsage)
  colours.setUsage(DynamicDrawUsage)
  shape.setAttribute('position', corners)
  shape.setAttribute('color', colours)
  shape.setIndex(Array.from({ length: count }, (_, i) => [0, 1, 2, 0, 2, 3].map((k) => 4 * i + k)).flat())
  const mesh = new Mesh(shape, new MeshBasicMaterial({ vertexColors: true, side: DoubleSide }))
  mesh.frustumCulled = false
  const follow = (places: readonly Rigid[], moment: number, towards: Vector): void => {
    for (const [
      i,
      {
        between: [p, q],
        line: [from, to],
      },
    ] of card.creases.entries()) {
      const [a, b, plate] = [places[p], places[q], card.plates[p]]
      const stock = plate && card.stocks[plate.stock]
      if (!a || !b || !plate || !stock) continue
      const hidden = !isThere(card, p, moment) || !isThere(card, q, moment) || stock.opacity < 1
      for (const [k, side] of [1, -1].entries()) {
        const z = (side * plate.caliper) / 2
        const four = [
          spotOf(a, [...from, z]),
          spotOf(a, [...to, z]),
          spotOf(b, [...to, z]),
          spotOf(b, [...from, z]),
        ]
        const [n, m] = [turned(a.turn, [0, 0, side]), turned(b.turn, [0, 0, side])]
        const colour = shaded(
          side > 0 ? stock.tint : stock.away,
          (dimmed(n, towards) + dimmed(m, towards)) / 2,
        )
        for (const [c, spot] of four.entries()) {
          const at = (i * 2 + k) * 4 + c
          corners.setXYZ(at, ...(hidden ? ([0, 0, 0] as const) : spot))
          colours.setXYZ(at, ...colour)
        }
      }
    }
    corners.needsUpdate = true
    colours.needsUpdate = true
  }
  return { mesh, follow }
}
