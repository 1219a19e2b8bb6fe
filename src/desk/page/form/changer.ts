import type { Refusal } from '../../engine/engine.ts'
import type { FormChange } from '../../engine/form.ts'
import type { Desk } from '../desk.ts'

/** Puts changes of the form into the text, one after the other. Gives why one cannot be, or nothing. */
export type Changer = (change: FormChange) => Promise<Refusal | undefined>

/** As often as a text that is written on meanwhile is asked about again. */
const tries = 4

export function makeChanger(desk: Desk, card: string): Changer {
  let before: Promise<unknown> = Promise.resolve()
  const put = async (change: FormChange): Promise<Refusal | undefined> => {
    for (let i = 0; i < tries; i++) {
      const text = desk.text.value
      const edits = await desk.engine.change(text, card, change)
      if ('refused' in edits) return edits
      // Edits are of the text that was asked about; on any other they would hit the wrong place.
      if (desk.text.value !== text) continue
      if (edits.length > 0) {
        desk.edit(edits)
        await changedFrom(desk, text)
      }
      return undefined
    }
    return { refused: 'The text is being written on', suggestion: 'Try again in a moment' }
  }
  return (change) => {
    const done = before.then(() => put(change))
    before = done.catch(() => undefined)
    return done
  }
}

/** The editor tells of an edit a moment later: until then the text that is known is the old one. */
function changedFrom(desk: Desk, text: string): Promise<void> {
  return new Promise((resolve) => {
    let stop = (): void => undefined
    const done = (): void => {
      clearTimeout(latest)
      stop()
      resolve()
    }
    const latest = setTimeout(done, 2000)
    stop = desk.text.subscribe((now) => {
      if (now !== text) setTimeout(done)
    })
  })
}
