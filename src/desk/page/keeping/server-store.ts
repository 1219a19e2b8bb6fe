import { notesHeader } from '../../engine/print-notes.ts'
import { asWritten, plainText } from './as-written.ts'
import { type Ask, askerOf, type DeskServer, dataAddress } from './desk-server.ts'
import { hearChanges } from './server-changes.ts'
import { type Kept, type Listed, type Saved, type Store, StoreTrouble, type WorkshopText } from './store.ts'

/** Where the page is, as far as finding its server needs it. */
type Where = Readonly<Record<'protocol' | 'hostname' | 'origin' | 'hash', string>>

/** The local server that this page comes from; undefined for a page from elsewhere, or without the word of its start. */
export function serverAt({ protocol, hostname, origin, hash }: Where): DeskServer | undefined {
  const isHere = protocol === 'http:' && (hostname === '127.0.0.1' || hostname === 'localhost')
  const token = /^#([\w-]{43})$/.exec(hash)?.[1]
  return isHere && token !== undefined ? { origin, token } : undefined
}

/**
 * The folder behind the local server.
 *
 * Its texts are given as an editor has them, and saved with the ends of lines and the byte order mark of their files. A
 * server that does not answer, or was started anew since the page was opened, is the folder as it was known last: what
 * is kept of its lessons in the browser is found, and whatever else is asked of it says what is wrong.
 */
export async function serverStore(server: DeskServer, notes: Notes = browserNotes): Promise<Store> {
  const ask = askerOf(server)
  const { name, id } = await folderOf(ask, notes)
  /** What was read or saved last, as it lies in the folder. */
  const known = new Map<string, Kept>()
  const take = (kept: Kept): Kept => {
    known.set(kept.path, kept)
    return { ...kept, text: plainText(kept.text) }
  }
  const read = async (path: string): Promise<Kept> =>
    take((await (await ask('file', { path })).json()) as Kept)
  const save = async (path: string, text: string, over: string | undefined): Promise<Saved> => {
    // The page may have come back with a draft of a file that it has not read since.
    if (over !== undefined && !known.has(path)) await read(path).catch(() => {})
    const before = over === undefined ? undefined : known.get(path)
    const whole = before ? asWritten(text, before.text) : text
    const body = JSON.stringify({ text: whole, ...(over !== undefined && { over }) })
    const response = await ask('file', { path }, { method: 'PUT', headers: json, body }, [409])
    const answer = (await response.json()) as Kept
    if (response.status === 409) return { other: take(answer) }
    known.set(path, { path, text: whole, version: answer.version })
    return { version: answer.version }
  }
  return {
    kind: 'server',
    name,
    id: `server ${id}`,
    list: async () => ((await (await ask('files')).json()) as { files: Listed[] }).files,
    read,
    save,
    picture: (lesson, address) => picture(ask, lesson, address),
    workshop: async (path) => {
      const { found } = (await (await ask('workshop', { path })).json()) as { found?: WorkshopText }
      return found
    },
    addPicture: (lesson, name, data) => addPicture(ask, lesson, name, data),
    watch: (changed) =>
      hearChanges(
        ask,
        ({ path, version }) => {
          if (version === undefined || known.get(path)?.version !== version) changed(path)
        },
        () => {
          for (const path of known.keys()) changed(path)
        },
      ),
    print: async (wish) => {
      const response = await ask('print', {}, { method: 'POST', headers: json, body: JSON.stringify(wish) })
      const told = response.headers.get(notesHeader)
      const notes = told ? (JSON.parse(decodeURIComponent(told)) as string[]) : []
      return { pdf: await response.blob(), notes }
    },
  }
}

/** What outlives the page. */
export interface Notes {
  getItem(key: string): string | null
  setItem(key: string, text: string): void
}

/** A browser may keep nothing, and says so by throwing. */
const browserNotes: Notes = {
  getItem: (key) => (globalThis as { localStorage?: Notes }).localStorage?.getItem(key) ?? null,
  setItem: (key, text) => (globalThis as { localStorage?: Notes }).localStorage?.setItem(key, text),
}

interface Folder {
  readonly name: string
  readonly id: string
}

async function folderOf(ask: Ask, notes: Notes): Promise<Folder> {
  try {
    const { name, id } = (await (await ask('about')).json()) as Folder
    const folder = { name, id }
    noted(() => notes.setItem(noteName, JSON.stringify(folder)))
    return folder
  } catch (error) {
    if (!(error instanceof StoreTrouble)) throw error
    const before = noted(() => JSON.parse(notes.getItem(noteName) ?? '') as Folder)
    return before ?? { name: 'the folder of the desk', id: '' }
  }
}

const noteName = 'foldlore desk'

const noted = <T>(act: () => T): T | undefined => {
  try {
    return act()
  } catch {
    return undefined
  }
}

const json = { 'Content-Type': 'application/json' } as const

/** Undefined also for what is there and no picture: it cannot be shown. */
async function picture(ask: Ask, lesson: string, address: string): Promise<string | undefined> {
  const response = await ask('picture', { lesson, address }, {}, [403, 404, 413, 415])
  return response.ok ? dataAddress(await response.blob()) : undefined
}

async function addPicture(ask: Ask, lesson: string, name: string, data: Blob): Promise<string> {
  const type = data.type.startsWith('image/') ? data.type : 'application/octet-stream'
  const init = { method: 'POST', headers: { 'Content-Type': type }, body: data }
  return ((await (await ask('picture', { lesson, name }, init)).json()) as { address: string }).address
}
