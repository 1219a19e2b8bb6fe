import { drawCuttingPlan } from '../draw/cutting-plan/cutting-plan.ts'
import type { SheetPlan } from '../draw/cutting-plan/sheet-plan.ts'
import type { Finding } from '../length/finding.ts'
import { formatSize } from '../length/format.ts'
import { inches, mm, type Size, type Unit } from '../length/length.ts'
import { figureTargets, mainCard } from '../lesson/figure-target.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import { stocksOf } from '../lesson/stocks.ts'
import type { Wording } from '../wording/wording.ts'
import { type Cutting, cutFrom, type Layout } from '../workshop/fit/cutting/cut-from.ts'
import { type PaperPiece, paperPieces } from '../workshop/fit/paper-pieces.ts'
import type { Draw } from './figure.ts'

/** The sheet that is taken where the lesson does not say: common practice, no source, and A4 of ISO 216. */
const usualSheets: Readonly<Record<Unit, Size>> = {
  in: { width: inches(12), height: inches(12) },
  mm: { width: mm(210), height: mm(297) },
}

type Lesson = Pick<FilledLesson, 'cards' | 'unit' | 'frontMatter' | 'wording'>

/**
 * Draws how all pieces of one kit that are of one stock come out of one sheet of it.
 *
 * @param of the stock, or a piece of it; the stock of the main card's first piece where nothing is said.
 */
export function drawKitSheet(
  lesson: Lesson,
  of: string | undefined,
  options: Parameters<Draw>[2],
): ReturnType<Draw> {
  const stock = stockOf(lesson, of)
  // What `of` does not name, or names twice, has been told with the lesson.
  if (stock === undefined) return { findings: [] }
  const { cards, unit, wording } = lesson
  const pieces = paperPieces(
    cards.map(({ card }) => card),
    cards.length > 1,
  ).filter((piece) => piece.stock === stock)
  const size = sheetOf(lesson, stock)
  const cutting = cutFrom(pieces, [size])
  const [layout] = cutting.is === 'cut' ? cutting.layouts : []
  if (!layout) return { findings: [notFrom(cutting, stock, size, unit)] }
  return drawCuttingPlan(planOf(layout, stock, size, pieces, wording), wording, options)
}

function stockOf({ cards }: Lesson, of: string | undefined): string | undefined {
  if (of !== undefined && stocksOf(cards).includes(of)) return of
  const [target] = figureTargets(of, cards)
  if (!target) return undefined
  const { structure, envelope, lettering } = target.card.card
  if (target.of === 'envelope') return envelope?.stock.name
  const name = lettering.find((one) => one.name === target.of)?.on ?? target.of
  const own = name === undefined ? structure.pieces[0] : structure.pieces.find((piece) => piece.name === name)
  return own?.stock.name ?? mainCard([target.card.card])?.structure.pieces[0]?.stock.name
}

function sheetOf({ frontMatter: { sheets = [] }, unit }: Lesson, stock: string): Size {
  const own =
    sheets.find((sheet) => sheet.stock === stock) ?? sheets.find((sheet) => sheet.stock === undefined)
  return own?.size ?? usualSheets[unit]
}

const planOf = (
  { placed, cuts }: Layout,
  stock: string,
  sheet: Size,
  pieces: readonly PaperPiece[],
  wording: Wording,
): SheetPlan => ({
  stock,
  sheet,
  placed: placed.map((piece) => ({
    ...piece,
    upright: pieces.some(({ name, turns }) => name === piece.name && !turns),
  })),
  cuts,
  remark: wording.say('figures.one-kit', { stock: wording.name(stock), size: wording.size(sheet) }),
})

function notFrom(cutting: Cutting, stock: string, size: Size, unit: Unit): Omit<Finding, 'place'> {
  const why =
    cutting.is === 'too large'
      ? `\`${cutting.piece.name}\`, ${formatSize(cutting.piece.size, unit)}, does not come out of`
      : cutting.is === 'too many'
        ? `${cutting.pieces} pieces are too many to plan on`
        : 'The pieces of one kit do not come out of'
  return {
    rule: 'figure-not-drawn',
    severity: 'warning',
    message: `${why} one sheet of ${stock}, ${formatSize(size, unit)}, with cuts from edge to edge`,
    suggestion: `Say in the front matter which sheet it is, such as \`sheets: {${stock}: 18 x 24 in}\`, or leave the figure out`,
  }
}
