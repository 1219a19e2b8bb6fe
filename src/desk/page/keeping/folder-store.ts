import { asWritten, plainText } from './as-written.ts'
import { dataAddress } from './desk-server.ts'
import { listFolder } from './folder-list.ts'
import { fileIn, folderIn, inFolder, troubleIn } from './folder-paths.ts'
import { freePictureName } from './picture-name.ts'
import { type Kept, type Store, StoreTrouble } from './store.ts'
import { versionOf } from './version.ts'
import { workshopPlaces } from './workshop-places.ts'

/** As often is looked at files that are open, while the page is in sight, in milliseconds. */
const interval = 4000

/**
 * A folder that the browser was let into. The browser writes a new file beside the old one and swaps them when it is
 * whole (File System Access, `createWritable`).
 *
 * @param id the same when the page comes back.
 */
export function folderStore(folder: FileSystemDirectoryHandle, id: string): Store {
  /** What was read or saved last, as it lies in the folder. */
  const known = new Map<string, { readonly text: string; readonly version: string }>()
  const raw = async (path: string): Promise<Kept> => {
    const text = await (await (await fileIn(folder, path)).getFile()).text()
    return { path, text, version: await versionOf(text) }
  }
  const read = (path: string): Promise<Kept> =>
    inFolder(async () => {
      const kept = await raw(path)
      known.set(path, kept)
      return { ...kept, text: plainText(kept.text) }
    })
  return {
    kind: 'folder',
    name: folder.name,
    id: `folder ${id}`,
    list: () => inFolder(() => listFolder(folder)),
    read,
    save: (path, text, over) =>
      inFolder(async () => {
        // Two tabs never compare and write at the same time.
        return navigator.locks.request(`foldlore save ${id} ${path}`, async () => {
          const there = await raw(path).catch((error: unknown) => {
            if (troubleIn(error).kind === 'missing') return undefined
            throw error
          })
          if (there && there.version !== over) return { other: { ...there, text: plainText(there.text) } }
          const whole = there ? asWritten(text, there.text) : text
          const file = await fileIn(folder, path, true)
          await write(file, whole).catch(async (error: unknown) => {
            // A new file is there, and empty, before it is written.
            if (!there) await remove(folder, path)
            throw error
          })
          const version = await versionOf(whole)
          known.set(path, { text: whole, version })
          return { version }
        })
      }),
    async picture(lesson, address) {
      try {
        const file = await (await fileIn(folder, beside(lesson, address))).getFile()
        return file.type.startsWith('image/') ? await dataAddress(file) : undefined
      } catch {
        return undefined
      }
    },
    workshop: (path) =>
      inFolder(async () => {
        for (const place of workshopPlaces(path)) {
          const found = await raw(place).catch((error: unknown) => troubleIn(error).kind)
          if (typeof found === 'object') return { path: place, text: found.text }
          if (found !== 'missing') return { path: place }
        }
        return undefined
      }),
    addPicture: (lesson, wanted, data) =>
      inFolder(async () => {
        const place = await folderIn(folder, lesson.split('/').slice(0, -1))
        const names = new Set<string>()
        for await (const name of place.keys()) names.add(name.toLowerCase())
        const name = freePictureName(wanted, (taken) => names.has(taken))
        await write(await place.getFileHandle(name, { create: true }), data)
        return name
      }),
    watch(changed) {
      const look = async (): Promise<void> => {
        if (document.visibilityState === 'hidden') return
        for (const [path, { version }] of known) {
          const now = await raw(path).catch(() => undefined)
          if (now && now.version !== version && known.get(path)?.version === version) changed(path)
        }
      }
      const timer = setInterval(() => void look(), interval)
      return () => clearInterval(timer)
    },
  }
}

/** Whole or not at all: what breaks off is thrown away. */
async function write(file: FileSystemFileHandle, content: string | Blob): Promise<void> {
  const stream = await file.createWritable()
  try {
    await stream.write(content)
    await stream.close()
  } catch (error) {
    await stream.abort().catch(() => {})
    throw error
  }
}

async function remove(folder: FileSystemDirectoryHandle, path: string): Promise<void> {
  const names = path.split('/')
  const place = await folderIn(folder, names.slice(0, -1))
  await place.removeEntry(names.at(-1) ?? '').catch(() => {})
}

/** Path of a picture from the folder on, for an address that stands in the lesson. */
function beside(lesson: string, address: string): string {
  const parts = lesson.split('/').slice(0, -1)
  for (const part of decodeURI(address.split(/[?#]/)[0] ?? '').split('/'))
    if (part === '..') {
      if (parts.pop() === undefined) throw new StoreTrouble('refused', 'the picture lies outside the folder')
    } else if (part !== '.' && part !== '') parts.push(part)
  return parts.join('/')
}
