import { hasErrors } from '../../length/finding.ts'
import { classKit } from '../../workshop/class/class-kit.ts'
import { classKitJson } from '../../workshop/class/class-kit-json.ts'
import { classKitListing } from '../../workshop/class/class-kit-listing.ts'
import { shortFindings } from '../../workshop/class/short-findings.ts'
import { answerListing } from '../answer-listing.ts'
import type { Options } from '../flags.ts'
import { tellFindings } from '../lesson-file.ts'
import type { Outside } from '../outside.ts'
import { plannedClass } from '../planned-class.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `kit CLASS`: what the class needs, what must be bought, and what it costs. */
export async function kitOfClass(path: string, options: Options, outside: Outside): Promise<number> {
  if (options.people !== undefined || options.spare !== undefined)
    throw new UsageError(
      'A class file says itself how many people come',
      'Change `people:` and `spare:` in it',
    )
  const planned = await plannedClass(path, options, outside)
  if (!planned) return exitCodes.lessonErrors
  const { file, lessons, first, plan } = planned
  const kit = classKit(file, lessons, plan.purchases, shortFindings(plan.short, file))
  // In JSON they are part of the answer.
  if (!options.json) tellFindings(path, kit.findings, options, outside)
  const forms = {
    json: () => classKitJson(kit),
    listing: () => classKitListing(kit),
    tables: async () => (await import('../../workshop/class/class-kit-tables.ts')).classKitTables(kit),
  }
  await answerListing(
    forms,
    first.lesson,
    { path, what: 'kit', wording: kit.wording, lessons: lessons.map(({ lesson }) => lesson) },
    options,
    outside,
  )
  return hasErrors(kit.findings) ? exitCodes.lessonErrors : exitCodes.done
}
