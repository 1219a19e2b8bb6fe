import { type Core, update } from './core.ts'
import type { Chosen, Outcome } from './keeper.ts'
import { nameOf, numbered, pathFor } from './paths.ts'
import { saveNewAs, saveNow } from './saving.ts'

/** Goes on with what the teacher has chosen. The other text stays among the earlier ones. */
export async function choose(core: Core, chosen: Chosen): Promise<Outcome> {
  const on = core.now.value
  const choice = on?.choice
  if (!on || !choice) return 'failed'
  const { theirs } = choice
  const base = { version: theirs.version, text: theirs.text }
  if (chosen === 'both') return keepBoth(core, on.path ?? on.name)
  await core.drafts
    .keepEarlier(on.lesson, chosen === 'mine' ? theirs.text : on.text, 'aside', core.clock.now())
    .catch(() => {})
  if (chosen === 'theirs') {
    update(core, on.lesson, { text: theirs.text, base, sent: [] }, 'choice')
    core.page.replace(theirs.text)
    core.writer.soon()
    await core.writer.flush()
    return 'saved'
  }
  update(core, on.lesson, { base, sent: [] }, 'choice')
  core.writer.soon()
  await core.writer.flush()
  // Saving was what the teacher wanted when the two texts met.
  return choice.why === 'save' ? saveNow(core) : 'kept'
}

/** The one on the desk becomes a file of its own, beside the other one. */
async function keepBoth(core: Core, path: string): Promise<Outcome> {
  const folder = path.slice(0, path.lastIndexOf('/') + 1)
  for (let number = 2; number < 100; number++) {
    const copy = folder + pathFor(numbered(nameOf(path), number))
    const outcome = await saveNewAs(core, copy)
    if (outcome === 'saved') core.page.say(`Yours is now ${copy}. The other one stays in ${path}.`)
    if (outcome !== 'taken') return outcome
  }
  return 'taken'
}
