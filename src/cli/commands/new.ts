import { starterLesson } from '../../workshop/starter.ts'
import { tellWritten } from '../answer.ts'
import type { Action } from '../commands.ts'
import { foldNamed } from '../fold-style.ts'
import { exitCodes } from '../problems.ts'

/** `new FOLD [FILE]`: the file is named after the fold unless it is given. */
export const newLesson: Action = async ([fold = '', file], options, outside) => {
  const style = foldNamed(fold)
  const path = file ?? `${style.name.replaceAll(' ', '-')}.md`
  const { writeText } = await import('../write-text.ts')
  await writeText(path, starterLesson(style), options, outside)
  tellWritten([path], options, outside)
  return exitCodes.done
}
