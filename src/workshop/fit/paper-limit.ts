import { listOf, suggestWord } from '../../length/finding.ts'
import { formatSize } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import { type Cutting, cutFrom } from './cutting/cut-from.ts'
import type { Limit, Miss } from './limit.ts'
import type { PaperPiece } from './paper-pieces.ts'
import { everything, type NamedSize, type Paper, type Question, QuestionError } from './question.ts'
import type { Trial } from './trial.ts'

/** The paper that there is of one stock. */
export interface Supply {
  readonly stock: string
  readonly sheets: readonly NamedSize[]
}

/**
 * Which stock has which sheets. One sheet is meant of each stock, unless the teacher names one; scraps are of one stock.
 *
 * @param stocks of the lesson.
 * @throws QuestionError when a stock is not the lesson's, or scraps could be of several.
 */
export function suppliesOf({ paper, stock: only }: Question, stocks: readonly string[]): Supply[] {
  const known = (stock: string): string => {
    const found = stocks.find((s) => s.toLowerCase() === stock.toLowerCase())
    if (found !== undefined) return found
    if (stock.toLowerCase() === everything) return everything
    throw new QuestionError(`The lesson has nothing of stock \`${stock}\``, suggestWord(stock, stocks))
  }
  const own = (one: Paper): string | undefined => one.stock ?? only
  const named = paper.flatMap((one) => own(one) ?? []).map(known)
  const byStock = new Map<string, NamedSize[]>()
  for (const one of paper) {
    const stock = own(one)
    if (stock === undefined && one.kind === 'scraps' && stocks.length !== 1)
      throw new QuestionError(
        `The lesson uses ${listOf(stocks)}: it is not said which of them the scraps are`,
        `Write for example \`--stock "${stocks[0]}"\`, or \`--stock ${everything}\` for pieces of all`,
      )
    const of = stock === undefined ? stocks.filter((s) => !named.includes(s)) : [known(stock)]
    for (const s of of) byStock.set(s, [...(byStock.get(s) ?? []), ...one.sizes])
  }
  return [...byStock].map(([stock, sheets]) => ({ stock, sheets }))
}

/** The pieces that a supply is for. */
export const piecesOf = ({ stock }: Supply, pieces: readonly PaperPiece[]): PaperPiece[] =>
  pieces.filter((piece) => stock === everything || piece.stock === stock)

/** How the pieces of a trial are cut from a supply. */
export const cuttingOf = (supply: Supply, pieces: readonly PaperPiece[]): Cutting =>
  cutFrom(
    piecesOf(supply, pieces),
    supply.sheets.map(({ size }) => size),
  )

/** All pieces of a stock must come out of the paper that there is of it. */
export function paperLimit(supply: Supply, unit: Unit): Limit {
  return {
    hopeless: (trial) => {
      const draft = trial.draft()
      return draft !== undefined && decided(supply, cuttingOf(supply, draft.pieces)).is !== 'cut'
    },
    misses: (trial) => missesIn(supply, trial, unit),
  }
}

/** The cutting, unless nobody can say: then the question is too large. */
function decided(supply: Supply, cutting: Cutting): Cutting {
  if (cutting.is !== 'too many') return cutting
  throw new QuestionError(
    `There are ${cutting.pieces} pieces of ${nameOf(supply)}: too many to go through every way of cutting them`,
    'Up to eleven different pieces of a stock can be gone through, or more where some are alike: name another stock with `--stock`',
  )
}

function missesIn(supply: Supply, trial: Trial, unit: Unit): Miss[] {
  const { card, pieces } = trial.proven()
  if (!card) return []
  const cutting = decided(supply, cuttingOf(supply, pieces))
  const paper = `${nameOf(supply)}, ${listOf(supply.sheets.map(({ text }) => text))}`
  const miss = (message: string, suggestion: string): Miss[] => [{ limit: 'paper', message, suggestion }]
  switch (cutting.is) {
    case 'too large': {
      const { name, size, turns } = cutting.piece
      const fixed = turns ? '' : ', and its pattern must stay upright'
      return miss(
        `\`${name}\` would be ${formatSize(size, unit)}, too large for ${paper}${fixed}`,
        `Use a sheet of at least ${formatSize(size, unit)}`,
      )
    }
    case 'too much':
      return miss(
        `The pieces of ${paper} have more area than there is paper`,
        'Use a larger sheet, or one more',
      )
    case 'no way':
      return miss(
        `There is paper enough of ${paper}, but no way of cutting from edge to edge gets ${piecesText(piecesOf(supply, pieces))} out of it`,
        'Use a larger sheet, or one more, or cut the pieces out with scissors',
      )
    default:
      return []
  }
}

export const nameOf = ({ stock }: Supply): string => (stock === everything ? 'all stocks' : stock)

const piecesText = (pieces: readonly PaperPiece[]): string =>
  listOf(pieces.map(({ name, count }) => (count === 1 ? `\`${name}\`` : `${count} \`${name}\``)))
