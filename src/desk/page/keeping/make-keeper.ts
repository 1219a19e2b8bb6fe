import { effect } from '@preact/signals'
import { isAbsent } from './absent-store.ts'
import { choose } from './choosing.ts'
import { type Core, catchUp, makeCore, type Tools, update } from './core.ts'
import type { Earlier } from './drafts.ts'
import type { Keeper, Left, Outcome } from './keeper.ts'
import { lookAgain } from './look-again.ts'
import { takeOut } from './moving.ts'
import { draftOf, lessonId, storeId } from './on-desk.ts'
import { begin, openDraft, openFile, putAway } from './open-lesson.ts'
import { pathFor } from './paths.ts'
import { resume } from './resuming.ts'
import { saveNewAs, saveNow } from './saving.ts'
import { takeOver } from './sitting.ts'
import { keepWatch, tryAgain } from './watching.ts'
import { writtenNowAndThen } from './written.ts'

/** A keeper with an empty desk. */
export function makeKeeper(tools: Tools): Keeper {
  const core = makeCore(tools, lookAgain)
  keepWatch(core)
  tryAgain(core)
  const written = writtenNowAndThen(core)
  effect(() => {
    // Once told, the teacher knows; the line at the top goes on saying it.
    if (!core.keeps.value)
      core.page.say('This browser keeps nothing by itself now. Save the lesson before you leave.')
  })
  return {
    state: core.state,
    store: core.present,
    use: (store) => core.inTurn(() => use(core, store)),
    open: (path) => core.inTurn(() => openFile(core, path)),
    begin: (text, name) => core.inTurn(() => begin(core, text, name)),
    resume: () => core.inTurn(() => resume(core)),
    changed: (text) => changed(core, text, written),
    save: () => core.inTurn(() => saveNow(core)),
    saveAs: (name) => core.inTurn(() => saveAs(core, name)),
    choose: (chosen) => core.inTurn(() => choose(core, chosen)),
    takeOver: () => core.inTurn(() => takeOver(core)),
    close: () => core.inTurn(() => close(core)),
    flush: () => core.writer.flush(),
    leaving: () => leaving(core),
    lookAgain: () => core.inTurn(() => lookAgain(core)),
    earlier: async () => {
      const on = core.now.value
      return on ? core.drafts.earlier(on.lesson).catch(() => []) : []
    },
    bringBack: (version) => core.inTurn(() => bringBack(core, version)),
    forget: (version) => core.drafts.forget(version.id).catch(() => {}),
    unsaved: () => unsaved(core),
    openLeft: (left) => core.inTurn(() => openLeft(core, left)),
    dropLeft: (left) => core.drafts.drop(left.lesson).catch(() => {}),
  }
}

function changed(core: Core, text: string, written: (text: string) => void): void {
  const on = core.now.value
  if (!on) return
  if (!on.writes) {
    if (text === on.text) return
    core.page.replace(on.text)
    core.page.say('This lesson is written in another tab. To write here, take over the writing first.')
    return
  }
  if (text !== on.text) {
    written(on.text)
    update(core, on.lesson, { text })
  }
  core.writer.soon()
}

/** The page may be gone at any moment: what can be written without waiting is written first. */
function leaving(core: Core): void {
  const on = catchUp(core)
  if (!on?.writes) return
  core.drafts.putNow(draftOf(on, core.page.state(), core.clock.now()))
  core.writer.soon()
  void core.writer.flush()
}

async function use(core: Core, store: Core['present']['value']): Promise<void> {
  await core.writer.flush()
  core.present.value = store
  const on = core.now.value
  if (!on) return
  if (on.path !== undefined && storeId(on.store) === storeId(store)) {
    // The same folder, opened again.
    update(core, on.lesson, { store }, 'trouble')
    await lookAgain(core)
  } else if (on.path === undefined || on.store.kind === 'downloads' || isAbsent(on.store)) {
    await takeOut(core, on, store)
  }
}

async function saveAs(core: Core, name: string): Promise<Outcome> {
  const on = core.now.value
  const path = pathFor(name)
  return on?.path !== undefined && lessonId(on.store, path) === on.lesson
    ? saveNow(core)
    : saveNewAs(core, path)
}

async function close(core: Core): Promise<void> {
  await putAway(core)
  core.now.value = undefined
  core.lastSeen.set(undefined)
  core.page.clear()
}

async function bringBack(core: Core, version: Earlier): Promise<void> {
  const on = core.now.value
  if (!on?.writes || version.lesson !== on.lesson || version.text === on.text) return
  await core.drafts.keepEarlier(on.lesson, on.text, 'aside', core.clock.now()).catch(() => {})
  update(core, on.lesson, { text: version.text })
  core.page.replace(version.text)
  core.writer.soon()
}

async function unsaved(core: Core): Promise<readonly Left[]> {
  const drafts = await core.drafts.all().catch(() => [])
  return drafts
    .filter((draft) => draft.unsaved && draft.lesson !== core.now.value?.lesson)
    .map(({ lesson, name, path, changed }) => ({
      lesson,
      name,
      changed,
      ...(path !== undefined && { path }),
    }))
}

async function openLeft(core: Core, left: Left): Promise<boolean> {
  const draft = await core.drafts.get(left.lesson).catch(() => undefined)
  return draft ? openDraft(core, draft) : false
}
