import { OutsideError } from '../publish/problems.ts'
import { learnFor } from '../wording/learn-for.ts'
import type { Outside } from './outside.ts'

/** In bytes. No text of ours has a hundredth of it, so it is another file that was named. */
const mostText = 20_000_000

const reasons: Readonly<Record<string, readonly [why: string, cure: string]>> = {
  ENOENT: ['there is no such file', 'Check the folder and the name'],
  ENOTDIR: ['part of the path is a file, not a folder', 'Check the path'],
  EISDIR: ['it is a folder', 'Name a file in it'],
  EACCES: ['you may not read it', 'Ask for the right to it'],
  EPERM: ['you may not read it', 'Ask for the right to it'],
  ELOOP: ['its links lead round in a circle', 'Name the file itself'],
  ENAMETOOLONG: ['the name is too long', 'Check the name'],
  EIO: [
    'the disk, or what is in its place, cannot read it',
    'Copy the file to another disk, or name another',
  ],
  EFBIG: [`it is larger than ${mostText / 1e6} MB`, 'Check that it is the file that you mean'],
  EBUSY: ['another program keeps writing it', 'Wait until that program is done, and try again'],
  ETIMEDOUT: ['it is a pipe, and nothing comes through it', 'Name a file'],
}

/**
 * Reads a text file, with the byte order mark that some editors put before it. If it is a lesson or a class, the words of
 * its language are there from then on.
 *
 * @throws OutsideError when it cannot be read, or is no UTF-8 text.
 */
export async function readText(path: string, outside: Pick<Outside, 'read'>): Promise<string> {
  const bytes = await outside.read(path, mostText).catch((error: { code?: string }) => {
    const [why, cure] = reasons[error.code ?? ''] ?? [String(error), undefined]
    throw new OutsideError(`Cannot read \`${path}\`: ${why}`, cure)
  })
  const text = textOf(bytes)
  if (text === undefined)
    throw new OutsideError(`Cannot read \`${path}\`: ${notUtf8(bytes)}`, 'Save it as UTF-8 in your editor')
  await learnFor(text)
  return text
}

function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    return undefined
  }
}

/** What is in the way of reading it as UTF-8, and where. */
function notUtf8(bytes: Uint8Array): string {
  const [first, second] = bytes
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    return 'it is UTF-16 text, not UTF-8'
  const { line, column } = firstOdd(bytes)
  return `it is not UTF-8 text: the letter at ${line}:${column} is written in another way`
}

/** Line and column of the first letter that is no UTF-8. */
function firstOdd(bytes: Uint8Array): { line: number; column: number } {
  // Only up to the first odd letter are both the same length.
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)
  const encoder = new TextEncoder()
  let [at, line, column] = [0, 1, 1]
  for (const letter of text) {
    if (letter === '\ufffd') {
      const meant = encoder.encode(letter)
      if (meant.some((byte, i) => bytes[at + i] !== byte)) break
    }
    at += encoder.encode(letter).length
    if (letter === '\n') [line, column] = [line + 1, 1]
    else column++
  }
  return { line, column }
}
