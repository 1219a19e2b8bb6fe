import { hasErrors } from '../../length/finding.ts'
import { classKit } from '../../workshop/class/class-kit.ts'
import { classKitListing } from '../../workshop/class/class-kit-listing.ts'
import { kitLabels } from '../../workshop/class/kit-labels.ts'
import { attendanceListing, packingListing } from '../../workshop/class/packing.ts'
import { planClass } from '../../workshop/class/plan-class.ts'
import { runSheet } from '../../workshop/class/run-sheet.ts'
import { runSheetListing } from '../../workshop/class/run-sheet-listing.ts'
import { shortFindings } from '../../workshop/class/short-findings.ts'
import { classTitle } from '../../workshop/class/taught.ts'
import type { Listing } from '../../workshop/listing.ts'
import { classFrom, tellClass } from '../class-from.ts'
import type { Action } from '../commands.ts'
import { tellFindings } from '../lesson-file.ts'
import { planProgress } from '../plan-progress.ts'
import { printKitLabels } from '../print-kit-labels.ts'
import { printListing } from '../print-listing.ts'
import { printSheets } from '../print-sheets.ts'
import { exitCodes } from '../problems.ts'

/** `class CLASS -o FOLDER`: everything for the day but the handouts, each as a page and a PDF. */
export const wholeClass: Action = async ([path = ''], options, outside) => {
  const read = await classFrom(path, options, outside)
  const { file, lessons } = read
  const [first] = lessons
  if (!tellClass(read, options, outside) || !first) return exitCodes.lessonErrors
  const unit = first.lesson.unit
  const title = classTitle(file, lessons)
  const plan = await planClass(file, lessons, { unit, progress: planProgress(options, outside) })
  const kit = classKit(file, lessons, plan.purchases, shortFindings(plan.short, file))
  const run = runSheet(file, lessons)
  const labels = kitLabels(file, lessons)
  const print = (what: string, listing: Listing): Promise<void> =>
    printListing(listing, first.lesson, { path, what }, options, outside)
  await print('kit', classKitListing(kit))
  await printSheets({ title, path, unit }, plan, lessons, options, outside)
  await print('run-sheet', runSheetListing(run))
  await printKitLabels({ path, title }, labels, file.labels, first.lesson, options, outside)
  await print('packing', packingListing(title, labels))
  if (file.guests.length > 0) await print('attendance', attendanceListing(title, file))
  const findings = [...kit.findings, ...run.findings]
  tellFindings(path, findings, options, outside)
  return hasErrors(findings) ? exitCodes.lessonErrors : exitCodes.done
}
