import type { LessonRecord } from './records.ts'
import { type State, writeState } from './state.ts'

/** The notes of a library while it is being printed: written from time to time, and at the end. */
export interface Keeping {
  readonly lessons: ReadonlyMap<string, LessonRecord>
  readonly note: (lesson: string, record: LessonRecord) => void
  readonly forget: (lesson: string) => void
  /** Writes what is known by now. Throws OutsideError. */
  readonly flush: (pages?: State['pages']) => Promise<void>
}

/**
 * @param every in ms: notes are written so long after the first change, or later where writing them takes long. All of them
 * are written each time, so more often would cost more than what it saves after a power cut.
 */
export function keepState(out: string, before: State, every = 1000): Keeping {
  const lessons = new Map(before.lessons)
  let { pages } = before
  let timer: NodeJS.Timeout | undefined
  // What a large library takes to write is given to its prints many times over.
  let pause = every
  let writing: Promise<void> = Promise.resolve()
  const flush = (): Promise<void> => {
    clearTimeout(timer)
    timer = undefined
    // One after the other, so that the last one stays.
    writing = writing
      .catch(() => {})
      .then(async () => {
        const began = performance.now()
        await writeState(out, { lessons, pages })
        pause = Math.max(every, 20 * (performance.now() - began))
      })
    return writing
  }
  const soon = (): void => {
    // A disk that refuses is told when the prints are written, or at the end.
    timer ??= setTimeout(() => void flush().catch(() => {}), pause)
  }
  return {
    lessons,
    note(lesson, record) {
      lessons.set(lesson, record)
      soon()
    },
    forget(lesson) {
      lessons.delete(lesson)
      soon()
    },
    flush(now = pages) {
      pages = now
      return flush()
    },
  }
}
