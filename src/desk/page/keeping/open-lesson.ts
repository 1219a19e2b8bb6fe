import { absentStore } from './absent-store.ts'
import { type Core, update } from './core.ts'
import type { Draft } from './drafts.ts'
import { lookAgain } from './look-again.ts'
import { baseOf, lessonId, type OnDesk, storeId } from './on-desk.ts'
import { meet } from './opening.ts'
import { nameOf } from './paths.ts'
import { sit } from './sitting.ts'
import type { Kept } from './store.ts'
import type { Seat } from './tabs.ts'
import { readFile, troubleOf } from './trouble.ts'

/** Shows a file of the store, or the draft of it that was left. Gives whether something could be shown. */
export async function openFile(core: Core, path: string): Promise<boolean> {
  const store = core.present.value
  const lesson = lessonId(store, path)
  if (core.now.value?.lesson === lesson) {
    await lookAgain(core)
    return true
  }
  // The place is taken before anything is read: what is read after it cannot be changed by another tab.
  const seat = await sit(core, lesson)
  const [theirs, draft] = await Promise.all([
    readFile(core, store, path).catch((error: unknown) => troubleOf(error)),
    core.drafts.get(lesson).catch(() => undefined),
  ])
  if (!('text' in theirs) && !draft && !seat.shown) {
    seat.leave()
    core.page.say(`${path} cannot be opened: ${theirs.words}.`)
    return false
  }
  await putAway(core)
  const on: OnDesk = {
    lesson,
    store,
    path,
    name: nameOf(path),
    text: '',
    sent: draft?.sent ?? [],
    turn: (draft?.turn ?? 0) + 1,
    writes: seat.writes,
  }
  if (!seat.writes)
    look(core, seat, on, seat.shown?.text ?? draft?.text ?? ('text' in theirs ? theirs.text : ''))
  else if ('text' in theirs) write(core, seat, on, theirs, draft)
  else if (draft) {
    const base = theirs.kind === 'missing' ? undefined : baseOf(draft)
    const trouble = theirs.kind === 'missing' ? undefined : { trouble: theirs }
    show(core, seat, { ...on, text: draft.text, ...(base && { base }), ...trouble }, draft.state)
  }
  return true
}

const look = (core: Core, seat: Seat, on: OnDesk, text: string): void => {
  show(core, seat, { ...on, text }, undefined)
  core.page.say(
    'This lesson is open in another tab and written there. Here it can be looked at, or taken over.',
  )
}

/** Shows the file, its draft, or the draft with the file beside it. */
function write(core: Core, seat: Seat, on: OnDesk, theirs: Kept, draft: Draft | undefined): void {
  const base = { version: theirs.version, text: theirs.text }
  if (!draft) {
    show(core, seat, { ...on, text: theirs.text, base }, undefined)
    return
  }
  const meeting = meet(draft, theirs)
  if (meeting === 'both') {
    const own = baseOf(draft)
    const choice = { why: 'draft', theirs } as const
    show(core, seat, { ...on, text: draft.text, choice, ...(own && { base: own }) }, draft.state)
    return
  }
  show(core, seat, { ...on, text: draft.text, base }, draft.state)
  if (meeting === 'same') return
  update(core, on.lesson, { text: theirs.text, sent: [] })
  void core.drafts.keepEarlier(on.lesson, draft.text, 'aside', core.clock.now()).catch(() => {})
  core.page.replace(theirs.text)
  core.page.say('This lesson was changed in the folder since you left it. Undo brings back how you left it.')
}

/** A draft of this folder, of another one, which is then away until it is opened, or of none. */
export async function openDraft(core: Core, draft: Draft): Promise<boolean> {
  const store = core.present.value
  if (draft.path !== undefined && draft.store === storeId(store)) return openFile(core, draft.path)
  if (core.now.value?.lesson === draft.lesson) return true
  const seat = await sit(core, draft.lesson)
  const newest = (await core.drafts.get(draft.lesson).catch(() => undefined)) ?? draft
  await putAway(core)
  const { lesson, name, path, text } = newest
  const base = baseOf(newest)
  // A single file has no folder that could be opened again.
  const elsewhere = path !== undefined && draft.store !== 'downloads'
  const on: OnDesk = {
    lesson,
    store: elsewhere ? absentStore(draft.store) : store,
    name,
    text,
    sent: newest.sent ?? [],
    turn: newest.turn + 1,
    writes: seat.writes,
    ...(elsewhere && { path, trouble: { kind: 'away', words: 'its folder is not open here' } }),
    ...(elsewhere && base && { base }),
  }
  if (seat.writes) show(core, seat, on, newest.state)
  else look(core, seat, on, seat.shown?.text ?? text)
  return true
}

/** A lesson that is in no folder yet. */
export async function begin(core: Core, text: string, name: string): Promise<void> {
  const lesson = `new:${core.newName()}`
  const seat = await sit(core, lesson)
  await putAway(core)
  const store = core.present.value
  const on = { lesson, store, name, text, begun: text, sent: [], turn: 1, writes: true }
  show(core, seat, on, undefined)
}

function show(core: Core, seat: Seat, on: OnDesk, state: unknown): void {
  core.seat = seat
  core.now.value = on
  core.lastSeen.set(on.lesson)
  core.page.show(on.text, state)
  core.writer.soon()
}

/** Lets go of the lesson on the desk, which stays kept, before another one takes its place. */
export async function putAway(core: Core): Promise<void> {
  await core.writer.flush()
  const on = core.now.value
  // A lesson in which nobody wrote a word needs no draft.
  if (on && on.path === undefined && on.text === on.begun) await core.drafts.drop(on.lesson).catch(() => {})
  core.seat?.leave()
  core.seat = undefined
}
