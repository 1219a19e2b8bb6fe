import { plainText } from './as-written.ts'
import { type Core, catchUp, update } from './core.ts'
import type { Outcome } from './keeper.ts'
import { moveTo } from './moving.ts'
import type { OnDesk } from './on-desk.ts'
import { numbered, pathFor } from './paths.ts'
import type { Saved } from './store.ts'
import { inTime, troubleOf } from './trouble.ts'

/** Saves the lesson on the desk in its file, or, if it has none, in a new one. */
export async function saveNow(core: Core): Promise<Outcome> {
  const on = catchUp(core)
  if (!on) return 'failed'
  if (!on.writes) return looking(core)
  if (on.choice) return 'choose'
  if (on.path === undefined) return saveNew(core, on)
  const saved = await send(core, on, on.path, on.base?.version)
  if (!saved) return 'failed'
  if (!('other' in saved)) return arrived(core, on, on.path, saved.version)
  const theirs = { ...saved.other, text: plainText(saved.other.text) }
  if (theirs.text === on.text) return arrived(core, on, on.path, theirs.version)
  if (on.sent.includes(theirs.text)) {
    update(core, on.lesson, { base: { version: theirs.version, text: theirs.text } })
    return saveNow(core)
  }
  update(core, on.lesson, { choice: { why: 'save', theirs } }, 'saving', 'wanted')
  return 'choose'
}

const looking = (core: Core): Outcome => {
  core.page.say('This lesson is written in another tab. To save it here, take over the writing first.')
  return 'looking'
}

/** Under a free name like its own. */
async function saveNew(core: Core, on: OnDesk): Promise<Outcome> {
  for (let number = 1; number < 100; number++) {
    const outcome = await saveNewAs(core, pathFor(numbered(on.name, number)))
    if (outcome !== 'taken') return outcome
  }
  return 'taken'
}

/** As a new file, which is then the lesson's; never over one that is there. */
export async function saveNewAs(core: Core, path: string): Promise<Outcome> {
  const before = catchUp(core)
  if (!before) return 'failed'
  if (!before.writes) return looking(core)
  if (!(await settle(core, before, path))) return 'failed'
  const on = core.now.value
  if (!on?.writes) return 'failed'
  const saved = await send(core, on, path, undefined)
  if (!saved) return 'failed'
  const there = 'other' in saved ? plainText(saved.other.text) : undefined
  if (there !== undefined && there !== on.text && !on.sent.includes(there)) {
    update(core, on.lesson, {}, 'saving', 'wanted')
    return 'taken'
  }
  const version = 'other' in saved ? saved.other.version : saved.version
  const lesson = await moveTo(core, on, path)
  return arrived(core, { ...on, lesson, text: there ?? on.text }, path, version)
}

/** Puts the pictures of a lesson that has no file yet beside the new one. Gives whether that went well. */
async function settle(core: Core, on: OnDesk, path: string): Promise<boolean> {
  if (!core.settle || on.path !== undefined) return true
  try {
    const readdress = await core.settle(on.lesson, path, on.store)
    const now = core.now.value?.text ?? on.text
    const text = readdress(now)
    if (text === now) return true
    update(core, on.lesson, { text })
    core.page.replace(text)
    return true
  } catch (error) {
    failed(core, on, error)
    return false
  }
}

/** Sends a text on its way, having noted that it is. */
async function send(
  core: Core,
  on: OnDesk,
  path: string,
  over: string | undefined,
): Promise<Saved | undefined> {
  const sent = [...new Set([...on.sent, on.text])].slice(-4)
  update(core, on.lesson, { saving: true, sent }, 'trouble')
  core.writer.soon()
  await core.writer.flush()
  try {
    return await inTime(core.clock, on.store.save(path, on.text, over))
  } catch (error) {
    failed(core, on, error)
    return undefined
  }
}

function failed(core: Core, on: OnDesk, error: unknown): void {
  const trouble = troubleOf(error)
  update(core, on.lesson, { trouble, wanted: trouble.kind === 'away' }, 'saving')
  core.page.say(`Not saved: ${trouble.words}. Everything is kept here.`)
}

async function arrived(core: Core, on: OnDesk, path: string, version: string): Promise<Outcome> {
  update(core, on.lesson, { path, base: { version, text: on.text }, sent: [] }, 'saving', 'wanted', 'trouble')
  core.writer.soon()
  await core.writer.flush()
  await core.drafts.keepEarlier(on.lesson, on.text, 'saved', core.clock.now()).catch(() => {})
  return 'saved'
}
