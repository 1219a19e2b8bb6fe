import { OutsideError } from '../publish/problems.ts'
import { mayWrite, writeWhole } from '../publish/write.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'

const reasons: Readonly<Record<string, readonly [why: string, cure: string]>> = {
  ENOENT: ['there is no such file', 'Check the folder and the name'],
  ENOTDIR: ['part of the path is a file, not a folder', 'Check the path'],
  EISDIR: ['it is a folder', 'Name a file in it'],
  EACCES: ['you may not read it', 'Ask for the right to it'],
}

/**
 * Reads a text file, with the byte order mark that some editors put before it.
 *
 * @throws OutsideError when it cannot be read, or is no UTF-8 text.
 */
export async function readText(path: string, outside: Outside): Promise<string> {
  const bytes = await outside.read(path).catch((error: { code?: string }) => {
    const [why, cure] = reasons[error.code ?? ''] ?? [String(error), undefined]
    throw new OutsideError(`Cannot read \`${path}\`: ${why}`, cure)
  })
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    throw new OutsideError(`Cannot read \`${path}\`: it is not UTF-8 text`, 'Save it as UTF-8 in your editor')
  }
}

/**
 * Writes a text file whole or not at all. What foldlore did not make is overwritten with `--force` only.
 *
 * @throws NotOursError when something stands there that must not be lost, OutsideError when it cannot be written.
 */
export async function writeText(
  path: string,
  text: string,
  options: Options,
  outside: Outside,
): Promise<void> {
  if (await outside.isFolder(path))
    throw new OutsideError(`Cannot write \`${path}\`: it is a folder`, 'Name a file in it')
  await mayWrite(path, options.force === true, outside)
  await writeWhole([{ path, data: new TextEncoder().encode(text) }], outside)
}
