import type { Core } from './core.ts'
import type { OnDesk } from './on-desk.ts'

/**
 * Another tab writes now. What it may not have got, because this one slept or its letter came too late, becomes an
 * earlier text.
 */
export async function putAside(core: Core, on: OnDesk): Promise<void> {
  const draft = await core.drafts.get(on.lesson).catch(() => undefined)
  if (draft?.text === on.text) return
  await core.drafts.keepEarlier(on.lesson, on.text, 'aside', core.clock.now()).catch(() => {})
}
