import type { IncomingMessage } from 'node:http'
import { notesHeader } from '../engine/print-notes.ts'
import type { Answer } from './answer.ts'
import { bodyOf, checkKind, fieldsOf, optionalText, textField } from './body.ts'
import type { ListedFile } from './listed.ts'
import { addPicture, mostPicture, readPicture } from './pictures.ts'
import { Refused } from './refused.ts'
import { type Keeping, mostText, readTextFile, saveTextFile } from './text-file.ts'
import { workshopFor } from './workshop.ts'

/** What requests are answered with. */
export interface Served extends Keeping {
  /** What the teacher calls the folder. */
  readonly name: string
  /** Tells it from other folders of that name. */
  readonly id: string
  readonly version: string
  readonly list: () => Promise<{ files: readonly ListedFile[]; more: boolean }>
  /** How long a body may take to arrive, in ms. */
  readonly slowest: number
  readonly browserPath?: string
}

/** A request, as far as its answer needs it. */
export interface Asked {
  readonly request: IncomingMessage
  readonly query: URLSearchParams
}

type Handler = (asked: Asked, served: Served) => Promise<Answer>

/** What can be asked, by path and method. The stream of changes is no single answer and stands elsewhere. */
export const routes: Readonly<Record<string, Readonly<Record<string, Handler>>>> = {
  '/api/about': { GET: async (_, { name, id, version }) => ({ json: { name, id, version } }) },
  '/api/files': { GET: async (_, { list }) => ({ json: await list() }) },
  '/api/file': {
    GET: async ({ query }, served) => {
      const path = value(query, 'path')
      return { json: { path, ...(await readTextFile(path, served)) } }
    },
    PUT: async (asked, served) => {
      const path = value(asked.query, 'path')
      const fields = await json(asked, served)
      const saved = await saveTextFile(path, textField(fields, 'text'), optionalText(fields, 'over'), served)
      return 'other' in saved ? { status: 409, json: { path, ...saved.other } } : { json: saved }
    },
  },
  '/api/picture': {
    GET: async ({ query }, { folder }) =>
      readPicture(value(query, 'lesson'), value(query, 'address'), folder),
    POST: async ({ request, query }, served) => {
      checkKind(request, /^(image\/[\w.+-]+|application\/octet-stream)$/, 'a picture')
      const limits = { most: mostPicture, time: served.slowest, what: 'a picture' }
      const bytes = await bodyOf(request, limits)
      return {
        json: { address: await addPicture(value(query, 'lesson'), value(query, 'name'), bytes, served) },
      }
    },
  },
  '/api/workshop': {
    GET: async ({ query }, { folder }) => {
      const found = await workshopFor(value(query, 'path'), folder)
      return { json: found ? { found } : {} }
    },
  },
  '/api/print': {
    POST: async (asked, served) => {
      const { printWish, wishIn } = await import('./print.ts')
      const wish = await wishIn(await json(asked, served))
      // One browser at a time: two would take longer than one after the other.
      const print = () => printWish(wish, served.folder, served.browserPath)
      const { pdf, notes } = await served.turns(' print', print)
      const headers = { [notesHeader]: encodeURIComponent(JSON.stringify(notes)) }
      return { bytes: pdf, type: 'application/pdf', headers }
    },
  },
}

/** A value of the query, given once. Throws Refused. */
function value(query: URLSearchParams, name: string): string {
  const [only, ...others] = query.getAll(name)
  if (only !== undefined && others.length === 0) return only
  throw new Refused(400, `\`${name}\` is wanted once in the address`)
}

/** The fields of a JSON body; in JSON a lesson may take twice its room. Throws Refused. */
async function json({ request }: Asked, { slowest }: Served): Promise<Readonly<Record<string, unknown>>> {
  checkKind(request, /^application\/json$/, 'JSON')
  return fieldsOf(await bodyOf(request, { most: 2 * mostText + 10_000, time: slowest, what: 'a lesson' }))
}
