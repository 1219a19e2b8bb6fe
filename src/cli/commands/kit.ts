import { makeKit } from '../../workshop/kit.ts'
import { kitJson } from '../../workshop/kit-json.ts'
import { kitListing } from '../../workshop/kit-listing.ts'
import { answerListing } from '../answer-listing.ts'
import { isClassFile } from '../class-from.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `kit CLASS` or `kit LESSON --people N`: to the terminal, or as the kind of file that `-o` names. */
export const kit: Action = async ([path = ''], options, outside) => {
  if (isClassFile(path)) return (await import('./class-kit.ts')).kitOfClass(path, options, outside)
  const { people, spare = 0 } = options
  if (people === undefined)
    throw new UsageError(
      '`kit` needs to know how many people come',
      'Write for example `--people 14`, or name a class file that says it, such as `saturday.yaml`',
    )
  const lesson = await lessonFrom(path, options, outside)
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  const kit = makeKit(lesson, people, spare)
  const forms = {
    json: () => kitJson(kit),
    listing: () => kitListing(kit),
    tables: async () => (await import('../../workshop/kit-tables.ts')).kitTables(kit),
  }
  await answerListing(forms, lesson, { path, what: 'kit', wording: lesson.wording }, options, outside)
  return exitCodes.done
}
