/** The command line cannot be understood: what was found and expected, and what would cure it. Exit code 2. */
export class UsageError extends Error {
  readonly suggestion: string | undefined

  constructor(message: string, suggestion?: string) {
    super(message)
    this.suggestion = suggestion
  }
}

export const exitCodes = { done: 0, lessonErrors: 1, wrongUsage: 2, outside: 3 } as const

/** What each exit code means, for the help and the manual. */
export const exitCodeHelp: Readonly<Record<number, string>> = {
  0: 'done',
  1: 'the lesson has errors; they are printed',
  2: 'the command line is wrong, or it would overwrite a file that foldlore did not make',
  3: 'something outside failed: a file is not there or cannot be written, no browser was found',
}
