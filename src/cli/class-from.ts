import { dirname, join } from 'node:path'
import { type Finding, hasErrors } from '../length/finding.ts'
import { fillLesson } from '../lesson/fill.ts'
import type { Wishes } from '../lesson/lesson.ts'
import { readLesson } from '../lesson/read.ts'
import type { ClassFile, ClassLesson } from '../workshop/class/class-file.ts'
import { readClass } from '../workshop/class/read-class.ts'
import { type Taught, taughtLesson } from '../workshop/class/taught.ts'
import type { Options } from './flags.ts'
import { tellFindings, wishesOf } from './lesson-file.ts'
import type { Outside } from './outside.ts'
import { UsageError } from './problems.ts'
import { readText } from './read-text.ts'

/** A class file with its lessons, filled in. */
export interface ReadClass {
  readonly file: ClassFile
  readonly lessons: readonly TaughtFile[]
  /** Of the class file, and of each lesson, by the path of the file. */
  readonly findings: ReadonlyMap<string, readonly Finding[]>
}

/** A lesson of a class, with the path of its file. */
export interface TaughtFile extends Taught {
  readonly path: string
}

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
  const { file, findings } = readClass(await readText(path, outside))
  const own: Finding[] = [...findings]
  const all = new Map<string, readonly Finding[]>()
  const lessons: TaughtFile[] = []
  for (const one of file.lessons) {
    const at = join(dirname(path), one.path)
    const text = await readText(at, outside).catch((error: Error) => {
      own.push(notRead(one, error.message))
      return undefined
    })
    if (text === undefined) continue
    const lesson = fillLesson(readLesson(text), wishesFor(one, file, options))
    // A lesson may come twice, in two sizes.
    all.set(at, together(all.get(at) ?? [], lesson.findings))
    if (hasErrors(lesson.findings)) continue
    const { taught, findings: ofChoices } = taughtLesson(one, lesson, file)
    own.push(...ofChoices)
    lessons.push({ ...taught, path: at })
  }
  return { file, lessons, findings: new Map([[path, own], ...all]) }
}

/** The class file says more of a lesson than the command line, and that more than the lesson. */
function wishesFor({ closed }: ClassLesson, { units }: ClassFile, options: Options): Wishes {
  return { ...(units && { units }), ...wishesOf(options), ...(closed && { closed }) }
}

/** Findings of the same file as one list; what both say is said once. */
function together(some: readonly Finding[], others: readonly Finding[]): Finding[] {
  const byText = new Map([...some, ...others].map((finding) => [JSON.stringify(finding), finding]))
  return [...byText.values()]
}

const notRead = ({ place }: ClassLesson, message: string): Finding => ({
  rule: 'no-lesson',
  severity: 'error',
  message,
  suggestion: 'Write its path from the folder of the class file',
  place,
})

/** Tells what was found in a class file and its lessons; gives whether the command can go on. */
export function tellClass({ findings }: ReadClass, options: Options, outside: Outside): boolean {
  const fine = [...findings].map(([path, own]) => tellFindings(path, own, options, outside))
  return fine.every((one) => one)
}

/** Class files are known by their ending. */
export const isClassFile = (path: string): boolean => /\.ya?ml$/i.test(path)
