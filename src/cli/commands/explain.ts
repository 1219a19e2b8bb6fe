import { hasErrors } from '../../length/finding.ts'
import type { FilledLesson, Lesson } from '../../lesson/lesson.ts'
import { explainedJson } from '../../workshop/explain/explained-json.ts'
import { explainedListing } from '../../workshop/explain/explained-listing.ts'
import { listingText } from '../../workshop/listing-text.ts'
import { measures } from '../../workshop/measures.ts'
import { answer, asJson } from '../answer.ts'
import type { Options } from '../flags.ts'
import { tellFindings } from '../lesson-file.ts'
import type { Outside } from '../outside.ts'
import { exitCodes } from '../problems.ts'

/** Columns of a terminal that is wide enough for a formula beside its number. */
const width = 100

/** `measure LESSON --explain`: every number with where it comes from. In JSON each card has them besides its measures. */
export async function explain(
  path: string,
  { lesson, filled }: { lesson: Lesson; filled: FilledLesson },
  options: Options,
  outside: Outside,
): Promise<number> {
  if (options.json) {
    const all = measures(filled)
    const cards = filled.cards.map((proven, i) => ({
      ...all.cards[i],
      explained: explainedJson(lesson, proven),
    }))
    await answer(asJson({ ...all, cards }), options, outside)
    return hasErrors(filled.findings) ? exitCodes.lessonErrors : exitCodes.done
  }
  if (!tellFindings(path, filled.findings, options, outside)) return exitCodes.lessonErrors
  await answer(listingText(explainedListing(lesson, filled), width), options, outside)
  return exitCodes.done
}
