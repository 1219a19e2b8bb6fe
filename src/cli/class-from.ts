import { dirname, join } from 'node:path'
import { type ReadClass, readWithLessons } from '../workshop/class/read-with-lessons.ts'
import type { Options } from './flags.ts'
import { tellFindings, wishesOf } from './lesson-file.ts'
import type { Outside } from './outside.ts'
import { UsageError } from './problems.ts'
import { readText } from './read-text.ts'

/**
 * Reads a class file and its lessons. A lesson that cannot be read is told at its place in the class file.
 *
 * @throws UsageError when it is another kind of file, OutsideError when it cannot be read.
 */
export async function classFrom(path: string, options: Options, outside: Outside): Promise<ReadClass> {
  if (!isClassFile(path))
    throw new UsageError(
      `\`${path}\` is no class file`,
      'A class file is a few lines of YAML, such as `saturday.yaml` with `lesson: harbour-lights.md` and `people: 14`',
    )
  const folder = {
    path,
    pathOf: (written: string) => join(dirname(path), written),
    read: (at: string) => readText(at, outside),
  }
  return readWithLessons(await readText(path, outside), folder, wishesOf(options))
}

/** Tells what was found in a class file and its lessons; gives whether the command can go on. */
export function tellClass({ findings }: ReadClass, options: Options, outside: Outside): boolean {
  const fine = [...findings].map(([path, own]) => tellFindings(path, own, options, outside))
  return fine.every((one) => one)
}

/** Class files are known by their ending. */
export const isClassFile = (path: string): boolean => /\.ya?ml$/i.test(path)
