import { onGrid } from '../length/grid.ts'
import { inches, type Length, minus, shorter } from '../length/length.ts'
import type { Card } from './card.ts'
import { type Reading, report, say } from './reading.ts'
import type { Hinge, Plate } from './structure.ts'
import { targetOf } from './targets.ts'

/** The least a hand can keep between a layer and a crease that closes over it. Common practice, no source. */
const leastSetback = inches(1, 16)

/** A layer that touches a crease which closes over it will buckle when the card shuts. */
export function checkSetbacks(reading: Reading, card: Card): void {
  const { plates, hinges } = card.structure
  const least = onGrid(leastSetback, reading.grid, 'up')
  for (const layer of card.layers)
    for (const name of layer.on) {
      const panel = plates.find((p) => p.name === name)
      if (!panel) continue
      const closesOver = layer.side === 'face' ? 'valley' : 'mountain'
      for (const hinge of hinges.filter((h) => h.fold === closesOver && h.between.includes(name))) {
        const edge = edgeAt(panel, hinge)
        // Seen from the back, left and right change places.
        const shown = edge && (layer.side === 'back' ? mirrored[edge] : edge)
        if (!shown || !shorter(layer.border[shown], least)) continue
        report(
          reading,
          'setback',
          reading.places.get(layer.name) ?? { line: 1, column: 1 },
          `The ${shown} edge of \`${layer.name}\` is ${say(reading, layer.border[shown])} from a ${hinge.fold} crease of \`${name}\`, so it will buckle when the card shuts`,
          `Leave a border of at least ${say(reading, least)} at its ${shown} edge`,
          'warning',
        )
      }
    }
}

type Edge = 'left' | 'right' | 'top' | 'bottom'
const mirrored: Record<Edge, Edge> = { left: 'right', right: 'left', top: 'top', bottom: 'bottom' }

/** Which edge of a panel a crease lies on. */
function edgeAt(panel: Plate, { line: { from, to } }: Hinge): Edge | undefined {
  const { left, bottom, size } = targetOf(panel, 'face')
  const meets = (a: Length, b: Length, start: Length, extent: Length): 'start' | 'end' | undefined =>
    !a.equals(b) ? undefined : a.equals(start) ? 'start' : minus(a, start).equals(extent) ? 'end' : undefined
  const x = meets(from.x, to.x, left, size.width)
  const y = meets(from.y, to.y, bottom, size.height)
  if (x) return x === 'start' ? 'left' : 'right'
  return y && (y === 'start' ? 'bottom' : 'top')
}
