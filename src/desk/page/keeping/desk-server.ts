import { StoreTrouble } from './store.ts'

/** The local server as the page knows it. */
export interface DeskServer {
  /** `http://127.0.0.1:3653` */
  readonly origin: string
  readonly token: string
}

/** Asks the local server; gives an answer of any kind that is none of refusal, or one that `wanted` lets through. */
export type Ask = (
  path: string,
  query?: Readonly<Record<string, string>>,
  init?: RequestInit,
  wanted?: readonly number[],
) => Promise<Response>

/** @throws what it gives throws a StoreTrouble, in plain words. */
export const askerOf =
  ({ origin, token }: DeskServer): Ask =>
  async (path, query = {}, init = {}, wanted = []) => {
    const search = new URLSearchParams(query).toString()
    let response: Response
    try {
      response = await fetch(`${origin}/api/${path}${search && `?${search}`}`, {
        ...init,
        headers: { ...init.headers, Authorization: `Bearer ${token}` },
        cache: 'no-store',
        credentials: 'omit',
        redirect: 'error',
        referrerPolicy: 'no-referrer',
      })
    } catch (error) {
      if (init.signal?.aborted) throw error
      throw new StoreTrouble('away', 'the desk on this computer does not answer. It may have been closed')
    }
    if (response.ok || wanted.includes(response.status)) return response
    throw await troubleIn(response)
  }

/** By the number of the refusal; what is not here is refused for good. */
const kinds: Readonly<Record<number, StoreTrouble['kind']>> = {
  404: 'missing',
  408: 'away',
  503: 'away',
  507: 'full',
}

async function troubleIn(response: Response): Promise<StoreTrouble> {
  const told: unknown = await response.json().catch(() => undefined)
  const { refused, suggestion } = (told ?? {}) as { refused?: unknown; suggestion?: unknown }
  const words = [refused, suggestion].filter((part): part is string => typeof part === 'string')
  const said = words.join('. ').replace(/^Cannot save: /, '') || 'the desk on this computer could not do it'
  // They go on a sentence of the page, as text.
  const plain = said.replace(/^[A-Z]/, (c) => c.toLowerCase()).replaceAll('`', '')
  return new StoreTrouble(kinds[response.status] ?? 'refused', plain)
}

/** The data address of some bytes. */
export async function dataAddress(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer())
  let text = ''
  // Not all at once: a call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 8192)
    text += String.fromCharCode(...bytes.subarray(at, at + 8192))
  return `data:${blob.type};base64,${btoa(text)}`
}
