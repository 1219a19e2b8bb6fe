import type { Core } from './core.ts'

/** As far apart are the texts that are kept while one writes. */
const apart = 5 * 60_000

/** Keeps a text now and then while one writes, so that one can go back further than undo. Gives what hears of changes. */
export function writtenNowAndThen(core: Core): (before: string) => void {
  let lesson: string | undefined
  let last = 0
  return (before) => {
    const on = core.now.peek()
    const now = core.clock.now()
    if (!on || (on.lesson === lesson && now - last < apart)) return
    const first = on.lesson !== lesson
    lesson = on.lesson
    last = now
    // The first change of a lesson comes after opening it: how it was then is what one may want back.
    if (first || before !== '')
      void core.drafts.keepEarlier(on.lesson, before, 'written', now).catch(() => {})
  }
}
