import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'

/** A value as a program reads it. */
export const asJson = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`

/** Gives an answer to the terminal, or to the file that `-o` names. */
export async function answer(text: string, options: Options, outside: Outside): Promise<void> {
  const { output } = options
  if (output === undefined) return outside.stdout(text)
  const { writeText } = await import('./write-text.ts')
  await writeText(output, text, options, outside)
  tellWritten([output], options, outside)
}

/** Says where the files are. */
export function tellWritten(paths: readonly string[], { quiet }: Options, { stderr }: Outside): void {
  if (!quiet) for (const path of paths) stderr(`Wrote ${path}\n`)
}
