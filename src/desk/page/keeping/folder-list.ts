import type { Listed } from './store.ts'

/** A folder of lessons is not deeper, and has not more of them; what is beyond is some other folder. */
const deepest = 4
const most = 500

/** Front matter or a card block at the beginning of a line: a lesson of ours, and not any Markdown. */
const isLesson = (text: string): boolean => /^---\r?\n/.test(text) || /^```+ *card\b/m.test(text)

const titleIn = (text: string): string | undefined =>
  /^---\r?\n[\s\S]*?^title:[ \t]*(['"]?)(.+?)\1[ \t]*\r?$/m.exec(text)?.[2]

/** Lessons and class files in a folder and in the folders inside it, by path. */
export async function listFolder(folder: FileSystemDirectoryHandle): Promise<readonly Listed[]> {
  const found: Listed[] = []
  await walk(folder, '', 0, found)
  return found.sort((a, b) => a.path.localeCompare(b.path))
}

async function walk(
  folder: FileSystemDirectoryHandle,
  before: string,
  depth: number,
  found: Listed[],
): Promise<void> {
  for await (const [name, handle] of folder.entries()) {
    if (found.length >= most || name.startsWith('.') || name === 'node_modules') continue
    const path = before + name
    if (handle.kind === 'directory') {
      if (depth < deepest) await walk(handle, `${path}/`, depth + 1, found)
    } else {
      const listed = await listedFile(handle, path)
      if (listed) found.push(listed)
    }
  }
}

async function listedFile(handle: FileSystemFileHandle, path: string): Promise<Listed | undefined> {
  const [, ending] = /\.(md|ya?ml)$/i.exec(path) ?? []
  if (ending === undefined) return undefined
  const file = await handle.getFile()
  const changed = file.lastModified
  if (ending.toLowerCase() !== 'md') return { path, title: path, kind: 'class', changed }
  const text = await file.slice(0, 20_000).text()
  return isLesson(text) ? { path, title: titleIn(text) ?? path, kind: 'lesson', changed } : undefined
}
