import type { Core } from './core.ts'
import type { OnDesk } from './on-desk.ts'

/** This tab slept while another took over: what was written here since the last draft becomes an earlier text. */
export async function putAside(core: Core, on: OnDesk): Promise<void> {
  const draft = await core.drafts.get(on.lesson).catch(() => undefined)
  if (draft?.text !== on.text) {
    await core.drafts.keepEarlier(on.lesson, on.text, 'aside', core.clock.now()).catch(() => {})
    core.page.say(
      'This lesson is now written in another tab. What you wrote here is among its earlier texts.',
    )
  } else core.page.say('This lesson is now written in another tab. Here it can be looked at.')
}
