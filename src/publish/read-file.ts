import { constants } from 'node:fs'
import { type FileHandle, open } from 'node:fs/promises'

/** What is no file on a disk, such as a pipe, may never end: more than this is not taken from it. */
const mostOfStream = 100_000_000
/** How long a pipe is waited for that nobody writes into, in ms. */
const patience = 10_000
/** How often a file is read that another program is writing, and how long to wait in between, in ms. */
const [tries, pause] = [20, 100]
const chunk = 1_000_000

/**
 * Reads a whole file as it is at one moment: one that another program is writing is read again when that is done.
 *
 * @param most so many bytes; a larger one is not read.
 * @throws as `node:fs` does, with a `code`: `EFBIG` when it is larger, `EBUSY` when it does not come to rest, `ETIMEDOUT`
 * when nobody writes into a pipe.
 */
export async function readWhole(path: string, most = Number.POSITIVE_INFINITY): Promise<Uint8Array> {
  const file = await opened(path)
  try {
    for (let i = 0; i < tries; i++) {
      const before = await file.stat()
      if (!before.isFile()) return await readStream(file, Math.min(most, mostOfStream))
      if (before.size > most) throw failure('EFBIG', 'file too large')
      const bytes = await readRange(file, before.size)
      const after = await file.stat()
      if (bytes.length === after.size && before.mtimeMs === after.mtimeMs) return bytes
      await new Promise((done) => setTimeout(done, pause))
    }
    throw failure('EBUSY', 'the file keeps changing')
  } finally {
    await file.close()
  }
}

/** A pipe is open only when somebody writes into it: nobody is waited for without end. */
async function opened(path: string): Promise<FileHandle> {
  let late = false
  const timer = setTimeout(() => {
    late = true
    // A writer who comes and goes at once ends the waiting; there is none where it is no pipe.
    void open(path, constants.O_WRONLY | constants.O_NONBLOCK).then(
      (file) => file.close(),
      () => {},
    )
  }, patience)
  try {
    const file = await open(path, 'r')
    if (!late) return file
    await file.close()
    throw failure('ETIMEDOUT', 'nobody writes into the pipe')
  } finally {
    clearTimeout(timer)
  }
}

async function readRange(file: FileHandle, size: number): Promise<Uint8Array> {
  // One byte more than it should have, to see whether it has grown.
  const buffer = Buffer.allocUnsafe(size + 1)
  let length = 0
  while (length < buffer.length) {
    const { bytesRead } = await file.read(buffer, length, buffer.length - length, length)
    if (bytesRead === 0) break
    length += bytesRead
  }
  return buffer.subarray(0, length)
}

async function readStream(file: FileHandle, most: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = []
  for (let length = 0; ; ) {
    const { bytesRead, buffer } = await file.read(Buffer.allocUnsafe(chunk), 0, chunk, null)
    if (bytesRead === 0) return Buffer.concat(parts)
    length += bytesRead
    if (length > most) throw failure('EFBIG', 'file too large')
    parts.push(buffer.subarray(0, bytesRead))
  }
}

const failure = (code: string, message: string): Error =>
  Object.assign(new Error(`${code}: ${message}`), { code })
