import type { Wording } from '../../wording/wording.ts'
import { across, edges } from '../edge.ts'
import type { Figure } from '../figure.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from '../fit.ts'
import { frame } from '../frame.ts'
import type { Hatch } from '../hatch.ts'
import { colours, point, usualText, weights } from '../ink.ts'
import { legend } from '../legend.ts'
import { area, type Mark } from '../mark.ts'
import { painted } from '../painted.ts'
import { picked } from '../picked.ts'
import { ontoPaper, toMm } from '../plane.ts'
import { tints } from '../stock.ts'
import { cutMarks } from './cuts.ts'
import { pieceNames } from './names.ts'
import { loopOf, rectangle, type SheetPlan } from './sheet-plan.ts'
import { planWords } from './words.ts'

/** A cutting plan drawn: pieces with their names and sizes, what is left over hatched, the cuts numbered in their order. */
export function drawCuttingPlan(plan: SheetPlan, wording: Wording, options: FigureOptions = {}): Figure {
  const room = { ...usualRoom, ...options }
  const has = picked(options.labels)
  const size = (options.text ?? usualText) * point
  const [width, height] = [toMm(plan.sheet.width), toMm(plan.sheet.height)]
  const draw = (scale: number): Mark[] => {
    const place = ontoPaper(height, scale)
    const shape = [
      ...painted([rectangle(place, 0, 0, width, height)], leftOver, { class: 'left-over' }),
      ...plan.placed.map((piece) => area([loopOf(piece, place)], { class: 'stock', fill: tints.sand.tint })),
      area([rectangle(place, 0, 0, width, height)], { class: 'sheet', stroke: { width: weights.edge } }),
    ]
    const { names, keys } = pieceNames(plan, place, size, wording, has)
    const sides = !has('size')
      ? []
      : [
          ...across(edges.top(), {
            from: 0,
            to: width * scale,
            text: wording.length(plan.sheet.width),
            size,
          }),
          ...across(edges.right(width * scale, height * scale), {
            from: 0,
            to: height * scale,
            text: wording.length(plan.sheet.height),
            size,
          }),
        ]
    const all = [
      ...shape,
      ...names,
      ...sides,
      ...cutMarks(plan, [...names, ...sides], place, size, has('cuts')),
    ]
    const below = [...keys, ...(plan.remark === undefined ? [] : [{ text: plan.remark }])]
    return [...all, ...legend(all, below, size, room.maxWidth - 1.5)]
  }
  return frame({
    marks: fitted(draw, room, scales(plan, size)),
    title: wording.say('figures.sheet-cut', { stock: wording.name(plan.stock) }),
    alternative: planWords(plan, wording),
    ...(options.key !== undefined && { key: options.key }),
  })
}

/** Even the narrowest piece holds a letter. */
function scales({ sheet, placed }: SheetPlan, size: number): { least: number; most: number } {
  const { least, most } = leastAndMost(Math.max(toMm(sheet.width), toMm(sheet.height)), size)
  const narrowest = Math.min(...placed.flatMap(({ width, height }) => [toMm(width), toMm(height)]))
  return { least: Math.min(most, Math.max(least, (1.3 * size) / narrowest)), most }
}

const strokes: Hatch = {
  tile: 2.4,
  turn: 45,
  colour: '#c9c2b2',
  width: 0.18,
  lines: [{ level: true, at: 1.2 }],
}
const leftOver = { tint: colours.paper, hatch: strokes, film: false } as const
