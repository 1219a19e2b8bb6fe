import { stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { FoundLesson } from './find-lessons.ts'
import { hashOf, hashOfFile } from './hashes.ts'
import { fileOf } from './places.ts'
import { keyOf, type LessonRecord, type PrintRecord } from './records.ts'
import type { Settings } from './settings.ts'

/** A lesson, and what of it is there already. */
export interface LessonPlan {
  readonly lesson: FoundLesson
  /** What its prints are made of, and what the library asks of it. */
  readonly of: string
  readonly wish: string
  readonly before?: LessonRecord
  /** Those of the prints that need not be made. */
  readonly current: readonly PrintRecord[]
  /** Whether all is there. */
  readonly isDone: boolean
}

/** What a print of a lesson in a theme is made of. */
export const printOf = (of: string, { themes }: Pick<Settings, 'themes'>, theme: string): string =>
  hashOf(of, themes.find(({ text }) => text === theme)?.hash ?? '')

/** Finds out what of a lesson is there already, and made of what it is now. */
export async function planLesson(
  lesson: FoundLesson,
  before: LessonRecord | undefined,
  settings: Settings,
  { folder, out, program }: { folder: string; out: string; program: string },
): Promise<LessonPlan> {
  const { sizes, units, papers } = settings.file
  const of = hashOf(program, lesson.hash)
  const more = sizes.more.map(({ text }) => text)
  const wish = hashOf(
    JSON.stringify([sizes.own, sizes.offered, more, units, papers, settings.themes.map(({ text }) => text)]),
  )
  if (!before || before.of !== of || !(await readsAreSame(folder, before)))
    return { lesson, of, wish, ...(before && { before }), current: [], isDone: false }
  const current: PrintRecord[] = []
  for (const print of before.prints) {
    const isCurrent = print.pdf > 0 && print.of === printOf(of, settings, print.theme)
    if (isCurrent && (await isThere(out, lesson.path, print))) current.push(print)
  }
  const isDone = before.complete && before.wish === wish && current.length === before.prints.length
  return { lesson, of, wish, before, current, isDone }
}

/** Whether the pictures of a lesson are what they were. */
async function readsAreSame(folder: string, { reads }: LessonRecord): Promise<boolean> {
  for (const [path, hash] of Object.entries(reads))
    if ((await hashOfFile(join(folder, path))) !== hash) return false
  return true
}

async function isThere(out: string, lesson: string, { name, html, pdf }: PrintRecord): Promise<boolean> {
  const sizes = await Promise.all(
    ['.html', '.pdf'].map((ending) =>
      stat(join(out, fileOf(lesson, name, ending))).then(
        ({ size }) => size,
        () => -1,
      ),
    ),
  )
  return sizes[0] === html && sizes[1] === pdf
}

/** Keys of the prints that need not be made. */
export const keysOf = (prints: readonly PrintRecord[]): string[] => prints.map(keyOf)
