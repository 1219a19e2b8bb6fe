import { listOf, suggestWord } from '../../length/finding.ts'
import { formatSize } from '../../length/format.ts'
import { fitInside } from '../../length/grid.ts'
import { type Length, minus, over, type Size, same, type Unit } from '../../length/length.ts'
import { cutFrom } from './cutting/cut-from.ts'
import type { Limit } from './limit.ts'
import type { PaperPiece } from './paper-pieces.ts'
import { type NamedSize, type Question, QuestionError } from './question.ts'

/** A piece that is to use a sheet whole. */
export interface Whole {
  readonly sheet: NamedSize
  readonly piece: string
}

/** How much of the sheet a piece uses. */
export interface Use {
  readonly piece: Size
  readonly turned: boolean
  /** Of the area, from 0 to 1. */
  readonly share: number
  /** Whether nothing is left over that the ruler could measure. */
  readonly whole: boolean
  /** What is left over beside it and above it. */
  readonly beside: Length
  readonly above: Length
}

/**
 * Which piece is meant: the one named, or the only one of which the pattern has a top, or else the only patterned one.
 *
 * @throws QuestionError when that is not one piece.
 */
export function wholeOf(sheet: NamedSize, { piece }: Question, pieces: readonly PaperPiece[]): Whole {
  const names = [...new Set(pieces.map(({ name }) => name))]
  if (piece !== undefined) {
    const named = names.find((name) => name.toLowerCase() === piece.toLowerCase())
    if (named !== undefined) return { sheet, piece: named }
    throw new QuestionError(`The lesson has no piece \`${piece}\``, suggestWord(piece, names))
  }
  const namesOf = (list: readonly PaperPiece[]): string[] => [...new Set(list.map(({ name }) => name))]
  const upright = namesOf(pieces.filter(({ turns }) => !turns))
  const patterned = namesOf(pieces.filter((p) => p.patterned))
  const [only] = upright.length === 1 ? upright : patterned.length === 1 ? patterned : []
  if (only !== undefined) return { sheet, piece: only }
  const choice = upright.length > 1 ? upright : patterned.length > 1 ? patterned : names
  throw new QuestionError(
    `It is not said which piece is to use the ${sheet.text} whole`,
    `Write \`--piece "${choice[0]}"\`${choice.length > 1 ? `, or another of ${listOf(choice.map((name) => `\`${name}\``))}` : ''}`,
  )
}

/** How the piece lies on the sheet; undefined when it does not. */
export function useOf(
  { sheet: { size: sheet }, piece: name }: Whole,
  pieces: readonly PaperPiece[],
  grid: Length,
): Use | undefined {
  const piece = pieces.find((p) => p.name === name)
  if (!piece) return undefined
  const cutting = cutFrom([{ ...piece, count: 1 }], [sheet])
  const placed = cutting.is === 'cut' ? cutting.layouts[0]?.placed[0] : undefined
  if (!placed) return undefined
  const { width, height, turned } = placed
  const atEdge = (side: Length, of: Length): boolean => same(side, fitInside(of, grid))
  return {
    piece: { width, height },
    turned,
    share: over(width.mul(height) as Length, sheet.width.mul(sheet.height) as Length).valueOf(),
    whole: atEdge(width, sheet.width) && atEdge(height, sheet.height),
    beside: minus(sheet.width, width),
    above: minus(sheet.height, height),
  }
}

/** The piece must come out of the sheet. */
export function wholeLimit(whole: Whole, unit: Unit, grid: Length): Limit {
  return {
    hopeless: (trial) => {
      const draft = trial.draft()
      return draft !== undefined && useOf(whole, draft.pieces, grid) === undefined
    },
    misses: (trial) => {
      const { card, pieces } = trial.proven()
      if (!card || useOf(whole, pieces, grid)) return []
      const piece = pieces.find((p) => p.name === whole.piece)
      return [
        {
          limit: 'whole',
          message: piece
            ? `\`${piece.name}\` would be ${formatSize(piece.size, unit)}, too large for the ${whole.sheet.text}`
            : `There is no \`${whole.piece}\``,
          suggestion: 'Use a larger sheet',
        },
      ]
    },
  }
}
