import type { Structure } from '../card/structure.ts'
import { formatSize } from '../length/format.ts'
import type { Unit } from '../length/length.ts'
import { type Box, boxAround, near } from './box.ts'
import { clipLine, clipToBox } from './clip.ts'
import { type FigureOptions, fitted, usualRoom } from './fit.ts'
import type { Sheet } from './frame.ts'
import { colours, nameShare, point, usualText, weights } from './ink.ts'
import { capHeight, label } from './label.ts'
import { creaseStroke, legend } from './legend.ts'
import { area, line, type Mark } from './mark.ts'
import { nameIn } from './names.ts'
import type { Spot } from './num.ts'
import { borderMarks, flushMarks } from './place-borders.ts'
import type { PlaceView } from './place-view.ts'
import { placeLegend, placeWords } from './place-words.ts'
import { type Flat, openEdges } from './plane.ts'
import { makePalette, type Palette } from './stock.ts'
import { upMark } from './up.ts'

/** How much of a neighbouring panel is drawn, in mm of the drawing. */
const stub = 9

/** A layer or a span in its place: what it goes on, and how far its edges are from the edges of that. */
export function drawPlace(view: PlaceView, structure: Structure, unit: Unit, options: FigureOptions): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const palette = makePalette(structure)
  const entries = placeLegend(view, unit)
  const draw = (scale: number): Mark[] => {
    const placed = onPaper(view, scale)
    const shape = shapeMarks(view, placed, palette)
    const borders = borderMarks(view.border, measured(placed), unit, size)
    const names = panelNames(view, placed, size)
    const around = [...borders, ...names]
    const flush = flushMarks(view.border, measured(placed), size, around)
    const inside = layerNames(view, placed, palette, size, unit)
    const all = [...shape, ...around, ...flush]
    return [...all, ...inside, ...legend(all, entries, size, room.maxWidth - 1.5)]
  }
  const loops = view.panels.flatMap((p) => p.loop)
  const box = boxAround(loops)
  const long = Math.max(box.right - box.left, box.bottom - box.top)
  return {
    marks: fitted(draw, room, { least: 12 / long, most: Math.max(1, 24 / long) }),
    defs: palette.defs(),
    title: `${view.piece.name}, in its place`,
    alternative: placeWords(view, unit),
    ...(options.key !== undefined && { key: options.key }),
  }
}

interface OnPaper {
  readonly region: Box
  readonly panels: readonly (readonly Spot[])[]
  readonly neighbours: readonly (readonly Spot[])[]
  readonly laid: readonly (readonly (readonly Spot[])[])[]
  readonly creases: readonly { readonly fold: 'valley' | 'mountain'; readonly ends: readonly [Spot, Spot] }[]
}

/** Everything at this scale, y downwards; of neighbours only a stub. */
function onPaper(view: PlaceView, scale: number): OnPaper {
  const place = ([x, y]: Flat): Spot => [x * scale, -y * scale]
  const panels = view.panels.map((p) => p.loop.map(place))
  const neighbours = view.neighbours.map((loop) => loop.map(place))
  const [whole, on] = [boxAround([...panels, ...neighbours].flat()), boxAround(panels.flat())]
  const region = {
    left: Math.max(whole.left, on.left - stub),
    right: Math.min(whole.right, on.right + stub),
    top: Math.max(whole.top, on.top - stub),
    bottom: Math.min(whole.bottom, on.bottom + stub),
  }
  return {
    region,
    panels,
    neighbours,
    laid: view.laid.map((loops) => loops.map((loop) => loop.map(place))),
    creases: view.creases.flatMap(({ fold, ends: [a, b] }) => {
      const ends = clipLine([place(a), place(b)], region)
      return ends ? [{ fold, ends }] : []
    }),
  }
}

const measured = ({ region, panels, laid }: OnPaper) => ({
  region,
  // A span reaches over several panels and is measured from the outer edges of all of them.
  panel: boxAround((laid.length < panels.length ? panels : panels.slice(0, 1)).flat()),
  layer: boxAround(laid[0]?.[0] ?? []),
})

function shapeMarks(view: PlaceView, placed: OnPaper, palette: Palette): Mark[] {
  const { region, panels, neighbours, laid, creases } = placed
  const ground = palette.paint(view.ground.stock, view.back)
  const paint = palette.paint(view.piece.stock)
  const opacity = paint.opacity === undefined ? {} : { opacity: paint.opacity }
  const all = [...panels, ...neighbours]
  // Where panels meet there is a crease; a span is seen without them, and its neighbours are drawn all round.
  const open = creases.length > 0 ? openEdges(all) : all.map(edgesOf)
  const hints = open
    .slice(panels.length)
    .flat()
    .map((edge) => clipLine(edge, region))
    .filter((edge) => edge !== undefined)
  const edges = open.slice(0, panels.length).flat()
  return [
    ...all.map((loop) => area([clipToBox(loop, region)], { class: 'stock', fill: ground.tint })),
    ...hints.map(([a, b]) => line(a, b, { class: 'hint', width: weights.hidden, colour: colours.slate })),
    ...creases.map(({ fold, ends: [a, b] }) => line(a, b, creaseStroke(fold))),
    ...edges.map(([a, b]) => line(a, b, { class: 'panel', width: weights.edge, cap: 'round' })),
    ...laid.map((loops) =>
      area(loops, { class: 'layer', fill: paint.fill, ...opacity, stroke: { width: weights.layer } }),
    ),
  ]
}

const edgesOf = (loop: readonly Spot[]) =>
  loop.map((p, i): [Spot, Spot] => [p, loop[(i + 1) % loop.length] ?? p])

/** The panels' names below the shape, or beside it where creases run across. */
function panelNames(view: PlaceView, { region, panels }: OnPaper, size: number): Mark[] {
  const small = size * nameShare
  const first = view.creases[0]?.ends
  const beside = first !== undefined && Math.abs(first[0][1] - first[1][1]) < 1e-6
  const marks: Mark[] = []
  for (const [i, { name }] of view.panels.entries()) {
    const box = boxAround(panels[i] ?? [])
    for (let row = 0; row < 3; row++) {
      const away = 1.4 + row * small * 1.2
      const at: Spot = beside
        ? [region.left - away, (box.top + box.bottom) / 2]
        : [(box.left + box.right) / 2, region.bottom + away + small * capHeight]
      const mark = label(name, at, {
        class: 'name',
        size: small,
        colour: colours.slate,
        anchor: 'middle',
        turned: beside,
      })
      if (row < 2 && marks.some((m) => near(m.box, mark.box, 1.2))) continue
      marks.push(mark)
      break
    }
  }
  return marks
}

/** The piece's own name and size on it, and its direction, where they fit. */
function layerNames(view: PlaceView, { laid }: OnPaper, palette: Palette, size: number, unit: Unit): Mark[] {
  const paint = palette.paint(view.piece.stock)
  const ground = paint.patterned ? { ground: paint.tint } : {}
  const own = { ...ground, colour: colours.ink }
  return laid.flatMap(([outline = [], ...holes]) => {
    const box = boxAround(outline)
    const corner: Spot = [box.left + 2.2, box.bottom - 1.8]
    const up = view.piece.stock.direction === 'upright' ? upMark(corner, size * nameShare, paint) : []
    const fits = up.every((m) => m.box.right < box.right - 1 && m.box.top > box.top + 1)
    const taken = {
      boxes: [...holes.map((h) => boxAround(h)), ...(fits ? up : []).map((m) => m.box)],
      lines: [],
    }
    const lines = [view.piece.name, formatSize(view.piece.size, unit)]
    const both = nameIn(box, lines, size * nameShare, taken, own)
    const named = both.length > 0 ? both : nameIn(box, [view.piece.name], size * nameShare, taken, own)
    return [...(fits ? up : []), ...named]
  })
}
