import { runSheet } from '../../workshop/class/run-sheet.ts'
import { runSheetJson } from '../../workshop/class/run-sheet-json.ts'
import { runSheetListing } from '../../workshop/class/run-sheet-listing.ts'
import { terminalWidth } from '../../workshop/text-columns.ts'
import { answerListing } from '../answer-listing.ts'
import { classFrom, tellClass } from '../class-from.ts'
import type { Action } from '../commands.ts'
import { tellFindings } from '../lesson-file.ts'
import { exitCodes } from '../problems.ts'

/** `runsheet CLASS`: to the terminal, or as the kind of file that `-o` names. */
export const runsheet: Action = async ([path = ''], options, outside) => {
  const read = await classFrom(path, options, outside)
  const [first] = read.lessons
  if (!tellClass(read, options, outside) || !first) return exitCodes.lessonErrors
  const sheet = runSheet(read.file, read.lessons)
  // In JSON they are part of the answer.
  if (!options.json) tellFindings(path, sheet.findings, options, outside)
  const forms = {
    json: () => runSheetJson(sheet),
    listing: () => runSheetListing(sheet),
    tables: async () => (await import('../../workshop/class/run-sheet-tables.ts')).runSheetTables(sheet),
    width: terminalWidth,
  }
  await answerListing(
    forms,
    first.lesson,
    { path, what: 'run-sheet', wording: sheet.wording, lessons: read.lessons.map(({ lesson }) => lesson) },
    options,
    outside,
  )
  return exitCodes.done
}
