import { NotOursError, OutsideError, ThemeError } from '../publish/problems.ts'
import { UsageError } from './problems.ts'

/** What another command line would cure. */
export const isUsage = (error: unknown): boolean =>
  error instanceof UsageError || error instanceof NotOursError || error instanceof ThemeError

/** A mistake as the terminal tells it, with what would cure it. */
export function told(error: unknown): string {
  if (error instanceof NotOursError)
    return `${error.message}\n  Name another place with \`-o\`, or overwrite it with \`--force\``
  if (isUsage(error) || error instanceof OutsideError) {
    const { message, suggestion } = error as UsageError
    return suggestion === undefined ? message : `${message}\n  ${suggestion}`
  }
  // A mistake of ours: say so, with what helps to find it, rather than blame the lesson.
  return `A mistake inside foldlore, not in your lesson\n${error instanceof Error ? error.stack : error}`
}
