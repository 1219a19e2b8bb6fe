import { extname } from 'node:path'
import { makeKit } from '../../workshop/kit.ts'
import { kitJson } from '../../workshop/kit-json.ts'
import { kitListing } from '../../workshop/kit-listing.ts'
import { listingText } from '../../workshop/listing-text.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `kit LESSON --people N`: to the terminal, or as the kind of file that `-o` names. */
export const kit: Action = async ([path = ''], options, outside) => {
  const { people, spare = 0, output = '', json } = options
  if (people === undefined)
    throw new UsageError('`kit` needs to know how many people come', 'Write for example `--people 14`')
  const lesson = await lessonFrom(path, options, outside)
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  const kit = makeKit(lesson, people, spare)
  const ending = extname(output).toLowerCase()
  if (json) await answer(asJson(kitJson(kit)), options, outside)
  else if (output === '' || ending === '.txt') await answer(listingText(kitListing(kit)), options, outside)
  else if (ending === '.md') {
    const { listingMarkdown } = await import('../../workshop/listing-markdown.ts')
    await answer(listingMarkdown(kitListing(kit)), options, outside)
  } else {
    const { printListing } = await import('./printing.ts')
    await printListing(kitListing(kit), lesson, { path, what: 'kit' }, options, outside)
  }
  return exitCodes.done
}
