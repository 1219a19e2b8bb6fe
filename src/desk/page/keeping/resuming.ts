import { isAbsent } from './absent-store.ts'
import type { Core } from './core.ts'
import { storeId } from './on-desk.ts'
import { openDraft, openFile } from './open-lesson.ts'

/**
 * The lesson that this tab had on its desk, or, in a new tab, the newest one that no other tab has open and that is
 * in no folder or in this one.
 */
export async function resume(core: Core): Promise<boolean> {
  if (core.now.value) return true
  const own = core.lastSeen.get()
  const here = storeId(core.present.value)
  if (own !== undefined) {
    const draft = await core.drafts.get(own).catch(() => undefined)
    if (draft) return openDraft(core, draft)
    return own.startsWith(`${here}/`) ? openFile(core, own.slice(here.length + 1)) : false
  }
  const [newest] = await core.drafts.all().catch(() => [])
  if (!newest) return false
  const fits = newest.store === here || newest.unsaved || isAbsent(core.present.value)
  return fits && (await core.tabs.free(newest.lesson)) ? openDraft(core, newest) : false
}
