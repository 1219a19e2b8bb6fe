import { starterLesson } from '../../workshop/starter.ts'
import type { Action } from '../commands.ts'
import { writeFile } from '../files.ts'
import { foldNamed } from '../fold-style.ts'
import { exitCodes } from '../problems.ts'

/** `new FOLD [FILE]`: the file is named after the fold unless it is given. */
export const run: Action = async ([fold = '', file], options, outside) => {
  const style = foldNamed(fold)
  const path = file ?? `${style.name.replaceAll(' ', '-')}.md`
  await writeFile(path, starterLesson(style), options, outside)
  if (!options.quiet) outside.stdout(`Wrote ${path}\n`)
  return exitCodes.done
}
