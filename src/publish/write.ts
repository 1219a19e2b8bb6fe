import { randomUUID } from 'node:crypto'
import { basename, dirname, join } from 'node:path'
import { withDrafts } from './drafts.ts'
import { drawingMarks, htmlMark, pdfMark } from './our-marks.ts'
import type { Outside } from './outside.ts'
import { NotOursError, OutsideError } from './problems.ts'

const marks: readonly string[] = [htmlMark, ...Object.values(drawingMarks)]

/** Whether foldlore made a file, judged by what is in it. */
export function isOurs(content: Uint8Array): boolean {
  const text = Buffer.from(content.buffer, content.byteOffset, content.byteLength).toString('latin1')
  const head = text.slice(0, 2000)
  return text.startsWith('%PDF-') ? text.includes(pdfMark) : marks.some((mark) => head.includes(mark))
}

/**
 * Finds out whether `path` may be written.
 *
 * @throws NotOursError when another's file stands there; OutsideError when it cannot be looked at.
 */
export async function mayWrite(path: string, force: boolean, outside: Outside): Promise<void> {
  if (force) return
  let content: Uint8Array
  try {
    content = await outside.read(path)
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return
    throw plainError(error, `Cannot look at \`${path}\``)
  }
  if (!isOurs(content) && !(await isWorkbookOfOurs(content))) throw new NotOursError(path)
}

/** A workbook is a ZIP archive: it is opened only when there is one to look at. */
async function isWorkbookOfOurs(content: Uint8Array): Promise<boolean> {
  if (content[0] !== 0x50 || content[1] !== 0x4b) return false
  return (await import('./workbook-mark.ts')).isOurWorkbook(content)
}

/** A file to be written. */
export interface FileToWrite {
  readonly path: string
  readonly data: Uint8Array
}

/**
 * Writes files so that each appears whole or not at all: under other names in the same folders first, and when all of
 * them lie on the disk, renamed. Folders are made if need be.
 *
 * @throws OutsideError in plain words when the disk refuses.
 */
export async function writeWhole(files: readonly FileToWrite[], outside: Outside): Promise<void> {
  const drafts = files.map(({ path }) => join(dirname(path), `.${basename(path)}.${randomUUID()}.part`))
  let current = files[0]?.path ?? ''
  const write = async (): Promise<void> => {
    for (const [i, { path, data }] of files.entries()) {
      current = path
      await outside.makeFolder(dirname(path))
      await outside.create(drafts[i] ?? '', data)
    }
    for (const [i, { path }] of files.entries()) {
      current = path
      await outside.rename(drafts[i] ?? '', path)
    }
  }
  await withDrafts(drafts, async () => {
    try {
      await write()
    } catch (error) {
      // The first mistake is the one to tell, whatever happens to the drafts.
      for (const draft of drafts) await outside.remove(draft).catch(() => {})
      throw plainError(error, `Cannot write \`${current}\``)
    }
  })
}

const codeOf = (error: unknown): string | undefined => (error as NodeJS.ErrnoException | undefined)?.code

const reasons: Record<string, readonly [what: string, cure: string]> = {
  ENOSPC: ['the disk is full', 'Make some room and try again'],
  EDQUOT: ['there is no room left for you on this disk', 'Make some room and try again'],
  EACCES: ['you may not write there', 'Choose a folder of your own'],
  EPERM: ['you may not write there', 'Choose a folder of your own'],
  EROFS: ['that disk can only be read', 'Choose a folder on another disk'],
  EISDIR: ['a folder has that name', 'Choose another name'],
  ENOTDIR: ['part of the path is a file, not a folder', 'Choose another folder'],
  EEXIST: ['part of the path is a file, not a folder', 'Choose another folder'],
  ENAMETOOLONG: ['the name is too long', 'Choose a shorter name'],
  ENOENT: ['no folder can be made there', 'Choose a folder of your own'],
  EBUSY: ['another program holds the file open', 'Close it there and try again'],
  EFBIG: ['the disk takes no file as large as that', 'Choose a folder on another disk'],
  ELOOP: ['its links lead round in a circle', 'Choose another folder'],
  EIO: ['the disk, or what is in its place, answers with a mistake', 'Choose a folder on another disk'],
  ETIMEDOUT: ['a pipe has that name', 'Choose another name'],
  EMFILE: ['too many files are open', 'Close some programs and try again'],
}

/** What the system says, in plain words. */
export function plainError(error: unknown, beginning: string): OutsideError {
  const code = codeOf(error)
  const [what, cure] = reasons[code ?? ''] ?? [
    error instanceof Error ? error.message : String(error),
    undefined,
  ]
  return new OutsideError(`${beginning}: ${what}`, cure)
}
