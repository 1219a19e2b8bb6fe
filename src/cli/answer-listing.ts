import { extname } from 'node:path'
import type { FilledLesson } from '../lesson/lesson.ts'
import type { Listing } from '../workshop/listing.ts'
import { listingText } from '../workshop/listing-text.ts'
import type { Table } from '../workshop/table.ts'
import { answer, asJson } from './answer.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import type { ListedFile } from './print-listing.ts'

/** The forms that an answer can take. */
export interface Forms {
  readonly json: () => unknown
  readonly listing: () => Listing
  /** Missing where a list is none that a spreadsheet would want. */
  readonly tables?: () => Promise<readonly Table[]>
  /** Columns of the terminal beyond which the last cell of a row goes on below itself. */
  readonly width?: number
}

/**
 * Gives a list to the terminal, or as the kind of file that `-o` names: text, Markdown, comma-separated values, a
 * workbook, or printed in the style of a lesson's handout.
 *
 * @throws what `printPages` throws.
 */
export async function answerListing(
  { json, listing, tables, width }: Forms,
  lesson: FilledLesson,
  from: ListedFile,
  options: Options,
  outside: Outside,
): Promise<void> {
  const { output = '' } = options
  const ending = extname(output).toLowerCase()
  if (options.json) return answer(asJson(json()), options, outside)
  if (output === '' || ending === '.txt')
    return answer(listingText(listing(), output === '' ? width : undefined), options, outside)
  if (ending === '.md') {
    const { listingMarkdown } = await import('../workshop/listing-markdown.ts')
    return answer(listingMarkdown(listing()), options, outside)
  }
  if (tables && ending === '.csv') {
    const { tablesCsv } = await import('../workshop/table-csv.ts')
    return answer(tablesCsv(await tables(), from.wording), options, outside)
  }
  if (tables && ending === '.xlsx') {
    const { writeWorkbook } = await import('./write-workbook.ts')
    return writeWorkbook(output, listing().title, await tables(), from.wording, options, outside)
  }
  const { printListing } = await import('./commands/printing.ts')
  await printListing(listing(), lesson, from, options, outside)
}
