import { hasErrors } from '../../length/finding.ts'
import { listingText } from '../../workshop/listing-text.ts'
import { measures } from '../../workshop/measures.ts'
import { measuresListing } from '../../workshop/measures-listing.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonAndFilled, lessonFrom, tellFindings } from '../lesson-file.ts'
import { exitCodes } from '../problems.ts'

/** `measure LESSON`. In JSON the findings are part of the answer, so it is given whatever they are. */
export const measure: Action = async ([path = ''], options, outside) => {
  if (options.explain) {
    const { explain } = await import('./explain.ts')
    return explain(path, await lessonAndFilled(path, options, outside), options, outside)
  }
  const lesson = await lessonFrom(path, options, outside)
  if (options.json) {
    await answer(asJson(measures(lesson)), options, outside)
    return hasErrors(lesson.findings) ? exitCodes.lessonErrors : exitCodes.done
  }
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  await answer(listingText(measuresListing(lesson)), options, outside)
  return exitCodes.done
}
