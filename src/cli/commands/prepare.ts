import { hasErrors } from '../../length/finding.ts'
import { planClass } from '../../workshop/class/plan-class.ts'
import { prepareClass } from '../../workshop/class/preparation.ts'
import { preparationJson } from '../../workshop/class/preparation-json.ts'
import { preparationListing } from '../../workshop/class/preparation-listing.ts'
import { shortFindings } from '../../workshop/class/short-findings.ts'
import { terminalWidth } from '../../workshop/text-columns.ts'
import { answerListing } from '../answer-listing.ts'
import { classFrom, tellClass } from '../class-from.ts'
import type { Action } from '../commands.ts'
import { tellFindings } from '../lesson-file.ts'
import { planProgress } from '../plan-progress.ts'
import { exitCodes } from '../problems.ts'
import { tellStopped } from '../tell-stopped.ts'
import { timeLimit } from '../time-limit.ts'

/** `prepare CLASS`: what is done on the evening before, to the terminal, or as the kind of file that `-o` names. */
export const prepare: Action = async ([path = ''], options, outside) => {
  const read = await classFrom(path, options, outside)
  const { file, lessons } = read
  const [first] = lessons
  if (!tellClass(read, options, outside) || !first) return exitCodes.lessonErrors
  const unit = first.lesson.unit
  const signal = timeLimit(options.within)
  const plan = await planClass(file, lessons, { unit, signal, progress: planProgress(options, outside) })
  tellStopped(signal, plan, options, outside)
  const findings = shortFindings(plan.short, file)
  const list = prepareClass(file, lessons, plan)
  tellFindings(path, findings, options, outside)
  const forms = {
    json: () => preparationJson(list, unit),
    listing: () => preparationListing(list, unit),
    tables: async () =>
      (await import('../../workshop/class/preparation-tables.ts')).preparationTables(list, unit),
    width: terminalWidth,
  }
  await answerListing(
    forms,
    first.lesson,
    { path, what: 'prepare', lessons: read.lessons.map(({ lesson }) => lesson) },
    options,
    outside,
  )
  return hasErrors(findings) ? exitCodes.lessonErrors : exitCodes.done
}
