import { writeFile } from './files.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'

/** A value as a program reads it. */
export const asJson = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`

/** Gives an answer to the terminal, or to the file that `-o` names. */
export async function answer(text: string, options: Options, outside: Outside): Promise<void> {
  const { output, quiet } = options
  if (output === undefined) return outside.stdout(text)
  await writeFile(output, text, options, outside)
  if (!quiet) outside.stderr(`Wrote ${output}\n`)
}
