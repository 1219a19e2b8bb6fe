import type { Fold } from '../../card/structure.ts'
import { type Box, boxAround } from '../box.ts'
import { clipLine, clipToBox } from '../clip.ts'
import type { Spot } from '../num.ts'
import { type Flat, openEdges } from '../plane.ts'
import type { Placed } from './borders.ts'
import type { PlaceView } from './view.ts'

type Line = readonly [Spot, Spot]

/** What is drawn of a place, y downwards in mm of the drawing. */
export interface OnPaper extends Placed {
  readonly region: Box
  /** The ground: the panels first, each with its windows, then as much of their neighbours as is drawn. */
  readonly ground: readonly (readonly (readonly Spot[])[])[]
  readonly panels: readonly (readonly Spot[])[]
  /** Edges of panels that no other panel shares, and the same of neighbours. */
  readonly edges: readonly Line[]
  readonly hints: readonly Line[]
  readonly creases: readonly { readonly fold: Fold; readonly ends: Line }[]
  /** Slits, and the edges of the windows of the panels. */
  readonly slits: readonly Line[]
  /** What is put there, each with its windows. */
  readonly laid: readonly (readonly (readonly Spot[])[])[]
}

/** How much of a neighbouring panel is drawn, in mm of the drawing. */
const stub = 9

const edgesOf = (loop: readonly Flat[]) =>
  loop.map((p, i): readonly [Flat, Flat] => [p, loop[(i + 1) % loop.length] ?? p])

/** Gives everything at a scale. */
export function paperFor(view: PlaceView): (scale: number) => OnPaper {
  const loops = [...view.panels.map((p) => p.loop), ...view.neighbours]
  // Where panels meet there is a crease; a span is seen without them, and what is behind it is drawn all round.
  const open = view.creases.length > 0 ? openEdges(loops) : loops.map(edgesOf)
  return (scale) => {
    const place = ([x, y]: Flat): Spot => [x * scale, -y * scale]
    const panels = view.panels.map((p) => p.loop.map(place))
    const all = loops.map((loop) => loop.map(place))
    const windows = view.panels.map((p) => p.windows.map((loop) => loop.map(place)))
    const [whole, on] = [boxAround(all.flat()), boxAround(panels.flat())]
    const region = {
      left: Math.max(whole.left, on.left - stub),
      right: Math.min(whole.right, on.right + stub),
      top: Math.max(whole.top, on.top - stub),
      bottom: Math.min(whole.bottom, on.bottom + stub),
    }
    const clipped = (edge: readonly [Flat, Flat]) => clipLine([place(edge[0]), place(edge[1])], region)
    const lines = open.map((edges) => edges.map(clipped).filter((edge) => edge !== undefined))
    const laid = view.laid.map((own) => own.map((loop) => loop.map(place)))
    return {
      region,
      ground: all.flatMap((loop, i) => {
        const seen = clipToBox(loop, region)
        // A neighbour may lie wholly beyond what is drawn.
        return seen.length > 2 ? [[seen, ...(windows[i] ?? [])]] : []
      }),
      panels,
      edges: lines.slice(0, panels.length).flat(),
      hints: lines.slice(panels.length).flat(),
      creases: view.creases.flatMap(({ fold, ends: both }) => {
        const ends = clipped(both)
        return ends ? [{ fold, ends }] : []
      }),
      slits: [
        ...view.slits.map(clipped).filter((slit) => slit !== undefined),
        ...windows.flat().flatMap(edgesOf),
      ],
      laid,
      // A span reaches over several panels and is measured from the outer edges of all of them.
      panel: boxAround((laid.length < panels.length ? panels : panels.slice(0, 1)).flat()),
      layer: boxAround(laid[0]?.[0] ?? []),
    }
  }
}
