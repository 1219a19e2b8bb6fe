import { type Core, catchUp, update } from './core.ts'
import { isUnsaved, type OnDesk } from './on-desk.ts'
import { meet } from './opening.ts'
import { saveNow } from './saving.ts'
import type { Kept } from './store.ts'
import { readFile, troubleOf } from './trouble.ts'

/** Reads the file of the lesson on the desk again, and does what follows from it. */
export async function lookAgain(core: Core): Promise<void> {
  const on = core.now.value
  if (!on?.writes || on.path === undefined) return
  let theirs: Kept
  try {
    theirs = await readFile(core, on.store, on.path)
  } catch (error) {
    unreadable(core, on.lesson, error)
    return
  }
  const after = catchUp(core)
  if (after?.lesson !== on.lesson || !after.writes) return
  update(core, on.lesson, {}, 'trouble')
  settleWith(core, after, theirs)
  if (core.now.value?.wanted) await saveNow(core)
}

function settleWith(core: Core, on: OnDesk, theirs: Kept): void {
  const mine = {
    text: on.text,
    unsaved: isUnsaved(on),
    sent: on.sent,
    ...(on.base && { base: on.base.version }),
  }
  const base = { version: theirs.version, text: theirs.text }
  switch (meet(mine, theirs)) {
    case 'same':
      update(core, on.lesson, { base }, 'choice')
      break
    case 'newer':
      update(core, on.lesson, { base, text: theirs.text, sent: [] }, 'choice')
      void core.drafts.keepEarlier(on.lesson, on.text, 'aside', core.clock.now()).catch(() => {})
      core.page.replace(theirs.text)
      core.page.say(
        'Another program has changed this lesson. It is shown as it is now; undo brings back how it was.',
      )
      break
    case 'both':
      update(core, on.lesson, { choice: { why: on.choice?.why ?? 'changed', theirs } }, 'wanted')
  }
  core.writer.soon()
}

function unreadable(core: Core, lesson: string, error: unknown): void {
  const trouble = troubleOf(error)
  const before = core.now.value
  if (before?.lesson !== lesson) return
  if (trouble.kind === 'missing') {
    if (!before.base) return
    update(core, lesson, {}, 'base', 'choice', 'trouble')
    core.page.say(`${before.path} is no longer in the folder. It is kept here; saving puts it there again.`)
    core.writer.soon()
  } else update(core, lesson, { trouble })
}
