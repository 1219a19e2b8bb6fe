import type { Structure } from '../../card/structure.ts'
import type { Wording } from '../../wording/wording.ts'
import { boxAround } from '../box.ts'
import { lineInside, lineOutside } from '../clip.ts'
import { glintLines, glintStroke } from '../film.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from '../fit.ts'
import type { Sheet } from '../frame.ts'
import { colours, point, usualText, weights } from '../ink.ts'
import { crease, legend } from '../legend.ts'
import { area, line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { painted } from '../painted.ts'
import { picked } from '../picked.ts'
import type { Flat } from '../plane.ts'
import { makePalette, type Paint } from '../stock.ts'
import { borderMarks, flushMarks, measuredAt } from './borders.ts'
import { layerNames, panelNames } from './names.ts'
import { type OnPaper, paperFor } from './paper.ts'
import type { PlaceView } from './view.ts'
import { placeLegend, placeWords } from './words.ts'

type Line = readonly [Spot, Spot]

/** A layer or a span in its place: what it goes on, and how far its edges are from the edges of that. */
export function drawPlace(
  view: PlaceView,
  structure: Structure,
  wording: Wording,
  options: FigureOptions,
): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const palette = makePalette(structure)
  const [paint, ground] = [palette(view.piece.stock), palette(view.ground.stock, view.back)]
  const has = picked(options.labels)
  const entries = placeLegend(view, wording, has)
  const paperAt = paperFor(view)
  const draw = (scale: number): Mark[] => {
    const placed = paperAt(scale)
    const measured = measuredAt(view.border, placed, wording, size)
    const around = [
      ...(has('borders') ? borderMarks(view.border, placed, measured, wording, size) : []),
      ...(has('names') ? panelNames(view, placed, measured, size, wording) : []),
    ]
    const flush = has('borders') ? flushMarks(view.border, placed, size, around, wording) : []
    const shine = paint.film ? placed.laid.flatMap(([outline = []]) => shineOn(outline, scale)) : []
    const glints = shine.map(([a, b]) => line(a, b, glintStroke))
    const all = [...shapeMarks(placed, paint, ground), ...glints, ...around, ...flush]
    const names = layerNames(view, placed, { paint, shine }, size, wording, has)
    return [...all, ...names, ...legend(all, entries, size, room.maxWidth - 1.5)]
  }
  const box = boxAround(view.panels.flatMap((p) => p.loop))
  const long = Math.max(box.right - box.left, box.bottom - box.top)
  return {
    marks: fitted(draw, room, leastAndMost(long, size)),
    title: wording.say('figures.piece-in-place', { piece: wording.name(view.piece.name) }),
    alternative: placeWords(view, wording, has),
    ...(options.key !== undefined && { key: options.key }),
  }
}

function shapeMarks(placed: OnPaper, paint: Paint, ground: Paint): Mark[] {
  const hint = { class: 'hint', width: weights.hidden, colour: colours.slate }
  const stroke = { width: weights.layer }
  // What is behind a film shows through it; paper hides it.
  const seen = (all: readonly Line[]) =>
    paint.film ? all : all.flatMap((ends) => uncovered(ends, placed.laid))
  return [
    ...placed.ground.map((loops) => area(loops, { class: 'stock', fill: ground.tint })),
    ...placed.hints.map(([a, b]) => line(a, b, hint)),
    ...placed.creases.flatMap(({ fold, ends }) => seen([ends]).map((part) => crease(fold, part))),
    ...seen(placed.slits).map(([a, b]) => line(a, b, { class: 'slit', width: weights.edge })),
    ...placed.edges.map(([a, b]) => line(a, b, { class: 'panel', width: weights.edge, cap: 'round' })),
    ...placed.laid.flatMap((loops) => painted(loops, paint, { class: 'layer', stroke })),
  ]
}

/** The parts of a line that nothing lies on: beside what is put there, and in its windows. */
const uncovered = (whole: Line, laid: OnPaper['laid']): Line[] =>
  laid.reduce<Line[]>(
    (parts, [outline = [], ...windows]) =>
      parts.flatMap((part) => [
        ...lineOutside(part, outline),
        ...windows.flatMap((window) => lineInside(part, [window])),
      ]),
    [whole],
  )

function shineOn(outline: OnPaper['laid'][number][number], scale: number): Line[] {
  const { left, right, top, bottom } = boxAround(outline)
  const [width, height] = [(right - left) / scale, (bottom - top) / scale]
  const place = ([x, y]: Flat): Spot => [left + x * scale, bottom - y * scale]
  return glintLines(width, height, scale).map(([a, b]) => [place(a), place(b)])
}
