import type { ElementContent } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h, s } from 'hastscript'
import type { Piece } from '../card/structure.ts'
import { drawFigure, type FigureOptions } from '../draw/draw.ts'
import { colours, dashes, weights } from '../draw/ink.ts'
import { num } from '../draw/num.ts'
import { numberIn, type Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { FigureKind } from '../lesson/nodes.ts'
import { isShownShut, mechanismOf } from '../workshop/mechanism.ts'
import { figureHast, type Room } from './figure.ts'
import { type Html, html } from './html-text.ts'
import { measureHast } from './measure.ts'

/** The rooms of a card standing and shut, in mm: beside them the flat pieces have `flatWidth` on A4. */
const rooms = {
  standing: { maxWidth: 48, maxHeight: 42 },
  shut: { maxWidth: 32, maxHeight: 42 },
} as const satisfies Record<string, Room>
const flatWidth = 92

/** What dimensions take round a flat piece, the gap to the next, and how short a small piece may become, in mm. */
const [around, gap, shortest] = [14, 6, 12]
/** The longest side of the largest piece is no shorter than this, whatever room that takes, in mm. */
const leastLong = 18

/**
 * Millimetres on paper for one of the pieces: the same for all, so that they compare. Up to two stand side by side,
 * more in two rows, which are never quite full.
 */
function scaleOf(pieces: readonly Piece[]): number {
  const [rows, full, high] = pieces.length > 2 ? [2, 0.85, 28] : [1, 1, 42]
  const sizes = pieces.map(({ size }) => [numberIn(size.width, 'mm'), numberIn(size.height, 'mm')] as const)
  const widths = sizes.reduce((sum, [width]) => sum + width, 0)
  const fits = Math.min(
    (rows * (flatWidth + gap) * full - pieces.length * (around + gap)) / widths,
    ...sizes.map(([width, height]) => Math.min((flatWidth - around) / width, (high - around) / height)),
  )
  return Math.max(fits, leastLong / Math.max(...sizes.flat()))
}

/** The scale of one piece: that of all, unless it would all but vanish. */
const ownScale = ({ size }: Piece, scale: number): number =>
  Math.max(scale, shortest / Math.max(numberIn(size.width, 'mm'), numberIn(size.height, 'mm')))

/** The pieces of a fold laid flat, and its card standing and shut. */
export interface FoldFigures {
  readonly flat: readonly Html[]
  readonly folded: readonly Html[]
}

/** @param id what the ids in them begin with. */
export function foldFigures(proven: ProvenCard, unit: Unit, id: string): FoldFigures {
  const pieces = mechanismOf(proven.card.structure)
  const scale = scaleOf(pieces)
  const figure = (
    show: FigureKind,
    of: string | undefined,
    caption: string,
    options: FigureOptions & { key: string },
  ): Html[] => {
    const drawn = drawFigure(show, proven, of, unit, options)
    if ('findings' in drawn) return []
    const said = measureHast(caption)
    return [html(toHtml(figureHast({ figure: drawn, across: false }, said, show, options.key)))]
  }
  return {
    flat: pieces.flatMap((piece, i) =>
      figure('flat', piece.name, captionOf(piece), {
        maxWidth: flatWidth,
        maxHeight: 60,
        mostScale: ownScale(piece, scale),
        legend: false,
        key: `${id}-flat-${i + 1}`,
      }),
    ),
    folded: isShownShut(proven.card.structure)
      ? figure('closed', undefined, 'set up', { ...rooms.standing, key: `${id}-set-up` })
      : [
          ...figure('standing', undefined, 'standing', { ...rooms.standing, key: `${id}-standing` }),
          ...figure('closed', undefined, 'shut', { ...rooms.shut, key: `${id}-shut` }),
        ],
  }
}

const captionOf = ({ name, count }: Piece): string =>
  count > 1 ? `${name}, flat; ${count} of them` : `${name}, flat`

/** What the lines of a flat piece mean: a sample of each, and its word. */
export function lineKey(): Html {
  const samples = [
    ['cut', weights.edge, undefined],
    ['valley', weights.crease, dashes.valley],
    ['mountain', weights.crease, dashes.mountain],
  ] as const
  const [width, height] = [14, 1]
  return html(
    toHtml(
      samples.map(([word, weight, dash]): ElementContent => {
        const line = s('line', {
          x1: '0',
          y1: num(height / 2),
          x2: num(width),
          y2: num(height / 2),
          stroke: colours.ink,
          'stroke-width': num(weight),
          ...(dash && { 'stroke-dasharray': dash.map((d) => num(d)).join(' ') }),
        })
        const svg = s(
          'svg',
          {
            width: `${width}mm`,
            height: `${height}mm`,
            viewBox: `0 0 ${width} ${height}`,
            ariaHidden: 'true',
          },
          line,
        )
        return h('span', { className: ['line-sample'] }, [svg, ` ${word}`])
      }),
    ),
  )
}
