import { type Length, plus } from '../../length/length.ts'
import type { Workbench } from '../parts.ts'
import type { Hinge, Side } from '../structure.ts'
import type { InCrease } from './between.ts'

/**
 * At least the thickness that folds around a crease: calipers and foam of everything stuck on the two sides that it
 * closes over, and of the mechanism's own panels that come to lie between them, with everything stuck on those.
 *
 * Sizes and places do not count, so it is more than the truth where things lie beside each other or far from the
 * crease, and a border that follows from it never depends on itself.
 *
 * @param side of the two panels that the crease closes over.
 * @param bare what lies in the creases of the bare mechanism.
 */
export function thicknessAround(
  bench: Workbench,
  crease: Hinge,
  side: Side,
  bare: InCrease | undefined,
): Length {
  const inside = new Set(bare?.(crease).flatMap(({ plates }) => plates))
  const parts = new Set<string>()
  for (const panel of crease.between) addStuckOn(bench, panel, side, parts)
  for (const panel of inside) addStuckOn(bench, panel, undefined, parts)
  return plus(
    ...[...inside].flatMap((panel) => caliperOfPanel(bench, panel)),
    ...[...parts].flatMap((part) => bench.sheets.get(part)?.height() ?? []),
  )
}

/** Adds what is stuck on one side of a panel, or on any, and what is stuck on that. */
function addStuckOn(bench: Workbench, panel: string, side: Side | undefined, parts: Set<string>): void {
  for (const [name, sheet] of bench.sheets) {
    if (parts.has(name) || !sheet.on().includes(panel)) continue
    if (side && (sheet.side ?? bench.sideOf(panel)) !== side) continue
    parts.add(name)
    addStuckOn(bench, name, undefined, parts)
  }
}

function caliperOfPanel({ built }: Workbench, panel: string): Length[] | Length {
  const { plates, pieces } = built()
  const piece = plates.find(({ name }) => name === panel)?.piece
  return pieces.find(({ name }) => name === piece)?.stock.caliper ?? []
}
