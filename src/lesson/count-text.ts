/** A number of things, with the word that counts them where they are no things of their own: `drops`. */
export interface Counted {
  readonly count: number
  readonly of?: string
}

/** What is counted by its own word and by nothing else: it adds up, and no scale or jug says how much it is. */
const written = /^\s*(\d{1,6})\s+(drop|blob|dab|squirt)s?\s*$/i

/** Reads `3 drops`, `1 blob`; undefined for anything else. */
export function readCounted(text: string): Required<Counted> | undefined {
  const [, count, word = ''] = written.exec(text) ?? []
  return count === undefined ? undefined : { count: Number(count), of: `${word.toLowerCase()}s` }
}
