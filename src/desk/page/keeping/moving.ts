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
  const before = core.seat
  core.seat = await sit(core, lesson)
  const turn = ((await core.drafts.get(lesson).catch(() => undefined))?.turn ?? 0) + 1
  await core.writer.flush()
  update(core, on.lesson, { lesson, path, name: nameOf(path), turn, writes: true }, 'base', 'choice')
  core.lastSeen.set(lesson)
  core.writer.soon()
  await core.writer.flush()
  before?.leave()
  // The new draft is written before the old one goes: there is always one.
  if (core.keeps.value) {
    if (on.path === undefined) await core.drafts.rename(on.lesson, lesson).catch(() => {})
    await core.drafts.drop(on.lesson).catch(() => {})
  }
  return lesson
}
