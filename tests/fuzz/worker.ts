import { entries } from './entries.ts'
import { wrongWith } from './wrong.ts'

/** Tries texts that are sent to it, one after the other, and answers with what is wrong. */
process.on('message', async ({ entry, text }: { entry: string; text: string }) => {
  const act = entries[entry]
  try {
    const wrong = act ? wrongWith(text, await act(text)) : `There is no entry ${entry}`
    process.send?.(wrong ?? '')
  } catch (error) {
    process.send?.(`It throws: ${error instanceof Error ? error.stack : error}`)
  }
})
process.on('disconnect', () => process.exit())
