import { type Finding, hasErrors } from '../../length/finding.ts'
import { fillLesson } from '../../lesson/fill.ts'
import type { Wishes } from '../../lesson/lesson.ts'
import { readLesson } from '../../lesson/read.ts'
import type { ClassFile, ClassLesson } from './class-file.ts'
import { readClass } from './read-class.ts'
import { type Taught, taughtLesson } from './taught.ts'

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

/** Where the files of a class are. */
export interface ClassFolder {
  /** Of the class file. */
  readonly path: string
  /** The path of a lesson that the class file names. */
  readonly pathOf: (written: string) => string
  /** The text of a lesson; fails with a message for the teacher. */
  readonly read: (path: string) => Promise<string>
}

/**
 * Reads a class file and its lessons. A lesson that cannot be read is told at its place in the class file.
 *
 * @param wishes what is wished of every lesson: more than the lesson says, and less than the class file does.
 */
export async function readWithLessons(
  text: string,
  { path, pathOf, read }: ClassFolder,
  wishes: Wishes,
): Promise<ReadClass> {
  const { file, findings } = readClass(text)
  const own: Finding[] = [...findings]
  const all = new Map<string, readonly Finding[]>()
  const lessons: TaughtFile[] = []
  for (const one of file.lessons) {
    const at = pathOf(one.path)
    const written = await read(at).catch((error: Error) => {
      own.push(notRead(one, error.message))
      return undefined
    })
    if (written === undefined) continue
    const lesson = fillLesson(readLesson(written), wishesFor(one, file, wishes))
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
function wishesFor({ closed }: ClassLesson, { units }: ClassFile, wishes: Wishes): Wishes {
  return { ...(units && { units }), ...wishes, ...(closed && { closed }) }
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
