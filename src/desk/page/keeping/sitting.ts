import { type Core, catchUp, update } from './core.ts'
import type { Draft } from './drafts.ts'
import { baseOf, handed, type OnDesk } from './on-desk.ts'
import { putAside } from './put-aside.ts'
import type { Handed, Hears, Seat } from './tabs.ts'

/** Takes a place at a lesson, beside other tabs that have it open. */
export function sit(core: Core, lesson: string): Promise<Seat> {
  const here = (): OnDesk | undefined => {
    const on = core.now.value
    return on?.lesson === lesson ? on : undefined
  }
  const hears: Hears = {
    now() {
      catchUp(core)
      const on = here()
      return on && handed(on, core.page.state())
    },
    changed(news) {
      const on = here()
      if (!on || on.writes || on.text === news.text) return
      update(core, lesson, { text: news.text })
      core.page.replace(news.text)
    },
    lost(late) {
      const on = here()
      if (!on) return
      update(core, lesson, { writes: false }, 'choice', 'wanted', 'trouble')
      core.page.say(
        late
          ? 'This lesson is now written in another tab. What you wrote here last is among its earlier versions.'
          : 'This lesson is now written in another tab. Here it can be looked at.',
      )
      void core.inTurn(() => putAside(core, on))
    },
    won: () => void core.inTurn(() => goOn(core, lesson, undefined)),
  }
  return core.tabs.sit(lesson, hears)
}

/** Makes this tab the one that writes, if the other one lets go or is silent. */
export async function takeOver(core: Core): Promise<void> {
  const on = core.now.value
  if (!on || on.writes) return
  const news = await core.seat?.takeOver()
  if (core.seat?.writes) await goOn(core, on.lesson, news)
}

/** Goes on writing what the other tab had: what it handed over, or its draft. */
async function goOn(core: Core, lesson: string, news: Handed | undefined): Promise<void> {
  const draft = await core.drafts.get(lesson).catch(() => undefined)
  const on = core.now.value
  if (on?.lesson !== lesson || on.writes) return
  const from: Pick<Draft, 'text' | 'state' | 'base' | 'unsaved' | 'sent'> = news ??
    draft ?? { text: on.text, unsaved: true }
  const base = baseOf(from)
  const turn = Math.max(on.turn, draft?.turn ?? 0) + 1
  update(core, lesson, { text: from.text, writes: true, turn, sent: from.sent ?? [], ...(base && { base }) })
  core.page.show(from.text, from.state)
  core.writer.soon()
  await core.writer.flush()
  core.page.say('You write this lesson here now.')
  await core.lookAgain()
}
