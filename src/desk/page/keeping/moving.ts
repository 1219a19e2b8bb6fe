import { type Core, update } from './core.ts'
import { lessonId, type OnDesk } from './on-desk.ts'
import { nameOf } from './paths.ts'
import { sit } from './sitting.ts'

/**
 * Gives the lesson on the desk another identity, when it has come into another file. What is kept of it goes with it.
 *
 * @returns the new identity.
 */
export async function moveTo(core: Core, on: OnDesk, path: string): Promise<string> {
  const lesson = lessonId(on.store, path)
  if (lesson === on.lesson) return lesson
  await move(core, on, lesson, { path, name: nameOf(path) })
  return lesson
}

/** Takes a lesson out of its file: it is in no folder then, and will be saved in this one. */
export async function takeOut(core: Core, on: OnDesk, store: OnDesk['store']): Promise<void> {
  const lesson = on.path === undefined ? on.lesson : `new:${core.newName()}`
  if (lesson !== on.lesson) await move(core, on, lesson, {})
  update(core, lesson, { store }, 'path', 'base', 'trouble', 'choice', 'wanted')
  core.writer.soon()
  await core.writer.flush()
}

async function move(core: Core, on: OnDesk, lesson: string, change: Partial<OnDesk>): Promise<void> {
  const before = core.seat
  core.seat = await sit(core, lesson)
  const turn = ((await core.drafts.get(lesson).catch(() => undefined))?.turn ?? 0) + 1
  await core.writer.flush()
  update(core, on.lesson, { lesson, turn, writes: true, ...change }, 'base', 'choice')
  core.lastSeen.set(lesson)
  core.writer.soon()
  await core.writer.flush()
  before?.leave()
  if (!core.keeps.value) return
  // The new draft is written before the old one goes: there is always one.
  if (on.path === undefined) await core.drafts.rename(on.lesson, lesson).catch(() => {})
  await core.drafts.drop(on.lesson).catch(() => {})
}
