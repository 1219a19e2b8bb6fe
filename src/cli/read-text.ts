import { OutsideError } from '../publish/problems.ts'
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
