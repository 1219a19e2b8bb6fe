import type { Ask } from './desk-server.ts'
import { StoreTrouble } from './store.ts'

/** A file that is not what it was; without version it is gone. */
export interface ServerChange {
  readonly path: string
  readonly version?: string
}

/** Whether the page is looked at; there is none where there is no page. */
interface Sight {
  readonly visibilityState: string
  addEventListener(name: 'visibilitychange', act: () => void): void
  removeEventListener(name: 'visibilitychange', act: () => void): void
}

/** Between two tries to hear of changes again, in ms: soon at first, then by and by. */
const waits = [500, 1000, 2000, 5000, 10_000] as const

/**
 * Hears from the local server which files change, as long as the page is looked at: a browser holds few connections to
 * one server, and each tab would keep one. A server that is gone is asked again by and by.
 *
 * @param missed called when changes may have happened while nobody listened.
 * @returns what ends it.
 */
export function hearChanges(ask: Ask, heard: (change: ServerChange) => void, missed: () => void): () => void {
  const { document: page } = globalThis as { readonly document?: Sight }
  let ended = false
  let before = false
  let tries = 0
  let timer: ReturnType<typeof setTimeout> | undefined
  let listening: AbortController | undefined
  const listen = async (): Promise<void> => {
    const own = new AbortController()
    listening = own
    try {
      const { body } = await ask('changes', {}, { signal: own.signal })
      for await (const line of linesOf(body)) {
        tries = 0
        // The first line says that the server listens from now on.
        if (line !== '') heard(JSON.parse(line) as ServerChange)
        else if (before) missed()
        before = true
      }
    } catch (error) {
      // The word of this start is no longer right: it will not become right by asking again.
      if (error instanceof StoreTrouble && error.kind === 'refused') ended = true
    }
    if (listening === own) listening = undefined
    if (!ended && !own.signal.aborted) timer = setTimeout(start, waits[Math.min(tries++, waits.length - 1)])
  }
  const stop = (): void => {
    clearTimeout(timer)
    listening?.abort()
    listening = undefined
  }
  const start = (): void => {
    stop()
    if (!ended && page?.visibilityState !== 'hidden') void listen()
  }
  page?.addEventListener('visibilitychange', start)
  start()
  return () => {
    ended = true
    page?.removeEventListener('visibilitychange', start)
    stop()
  }
}

async function* linesOf(body: ReadableStream<Uint8Array> | null): AsyncGenerator<string> {
  if (!body) return
  const reader = body.getReader()
  const decoder = new TextDecoder()
  let rest = ''
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return
    const lines = (rest + decoder.decode(value, { stream: true })).split('\n')
    rest = lines.pop() ?? ''
    yield* lines
  }
}
