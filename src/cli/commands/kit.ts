import { makeKit } from '../../workshop/kit.ts'
import { kitJson } from '../../workshop/kit-json.ts'
import { kitListing } from '../../workshop/kit-listing.ts'
import { answerListing } from '../answer-listing.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `kit LESSON --people N`: to the terminal, or as the kind of file that `-o` names. */
export const kit: Action = async ([path = ''], options, outside) => {
  const { people, spare = 0 } = options
  if (people === undefined)
    throw new UsageError('`kit` needs to know how many people come', 'Write for example `--people 14`')
  const lesson = await lessonFrom(path, options, outside)
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  const kit = makeKit(lesson, people, spare)
  const forms = { json: () => kitJson(kit), listing: () => kitListing(kit) }
  await answerListing(forms, lesson, { path, what: 'kit' }, options, outside)
  return exitCodes.done
}
