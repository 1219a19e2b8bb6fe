import { plainText } from './as-written.ts'
import type { Clock } from './core.ts'
import { type Kept, type Store, StoreTrouble } from './store.ts'

/** As long as a store may take to answer. */
const patience = 20_000

/** What a store threw, for the teacher. */
export function troubleOf(error: unknown): { readonly kind: StoreTrouble['kind']; readonly words: string } {
  if (error instanceof StoreTrouble) return { kind: error.kind, words: error.message }
  return { kind: 'away', words: 'the folder cannot be reached' }
}

/** Fails with a trouble of kind `away` when there is no answer in time; the answer may still come, and is dropped. */
export function inTime<T>(clock: Pick<Clock, 'later'>, work: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const callOff = clock.later(patience, () =>
      reject(new StoreTrouble('away', 'the folder does not answer')),
    )
    work.then(resolve, reject).finally(callOff)
  })
}

/** Reads a file with the ends of lines that the editor has. */
export async function readFile(tools: { readonly clock: Clock }, store: Store, path: string): Promise<Kept> {
  const kept = await inTime(tools.clock, store.read(path))
  return { ...kept, text: plainText(kept.text) }
}
