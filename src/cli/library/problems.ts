import { NotOursError } from '../../publish/problems.ts'
import { exitCodes } from '../problems.ts'
import { LessonError } from './team.ts'

/** Something that stood in the way of prints: once, however many lessons it concerns. */
export interface Problem {
  readonly message: string
  readonly suggestion?: string
  readonly code: number
  /** Paths of lessons. */
  readonly lessons: readonly string[]
}

/** Collects what stands in the way. */
export function collectProblems() {
  const all = new Map<string, Problem & { lessons: string[] }>()
  return {
    add(error: unknown, lesson: string): void {
      const { message, suggestion } = error as Error & { suggestion?: string }
      const known = all.get(message)
      if (known) {
        if (!known.lessons.includes(lesson)) known.lessons.push(lesson)
        return
      }
      const isUsage = error instanceof NotOursError || (error instanceof LessonError && error.isUsage)
      all.set(message, {
        message,
        ...(suggestion !== undefined && { suggestion: suggestionOf(error, suggestion) }),
        code: isUsage ? exitCodes.wrongUsage : exitCodes.outside,
        lessons: [lesson],
      })
    },
    list: (): readonly Problem[] =>
      [...all.values()].map((one) => ({ ...one, lessons: one.lessons.toSorted() })),
  }
}

export type Problems = ReturnType<typeof collectProblems>

const suggestionOf = (error: unknown, suggestion: string): string =>
  error instanceof NotOursError ? 'Move it away, or overwrite it with `--force`' : suggestion
