import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Wording } from '../wording/wording.ts'
import type { CutKind, Path } from './cut-lines.ts'
import { colours, dashes, font, weights } from './ink.ts'
import { label, wrap } from './label.ts'
import { line, type Mark } from './mark.ts'
import { closedPath, num, openPath, type Spot } from './num.ts'
import type { Flat } from './plane.ts'
import { type Area, caption, lap, type Traced } from './tracing-layout.ts'

const strokes: Readonly<Record<CutKind, Record<string, string>>> = {
  mark: { stroke: colours.slate, 'stroke-width': num(weights.dimension) },
  valley: dashed('valley'),
  mountain: dashed('mountain'),
  cut: { stroke: colours.ink, 'stroke-width': num(weights.edge), 'stroke-linejoin': 'round' },
}

function dashed(fold: 'valley' | 'mountain'): Record<string, string> {
  return {
    stroke: colours.ink,
    'stroke-width': num(weights.crease),
    'stroke-dasharray': dashes[fold].join(' '),
  }
}

/** One page of templates at its real size: an `svg` as large as the area, in mm. */
export function tracingPage(traced: readonly Traced[], area: Area, wording: Wording): Element {
  const texts = traced.flatMap((one) => [...captionMarks(one, area, wording), ...seamMarks(one, area)])
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'tracing',
      width: `${num(area.width)}mm`,
      height: `${num(area.height)}mm`,
      viewBox: `0 0 ${num(area.width)} ${num(area.height)}`,
      role: 'img',
      'aria-label': traced.map((one) => wordsOf(one, wording)).join('; '),
      fill: 'none',
      'font-family': font,
    },
    ...traced.map((one) => pieceNode(one, area)),
    ...texts.map((mark) => mark.node()),
  )
}

/** `base, part 2 of 4`. */
function nameOf(piece: string, tile: Traced['tile'], { say, name }: Wording): string {
  if (!tile) return name(piece)
  const parts = tile.columns * tile.rows
  return say('figures.part-of-piece', { piece: name(piece), part: partOf(tile), parts })
}

const partOf = ({ column, columns, row }: NonNullable<Traced['tile']>): number => (row - 1) * columns + column

/** The lines of a piece; an inner drawing cuts off what is not on this page. */
function pieceNode({ piece, turned, window, at }: Traced, area: Area): Element {
  const spot = ([x, y]: Flat): Spot => {
    const [px, py] = turned ? [piece.height - y, x] : [x, y]
    return [px - window.x, window.height - (py - window.y)]
  }
  const path = ({ spots, closed }: Path): string => (closed ? closedPath : openPath)(spots.map(spot))
  const edge = weights.edge
  return s(
    'svg',
    {
      x: num(at[0] - edge),
      y: num(area.height - at[1] - window.height - edge),
      width: num(window.width + 2 * edge),
      height: num(window.height + 2 * edge),
      viewBox: [-edge, -edge, window.width + 2 * edge, window.height + 2 * edge].map((n) => num(n)).join(' '),
      overflow: 'hidden',
    },
    ...(['mark', 'valley', 'mountain', 'cut'] as const).flatMap((kind) =>
      piece.lines[kind].map((one) => s('path', { class: kind, d: path(one), ...strokes[kind] })),
    ),
  )
}

const textSize = 2.8

/** What a piece is: `base: dark blue card, 8 1/2 × 5 in`. */
const wordsOf = ({ piece, tile }: Traced, wording: Wording): string =>
  wording.say('figures.template', {
    piece: nameOf(piece.name, tile, wording),
    stock: wording.name(piece.stock),
    size: wording.size(piece.size),
    count: piece.count,
  })

/** The same under it. */
function captionMarks(one: Traced, area: Area, wording: Wording): Mark[] {
  const { window, at } = one
  const lines = wrap(wordsOf(one, wording), Math.max(window.width, caption.width - 2), textSize)
  return lines
    .slice(0, 2)
    .map((text, i) =>
      label(text, [at[0], area.height - at[1] + 3.4 + i * 3.2], { class: 'name', size: textSize }),
    )
}

/** Where tiles are joined: a line that both have, with two marks on it and a letter. */
function seamMarks({ window, at, tile }: Traced, area: Area): Mark[] {
  if (!tile) return []
  const [left, bottom] = [at[0], area.height - at[1]]
  const level = (y: number): number => bottom - y
  const stroke = { class: 'seam', width: weights.hidden, colour: colours.slate, dash: dashes.hidden }
  const joint = (from: Spot, to: Spot, letter: string): Mark[] => {
    const along = (part: number): Spot => [
      from[0] + (to[0] - from[0]) * part,
      from[1] + (to[1] - from[1]) * part,
    ]
    return [
      line(from, to, stroke),
      ...[along(0.25), along(0.75)].flatMap(([x, y]) => [
        ...diamond([x, y]),
        label(letter, [x + 2.2, y - 1.4], {
          class: 'seam',
          size: textSize,
          bold: true,
          colour: colours.slate,
        }),
      ]),
    ]
  }
  const { column, columns, row, rows } = tile
  const upright = (x: number, letter: string) =>
    joint([left + x, level(0)], [left + x, level(window.height)], letter)
  const lying = (y: number, letter: string) =>
    joint([left, level(y)], [left + window.width, level(y)], letter)
  // Seams beside each other are counted row by row, then those over each other.
  const beside = (c: number): string => letterOf((row - 1) * (columns - 1) + c - 1)
  const over = (r: number): string => letterOf(rows * (columns - 1) + (r - 1) * columns + column - 1)
  return [
    ...(column > 1 ? upright(lap / 2, beside(column - 1)) : []),
    ...(column < columns ? upright(window.width - lap / 2, beside(column)) : []),
    ...(row > 1 ? lying(lap / 2, over(row - 1)) : []),
    ...(row < rows ? lying(window.height - lap / 2, over(row)) : []),
  ]
}

const diamond = ([x, y]: Spot): Mark[] => {
  const tips: Spot[] = [
    [x, y - 1.6],
    [x + 1.6, y],
    [x, y + 1.6],
    [x - 1.6, y],
  ]
  return tips.map((tip, i) =>
    line(tip, tips[(i + 1) % 4] ?? tip, { class: 'seam', width: weights.hidden, colour: colours.slate }),
  )
}

/** A, B … Z, AA, AB … */
const letterOf = (n: number): string =>
  n < 26 ? String.fromCharCode(65 + n) : letterOf(Math.floor(n / 26) - 1) + letterOf(n % 26)
