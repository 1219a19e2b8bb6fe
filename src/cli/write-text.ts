import { OutsideError } from '../publish/problems.ts'
import { mayWrite, writeWhole } from '../publish/write.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'

/** Writes a text file. Throws what `writeFile` throws. */
export const writeText = (path: string, text: string, options: Options, outside: Outside): Promise<void> =>
  writeFile(path, new TextEncoder().encode(text), options, outside)

/**
 * Writes a file whole or not at all. What foldlore did not make is overwritten with `--force` only.
 *
 * @throws NotOursError when something stands there that must not be lost, OutsideError when it cannot be written.
 */
export async function writeFile(
  path: string,
  data: Uint8Array,
  options: Options,
  outside: Outside,
): Promise<void> {
  if (await outside.isFolder(path))
    throw new OutsideError(`Cannot write \`${path}\`: it is a folder`, 'Name a file in it')
  await mayWrite(path, options.force === true, outside)
  await writeWhole([{ path, data }], outside)
}
