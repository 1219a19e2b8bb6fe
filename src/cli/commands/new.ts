import { starterLesson } from '../../workshop/starter.ts'
import { tellWritten } from '../answer.ts'
import type { Action } from '../commands.ts'
import { writeText } from '../files.ts'
import { foldNamed } from '../fold-style.ts'
import { exitCodes } from '../problems.ts'

/** `new FOLD [FILE]`: the file is named after the fold unless it is given. */
export const run: Action = async ([fold = '', file], options, outside) => {
  const style = foldNamed(fold)
  const path = file ?? `${style.name.replaceAll(' ', '-')}.md`
  await writeText(path, starterLesson(style), options, outside)
  tellWritten([path], options, outside)
  return exitCodes.done
}
