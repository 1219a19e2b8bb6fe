import { hasErrors } from '../../length/finding.ts'
import { prepareClass } from '../../workshop/class/preparation.ts'
import { preparationJson } from '../../workshop/class/preparation-json.ts'
import { preparationListing } from '../../workshop/class/preparation-listing.ts'
import { shortFindings } from '../../workshop/class/short-findings.ts'
import { terminalWidth } from '../../workshop/text-columns.ts'
import { answerListing } from '../answer-listing.ts'
import type { Action } from '../commands.ts'
import { tellFindings } from '../lesson-file.ts'
import { plannedClass } from '../planned-class.ts'
import { exitCodes } from '../problems.ts'

/** `prepare CLASS`: what is done on the evening before, to the terminal, or as the kind of file that `-o` names. */
export const prepare: Action = async ([path = ''], options, outside) => {
  const planned = await plannedClass(path, options, outside)
  if (!planned) return exitCodes.lessonErrors
  const { file, lessons, first, wording, plan } = planned
  const findings = shortFindings(plan.short, file)
  const list = prepareClass(file, lessons, plan)
  tellFindings(path, findings, options, outside)
  const forms = {
    json: () => preparationJson(list, wording.unit),
    listing: () => preparationListing(list, wording),
    tables: async () =>
      (await import('../../workshop/class/preparation-tables.ts')).preparationTables(list, wording),
    width: terminalWidth,
  }
  await answerListing(
    forms,
    first.lesson,
    { path, what: 'prepare', wording, lessons: lessons.map(({ lesson }) => lesson) },
    options,
    outside,
  )
  return hasErrors(findings) ? exitCodes.lessonErrors : exitCodes.done
}
