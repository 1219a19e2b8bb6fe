import type { Options } from './flags.ts'
import { madeByFoldlore } from './made-by.ts'
import type { Outside } from './outside.ts'
import { OutsideError, UsageError } from './problems.ts'

/** Reads a text file. Throws OutsideError when it is not there, or is no UTF-8 text. A byte order mark is left out. */
export async function readText(path: string, outside: Outside): Promise<string> {
  const bytes = await outside.read(path)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new OutsideError(`Cannot read \`${path}\`: it is not UTF-8 text`, 'Save it as UTF-8 in your editor')
  }
}

/**
 * Writes a file whole or not at all. What foldlore did not make is overwritten with `--force` only.
 *
 * @throws UsageError when something stands there that must not be lost, OutsideError when it cannot be written.
 */
export async function writeFile(
  path: string,
  content: string | Uint8Array,
  options: Options,
  outside: Outside,
): Promise<void> {
  await mustBeFree(path, options, outside)
  await outside.write(path, content)
}

/** Throws UsageError when `path` holds something that must not be lost. */
export async function mustBeFree(path: string, { force }: Options, outside: Outside): Promise<void> {
  const found = await outside.exists(path)
  if (found === 'folder') throw new UsageError(`\`${path}\` is a folder`, 'Name a file')
  if (found === undefined || force || madeByFoldlore(await outside.read(path))) return
  throw new UsageError(
    `\`${path}\` is there already, and foldlore cannot tell that it made it`,
    'Choose another name, or overwrite it with `--force`',
  )
}
