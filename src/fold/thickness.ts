import type { Length } from '../length/length.ts'
import type { Layout } from './layout.ts'
import { lengthOf } from './whole.ts'

/**
 * The thickest place of the shut card: over each cell, the calipers of the plates there and the foam between plates
 * that are both there. Exact.
 */
export function thicknessOf({ assembly, groups }: Layout): Length {
  const { model, plates } = assembly
  const thickest = groups.map((shapes) => {
    const here = shapes.map((shape) => plates[shape]?.index ?? 0)
    const sheets = here.reduce((sum, i) => sum + (model.plates[i]?.caliper ?? 0), 0)
    const foam = model.bonds.filter(({ plate, onto }) => here.includes(plate) && here.includes(onto))
    return foam.reduce((sum, { height }) => sum + height, sheets)
  })
  return lengthOf(Math.max(0, ...thickest), model.thinPerMm)
}
