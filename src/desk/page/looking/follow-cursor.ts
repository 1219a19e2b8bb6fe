import { effect } from '@preact/signals'
import type { Desk } from '../desk.ts'
import { writtenAt } from './place-in-text.ts'

/**
 * Keeps the step of the desk at the one that the cursor is in. A step that is looked at elsewhere stays until the cursor
 * moves again.
 *
 * @returns stops it.
 */
export function followCursor(desk: Desk): () => void {
  let followed = desk.step.peek() === undefined ? undefined : desk.cursor.peek()
  return effect(() => {
    const [look, cursor] = [desk.look.value, desk.cursor.value]
    if (!look || cursor === followed) return
    desk.step.value = writtenAt(look, cursor).step
    // The look lags behind the typing: only when it has come the step is sure.
    if (look.text === desk.text.peek()) followed = cursor
  })
}
