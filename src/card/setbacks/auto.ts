import { inches, type Length, larger, minus } from '../../length/length.ts'
import type { Workbench } from '../parts.ts'
import type { Side } from '../structure.ts'
import { thicknessAround } from './around.ts'
import { closingCreases, type Edge, leastSetback } from './creases.ts'

/** What shows round a layer like a mat. Common practice, no source. */
const matBorder = inches(1, 8)

/**
 * The border of a layer at an edge where the lesson says `auto`: along a crease that closes over the layer the least
 * that lets it close, elsewhere a mat's. It follows from calipers and foam, never from sizes.
 *
 * A layer on a layer keeps off the crease together with the one below: where the border of that one is enough for both,
 * it has a mat's too.
 */
export function autoBorder(bench: Workbench, layer: string, edge: Edge): Length {
  const { on, side } = bench.sheets.get(layer) ?? { on: () => [] }
  const borders = on().map((name) => {
    const needed = setbackOn(bench, name, side ?? bench.sideOf(name), edge)
    if (!needed) return matBorder
    return bench.sheets.has(name) ? larger(needed, matBorder) : needed
  })
  return borders.reduce(larger, borders[0] ?? matBorder)
}

/** What a layer needs at an edge so that the creases there close; undefined where none closes over it. */
function setbackOn(bench: Workbench, name: string, side: Side, edge: Edge): Length | undefined {
  const below = bench.sheets.get(name)
  if (below) {
    // Turned over it would lie under the sheet that it is on.
    if (side === 'back') return undefined
    const border = below.border?.[edge]()
    if (!border) return undefined
    const needs = below
      .on()
      .flatMap((panel) => setbackOn(bench, panel, below.side ?? bench.sideOf(panel), edge) ?? [])
    return needs.length > 0 ? minus(needs.reduce(larger), border) : undefined
  }
  const bare = bench.bareCreases()
  const needs = closingCreases(bench.built(), name, side)
    .filter((c) => c.edge === edge)
    .map(({ crease }) => thicknessAround(bench, crease, side, bare))
  return needs.length > 0 ? needs.reduce(larger, leastSetback) : undefined
}
