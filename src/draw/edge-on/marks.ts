import { s } from 'hastscript'
import type { Card } from '../../card/card.ts'
import { type Box, boxAround } from '../box.ts'
import { dimensionLine, edges } from '../edge.ts'
import { colours, weights } from '../ink.ts'
import { capHeight, label, wrap } from '../label.ts'
import { area, arrow, line, type Mark } from '../mark.ts'
import { num, type Spot } from '../num.ts'
import { painted } from '../painted.ts'
import { makePalette, type Palette } from '../stock.ts'
import { isMeant } from './names.ts'
import type { Block, LetterBlock } from './pads.ts'
import type { Seated } from './seat.ts'
import type { Strip } from './strips.ts'

const onPaper = (spots: readonly Spot[]): Spot[] => spots.map(([x, z]) => [x, -z])

/** Sheets as they are cut, what is accented last: its heavier outline lies over those of its neighbours. */
export function sheetMarks(
  strips: readonly Pick<Strip, 'plates' | 'outline' | 'panels'>[],
  { structure }: Card,
  accented: readonly string[],
): Mark[] {
  const palette = makePalette(structure)
  const sheets = strips.flatMap(({ plates, outline }) => {
    const plate = structure.plates.find(({ name }) => name === plates[0])
    const piece = structure.pieces.find(({ name }) => name === plate?.piece)
    const width = piece?.kind === 'base' ? weights.layer : weights.hidden
    // What is cut through is a step darker than what is seen from the front: white card shows on white paper.
    const paint = piece ? palette(piece.stock, true) : { tint: colours.paper, film: false }
    return painted([onPaper(outline)], paint, { class: 'sheet', stroke: { width } })
  })
  const accents = strips.flatMap(({ plates, outline, panels }) => {
    const own = panels.filter(({ plate }) => accented.includes(plate))
    return own.length === plates.length ? [{ outline }] : own
  })
  return [
    ...sheets,
    ...accents.map(({ outline }) =>
      area([onPaper(outline)], { class: 'accent', stroke: { width: accentWidth, colour: colours.rust } }),
    ),
  ]
}

/** Where a crease lies flat: a line across the sheet, so that one sees where a panel ends. */
export const creaseMarks = (spots: readonly { readonly at: Spot; readonly thick: number }[]): Mark[] =>
  spots.map(({ at: [x, z], thick }) =>
    line([x, -z - thick / 2], [x, -z + thick / 2], { class: 'fold', width: weights.hidden }),
  )

const accentWidth = 0.6

export const foamMark = ({ outline }: Block): Mark =>
  area([onPaper(outline)], {
    class: 'foam',
    fill: '#ffffff',
    stroke: { width: weights.dimension, dash: [0.5, 0.5] },
  })

export const padMarks = (pads: readonly LetterBlock[], palette: Palette): Mark[] =>
  pads.flatMap(({ outline, stock }) => {
    const paint = stock ? palette(stock, true) : { tint: colours.paper, film: false }
    return painted([onPaper(outline)], paint, { class: 'pad', stroke: { width: weights.hidden } })
  })

export const dot = ([x, y]: Spot): Mark => ({
  node: () => s('circle', { class: 'dot', cx: num(x), cy: num(y), r: '0.45', fill: colours.ink }),
  box: boxAround([[x, y]], 0.45),
})

/** From the drawing to its first row of names, and from row to row in text sizes. */
const [away, pitch] = [2.2, 1.4]

/** Names in their rows, with a line from each to a dot in what it names. */
export function nameMarks(names: readonly Seated[], box: Box, size: number, of: string | undefined): Mark[] {
  return names.flatMap(({ name, above, row, left, drops }) => {
    const base = above
      ? box.top - away - row * pitch * size
      : box.bottom + away + capHeight * size + row * pitch * size
    const end = above ? base + 0.3 * size + 0.3 : base - capHeight * size - 0.6
    const bold = isMeant(name, of)
    const thin = { class: 'leader', width: weights.dimension }
    const [first, last] = [drops[0]?.x ?? 0, drops.at(-1)?.x ?? 0]
    return [
      ...drops.flatMap(({ x, dots }) => {
        const far = above ? Math.min(...dots) : Math.max(...dots)
        return [line([x, end], [x, -far], thin), ...dots.map((z) => dot([x, -z]))]
      }),
      ...(last - first > 0.01 ? [line([first, end], [last, end], thin)] : []),
      label(name.text, [left, base], { class: 'name', size, colour: colours.slate, ...(bold && { bold }) }),
    ]
  })
}

/** A level extension line, without what lies within a hair of a name. */
function level(y: number, from: number, to: number, clear: readonly Box[]): Mark[] {
  const thin = { class: 'extension', width: weights.dimension }
  const names = clear.filter(
    (box) => box.right > from && box.top < y + 0.4 && box.bottom > y - 0.4 && box.right - box.left > 1,
  )
  const ends = names.flatMap(({ left, right }) => [left - 0.5, right + 0.5]).sort((a, b) => a - b)
  return [from, ...ends].flatMap((start, i, all) => {
    const end = i + 1 < all.length ? all[i + 1] : to
    return i % 2 === 0 && end !== undefined && end - start > 0.2 ? [line([start, y], [end, y], thin)] : []
  })
}

/** The thickness, to the right of the drawing, its text level. */
export function thickMarks({
  from,
  until,
  low,
  high,
  text,
  size,
  clear,
}: {
  /** Where the dimension stands: to the right of this. */
  readonly from: number
  /** How far along the paper that which is so thick reaches. */
  readonly until: number
  readonly low: number
  readonly high: number
  readonly text: string
  readonly size: number
  /** What its extension lines stop at: names on their way. */
  readonly clear: readonly Box[]
}): Mark[] {
  const edge = { ...edges.right(0, 0), origin: [from, -low] as Spot }
  const [at, height] = [2.6, high - low]
  const long = height >= 5
  const tail = long ? 0 : 3
  // `about` above the number and its unit.
  const lines = wrap(text, size, size)
  const deep = (lines.length - 1) * size * 1.2 + capHeight * size
  return [
    ...[low, high].flatMap((z) => level(-z, z === low ? from + 0.8 : until + 0.8, from + at + 0.8, clear)),
    dimensionLine(edge, -tail, height + tail, at),
    arrow([from + at, -low], [0, long ? 1 : -1]),
    arrow([from + at, -high], [0, long ? -1 : 1]),
    ...lines.map((words, i) =>
      label(words, [from + at + 1.6, -(low + high) / 2 - deep / 2 + capHeight * size + i * size * 1.2], {
        class: 'measure',
        size,
      }),
    ),
  ]
}
