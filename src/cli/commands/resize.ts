import { hasErrors } from '../../length/finding.ts'
import { resizeLesson } from '../../lesson/resize.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { tellFindings, wishesOf } from '../lesson-file.ts'
import { exitCodes, UsageError } from '../problems.ts'
import { readText } from '../read-text.ts'

/** `resize LESSON`: the lesson itself, to the terminal or to the file that `-o` names. */
export const resize: Action = async ([path = ''], options, outside) => {
  const wishes = wishesOf(options)
  if (Object.keys(wishes).length === 0)
    throw new UsageError(
      '`resize` needs to know what is to change',
      'Write for example `--closed "A6 landscape"`',
    )
  const { text, findings } = resizeLesson(await readText(path, outside), wishes)
  if (options.json) {
    await answer(asJson({ text, findings: findings.map(findingJson) }), options, outside)
    return hasErrors(findings) ? exitCodes.lessonErrors : exitCodes.done
  }
  if (!tellFindings(path, findings, options, outside)) return exitCodes.lessonErrors
  await answer(text, options, outside)
  return exitCodes.done
}
