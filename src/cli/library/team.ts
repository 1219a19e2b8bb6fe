import { Worker } from 'node:worker_threads'
import { OutsideError } from '../../publish/problems.ts'
import type { LessonNews, LessonWork } from './lesson-work.ts'
import { type ThreadNews, threadMark, threadPlace } from './thread.ts'
import { makeTurns } from './turns.ts'

/** Threads that make lessons beside each other. */
export interface Team {
  /**
   * Has a lesson made, once a thread is free.
   *
   * @throws LessonError when it cannot be made.
   */
  readonly make: (work: LessonWork, tell: (news: LessonNews) => void) => Promise<void>
  /** Ends all threads at once. */
  readonly close: () => Promise<void>
}

/** A lesson that a thread could not make. */
export class LessonError extends OutsideError {
  /** Whether another setting would cure it, such as another theme. */
  isUsage = false
}

/** How long one lesson may take, in ms. */
const longest = 300_000

/** Makes a team of so many threads. They start when there is something to do. */
export function makeTeam(size: number, limit = longest): Team {
  const idle: Worker[] = []
  const all = new Set<Worker>()
  const turns = makeTurns(size)
  let closed = false
  const start = (): Worker => {
    const worker = new Worker(new URL(threadPlace), { workerData: threadMark })
    all.add(worker)
    // Heard while it works; between two lessons it must not end the program.
    worker.on('error', () => {})
    return worker
  }
  return {
    async make(work, tell) {
      await turns.take()
      try {
        if (closed) throw new LessonError('The threads have been ended')
        const worker = idle.pop() ?? start()
        try {
          await madeBy(worker, work, tell, limit)
          idle.push(worker)
        } catch (error) {
          // Whatever state it is in, the next lesson gets a new one.
          all.delete(worker)
          await worker.terminate()
          throw error
        }
      } finally {
        turns.give()
      }
    },
    async close() {
      closed = true
      await Promise.all([...all].map((worker) => worker.terminate()))
    },
  }
}

function madeBy(
  worker: Worker,
  work: LessonWork,
  tell: (news: LessonNews) => void,
  limit: number,
): Promise<void> {
  return new Promise((done, fail) => {
    const end = (act: () => void): void => {
      clearTimeout(timer)
      worker.off('message', hear).off('error', failed).off('exit', left)
      act()
    }
    const hear = (news: ThreadNews): void => {
      if (news.kind === 'done') end(done)
      else if (news.kind === 'failed') end(() => fail(toldBy(news)))
      else tell(news)
    }
    const failed = (error: Error): void =>
      end(() => fail(new LessonError(`Its thread ended: ${error.message}`)))
    const left = (): void => end(() => fail(new LessonError('Its thread ended')))
    const timer = setTimeout(
      () =>
        end(() =>
          fail(
            new LessonError(
              `This lesson takes longer than ${Math.round(limit / 1000)} s to work out, so it was given up`,
              'Print it alone with `foldlore handout` to see where it stays',
            ),
          ),
        ),
      limit,
    )
    worker.on('message', hear).on('error', failed).on('exit', left)
    worker.postMessage(work)
  })
}

function toldBy({ message, suggestion, name }: ThreadNews & { kind: 'failed' }): LessonError {
  if (name === undefined) return new LessonError(`A mistake inside foldlore, not in your lesson: ${message}`)
  const error = new LessonError(message, suggestion)
  error.isUsage = name === 'ThemeError'
  return error
}
