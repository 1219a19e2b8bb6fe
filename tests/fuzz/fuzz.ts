import fc from 'fast-check'
import { corpus } from './corpus.ts'
import { textsLike } from './texts.ts'
import type { Trial } from './trial.ts'

/** What came of trying texts at one entry. */
export interface Outcome {
  readonly entry: string
  readonly tried: number
  /** The smallest text found for which something is wrong, and what. */
  readonly failure?: { readonly text: string; readonly wrong: string }
}

/**
 * Tries texts at an entry until the time is up or something is wrong.
 *
 * @param time in ms; what is wrong is made smaller for as long again at most.
 * @param seed the same one gives the same texts.
 * @param most texts that are tried.
 */
export async function fuzz(
  trial: Trial,
  entry: string,
  time: number,
  seed: number,
  most = 1_000_000,
): Promise<Outcome> {
  let tried = 0
  let failure: Outcome['failure']
  let last: Promise<unknown> = Promise.resolve()
  const end = Date.now() + 2 * time
  const property = fc.asyncProperty(textsLike(corpus[entry] ?? []), async (text) => {
    if (failure && Date.now() > end) return
    tried++
    const asked = trial.of(entry, text).then((wrong) => {
      if (wrong !== undefined) failure = { text, wrong }
      return wrong
    })
    last = asked
    const wrong = await asked
    if (wrong !== undefined) throw new Error(wrong)
  })
  await fc.check(property, {
    seed,
    numRuns: most,
    interruptAfterTimeLimit: time,
  })
  // When the time is up in the middle of a text, that one is not left behind: it may be the one that never ends.
  await last
  return { entry, tried, ...(failure && { failure }) }
}
