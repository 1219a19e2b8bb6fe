import type { Size } from '../length/length.ts'
import { UsageError } from './problems.ts'
import { readSheetSize } from './read-values.ts'

/** A sheet: as written, and as read. */
export interface SheetWish {
  readonly text: string
  readonly size: Size
}

/** Paper as the command line gives it. */
export interface PaperWish {
  readonly kind: 'sheet' | 'scraps'
  readonly stock?: string
  readonly sizes: readonly SheetWish[]
}

/**
 * Reads the paper that there is: `12 x 12 in`, a list of sizes, and a name and a colon before those of one stock, as in
 * `white card: A4, vellum: A5`. Throws UsageError.
 */
export const readPaper =
  (kind: PaperWish['kind']) =>
  (text: string): PaperWish[] => {
    const groups: { stock?: string; sizes: SheetWish[] }[] = []
    for (const item of text.split(/[,;]/)) {
      const [, stock, size = ''] = /^(?:([^:]*):)?(.*)$/s.exec(item) ?? []
      if (stock !== undefined) groups.push({ stock: stock.trim(), sizes: [] })
      if (groups.length === 0) groups.push({ sizes: [] })
      groups.at(-1)?.sizes.push(readSheetSize(size))
    }
    const several = kind === 'sheet' ? groups.find(({ sizes }) => sizes.length > 1) : undefined
    if (several)
      throw new UsageError(
        `\`${text}\` is more than one sheet`,
        'Write `--scraps` for several, or `white card: A4, vellum: A5` for one of each stock',
      )
    return groups.map((group) => ({ kind, ...group }))
  }
