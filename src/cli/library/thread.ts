import { isMainThread, parentPort, workerData } from 'node:worker_threads'
import type { LessonNews, LessonWork } from './lesson-work.ts'

/** Where this file is: a thread that makes lessons starts with it. */
export const threadPlace = import.meta.url

/** How a thread knows that it is one of ours. */
export const threadMark = 'foldlore library'

/** What a thread tells: news of its lesson, and at the end that it is done, or what went wrong. */
export type ThreadNews =
  | LessonNews
  | { readonly kind: 'done' }
  | {
      readonly kind: 'failed'
      readonly message: string
      readonly suggestion?: string
      /** What kind of mistake it is; none when it is one in this program. */
      readonly name?: string
    }

if (!isMainThread && workerData === threadMark)
  parentPort?.on('message', async (work: LessonWork) => {
    const tell = (news: ThreadNews): void => parentPort?.postMessage(news)
    try {
      // The program that starts threads has no use for all that.
      const { makeLesson } = await import('./make-lesson.ts')
      await makeLesson(work, tell)
      tell({ kind: 'done' })
    } catch (error) {
      tell(failure(error))
    }
  })

/** A mistake as it goes to another thread. */
function failure(error: unknown): ThreadNews {
  const { name, message, stack, suggestion } = error as Error & { suggestion?: string }
  // Themes and disks say themselves what is wrong with them; anything else is a mistake in this program.
  const isTheirs = name === 'ThemeError' || name === 'OutsideError'
  return {
    kind: 'failed',
    message: isTheirs ? message : (stack ?? String(error)),
    ...(suggestion !== undefined && { suggestion }),
    ...(isTheirs && { name }),
  }
}
