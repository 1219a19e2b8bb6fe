import { isUsable } from '../desk/server/ports.ts'
import { ExpressionError } from '../length/expression.ts'
import { listOf, suggestWord } from '../length/finding.ts'
import { type Length, type Size, shorter, zero } from '../length/length.ts'
import { readLength, readSize } from '../length/text.ts'
import { UsageError } from './problems.ts'

/** A wished size: as written, for file names, and as read; or only which way the lesson's own size is to be turned. */
export interface SizeWish {
  readonly text: string
  readonly size?: Size
  readonly turned?: 'portrait' | 'landscape'
}

/** Reads a value that is one of a few words. */
export const readChoice =
  <const W extends string>(words: readonly W[]) =>
  (text: string): W => {
    const word = words.find((w) => w === text.toLowerCase())
    if (word !== undefined) return word
    const choice = listOf(words, 'or')
    throw new UsageError(`Unexpected \`${text}\`, expected ${choice}`, suggestWord(text, words))
  }

/** Reads a list of such words, with commas between them. */
export const readChoices =
  <const W extends string>(words: readonly W[]) =>
  (text: string): readonly W[] => [...new Set(text.split(',').map((word) => readChoice(words)(word.trim())))]

/** Reads a whole number from `least` up. */
export const readCount =
  (least: number) =>
  (text: string): number => {
    const n = /^\d+$/.test(text) ? Number(text) : Number.NaN
    if (Number.isSafeInteger(n) && n >= least) return n
    throw new UsageError(
      `Unexpected \`${text}\`, expected a whole number from ${least} up`,
      'Write a number such as `14`',
    )
  }

/** Reads a port at which a browser opens pages. */
export const readPort = (text: string): number => {
  const port = readCount(1)(text)
  if (isUsable(port)) return port
  throw new UsageError(
    `No browser opens a page at port ${port}, or it is the system’s own`,
    'Write a number such as `3700`',
  )
}

/** Reads the size of a shut card, such as `7 x 5 in` or `A6 landscape`, or which way it is to be turned: `portrait`, `landscape`. */
export const readSizeWish = (text: string): SizeWish => {
  const word = text.trim().toLowerCase()
  if (word === 'portrait' || word === 'landscape') return { text: word, turned: word }
  return readSheetSize(text, 'a card')
}

/** Reads the size of a card or a sheet, such as `12 x 12 in` or `A5`. */
export const readSheetSize = (text: string, what = 'a sheet'): { text: string; size: Size } => {
  const size = reading(text, readSize)
  for (const side of [size.width, size.height])
    if (!shorter(zero, side))
      throw new UsageError(
        `\`${text.trim()}\` is no size for ${what}, expected sides longer than zero`,
        'Write `7 x 5 in`',
      )
  return { text: text.trim(), size }
}

/** Reads the finest mark of a ruler, such as `1/16 in`. */
export const readGrid = (text: string): Length => {
  const grid = reading(text, readLength)
  if (shorter(zero, grid)) return grid
  throw new UsageError(
    `No ruler has marks \`${text}\` apart, expected a length above zero`,
    'Write `1/16 in`',
  )
}

/** Reads a length above zero, such as `7 in`. */
export const readLengthWish = (text: string): Length => {
  const length = reading(text, readLength)
  if (shorter(zero, length)) return length
  throw new UsageError(`\`${text}\` is no length for a card, expected one above zero`, 'Write `7 in`')
}

/** Reads a value; a mistake in it is wrong usage. */
export function reading<T>(text: string, read: (text: string) => T): T {
  try {
    return read(text)
  } catch (error) {
    if (error instanceof ExpressionError) throw new UsageError(error.message, error.suggestion)
    throw error
  }
}
