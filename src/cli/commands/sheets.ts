import { extname } from 'node:path'
import { hasErrors } from '../../length/finding.ts'
import { sheetsJson } from '../../workshop/class/sheets-json.ts'
import { sheetsListing } from '../../workshop/class/sheets-listing.ts'
import { shortFindings } from '../../workshop/class/short-findings.ts'
import { classTitle } from '../../workshop/class/taught.ts'
import { answerListing } from '../answer-listing.ts'
import type { Action } from '../commands.ts'
import { tellFindings } from '../lesson-file.ts'
import { plannedClass } from '../planned-class.ts'
import { exitCodes } from '../problems.ts'

/** Without drawings. */
const listEndings = ['.txt', '.md', '.csv', '.xlsx']

/** `sheets CLASS`: the cutting plan of a class, to the terminal, or as the kind of file that `-o` names. */
export const sheets: Action = async ([path = ''], options, outside) => {
  const planned = await plannedClass(path, options, outside)
  if (!planned) return exitCodes.lessonErrors
  const { file, lessons, first, wording, plan } = planned
  const findings = shortFindings(plan.short, file)
  const title = classTitle(file, lessons)
  const forms = {
    json: () => sheetsJson(plan, wording.unit),
    listing: () => sheetsListing(title, plan, wording),
    tables: async () =>
      (await import('../../workshop/class/sheets-tables.ts')).sheetsTables(title, plan, wording),
  }
  const { output, json } = options
  if (json || output === undefined || listEndings.includes(extname(output).toLowerCase()))
    await answerListing(forms, first.lesson, { path, what: 'sheets', wording }, options, outside)
  else {
    const { printSheets } = await import('./printing.ts')
    await printSheets({ title, path, wording }, plan, lessons, options, outside)
  }
  // In JSON they are part of the answer.
  if (!json) tellFindings(path, findings, options, outside)
  return hasErrors(findings) ? exitCodes.lessonErrors : exitCodes.done
}
