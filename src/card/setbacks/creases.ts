import { inches, type Length, minus } from '../../length/length.ts'
import type { Border } from '../card.ts'
import type { Fold, Hinge, Plate, Side, Structure } from '../structure.ts'
import { targetOf } from '../targets.ts'

/** An edge of a panel as it is seen with the side in question towards you. */
export type Edge = keyof Border

/** The least a hand can keep between a layer and a crease that closes over it. Common practice, no source. */
export const leastSetback = inches(1, 16)

const mirrored: Record<Edge, Edge> = { left: 'right', right: 'left', top: 'top', bottom: 'bottom' }
const headOver: Record<Edge, Edge> = { left: 'left', right: 'right', top: 'bottom', bottom: 'top' }

/** The creases along the edges of a panel that close over one of its sides: valleys over its face, mountains over its back. */
export function closingCreases(
  { plates, hinges, upsideDown = [] }: Pick<Structure, 'plates' | 'hinges' | 'upsideDown'>,
  panel: string,
  side: Side,
): { crease: Hinge; edge: Edge }[] {
  const plate = plates.find(({ name }) => name === panel)
  // As it is read: turned over sideways, or head over heels.
  const outside = upsideDown.includes(panel) ? headOver : mirrored
  const closing: Fold = side === 'face' ? 'valley' : 'mountain'
  return hinges.flatMap((crease) => {
    if (!plate || crease.fold !== closing || !crease.between.includes(panel)) return []
    const edge = edgeAt(plate, crease)
    return edge ? [{ crease, edge: side === 'back' ? outside[edge] : edge }] : []
  })
}

/** Which edge of a panel a crease lies on; undefined for one that is slanted or runs inside the panel's rectangle. */
function edgeAt(panel: Plate, { line: { from, to } }: Hinge): Edge | undefined {
  const { left, bottom, size } = targetOf(panel, 'face')
  const meets = (a: Length, b: Length, start: Length, extent: Length): 'start' | 'end' | undefined =>
    !a.equals(b) ? undefined : a.equals(start) ? 'start' : minus(a, start).equals(extent) ? 'end' : undefined
  const x = meets(from.x, to.x, left, size.width)
  const y = meets(from.y, to.y, bottom, size.height)
  if (x) return x === 'start' ? 'left' : 'right'
  return y && (y === 'start' ? 'bottom' : 'top')
}
