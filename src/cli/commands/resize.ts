import { resizeLesson } from '../../lesson/resize.ts'
import { answer } from '../answer.ts'
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
  if (!tellFindings(path, findings, options, outside)) return exitCodes.lessonErrors
  await answer(text, options, outside)
  return exitCodes.done
}
