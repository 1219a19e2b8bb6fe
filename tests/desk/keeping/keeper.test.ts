import { randomUUID } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { browser, fakeFolder, fakeTabs, settle } from './world.ts'

const path = 'harbour-lights.md'

/** A browser with a folder that has one lesson. */
const start = async (text = 'one') => {
  const world = await browser(randomUUID())
  world.folder.files.set(path, text)
  return world
}

/** The tab is gone without a word: its locks are let go of, and nothing more is written. */
const gone = () => ({ tabs: fakeTabs() })

describe('a lesson on the desk', () => {
  it('is kept a moment after each change, and saved when one wishes', async () => {
    const { folder, clock, drafts, page } = await start()
    const { editor, keeper } = page()
    expect(await keeper.open(path)).toBe(true)
    expect(keeper.state.value).toMatchObject({ phase: 'saved', words: `Saved in ${path}` })
    editor.type('one two')
    expect(keeper.state.value).toMatchObject({
      phase: 'kept',
      words: 'Kept in this browser, not saved in the folder yet',
    })
    await clock.pass(150)
    expect((await drafts.all())[0]).toMatchObject({ text: 'one two', unsaved: true })
    expect(folder.files.get(path)).toBe('one')
    expect(await keeper.save()).toBe('saved')
    expect(folder.files.get(path)).toBe('one two')
    expect(keeper.state.value.phase).toBe('saved')
    expect((await drafts.all())[0]).toMatchObject({ text: 'one two', unsaved: false })
  })

  it('comes back with its text and undo after the page is gone', async () => {
    const { clock, page } = await start()
    const first = page()
    await first.keeper.open(path)
    first.editor.type('one t')
    first.editor.type('one tw')
    await clock.pass(150)
    const second = page(first, gone())
    expect(await second.keeper.resume()).toBe(true)
    expect(second.editor.value).toBe('one tw')
    expect(second.editor.undo).toEqual(['one', 'one t'])
    expect(second.keeper.state.value.phase).toBe('kept')
  })

  it('that is new gets a free file name of its own', async () => {
    const { folder, page } = await start()
    const { keeper, editor } = page()
    await keeper.begin('a new one', 'harbour lights')
    expect(keeper.state.value.path).toBeUndefined()
    expect(await keeper.save()).toBe('saved')
    expect(folder.files.get(path)).toBe('one')
    expect(folder.files.get('harbour-lights-2.md')).toBe('a new one')
    editor.type('a newer one')
    expect(await keeper.save()).toBe('saved')
    expect(folder.files.get('harbour-lights-2.md')).toBe('a newer one')
  })

  it('is never saved over another file', async () => {
    const { folder, page } = await start()
    const { keeper } = page()
    await keeper.begin('a new one', 'pier')
    expect(await keeper.saveAs('harbour lights')).toBe('taken')
    expect(folder.files.get(path)).toBe('one')
    expect(keeper.state.value).toMatchObject({ phase: 'kept', name: 'pier' })
  })

  it('has one draft, also when it comes into a folder, and keeps its earlier texts', async () => {
    const { drafts, clock, page } = await start()
    const { keeper, editor } = page()
    await keeper.begin('first words', 'pier')
    editor.type('other words')
    await clock.pass(150)
    await keeper.save()
    expect((await drafts.all()).map((draft) => draft.path)).toEqual(['pier.md'])
    expect((await keeper.earlier()).map(({ text }) => text)).toEqual(['other words', 'first words'])
  })
})

describe('a file that another program changes', () => {
  it('is taken over when nothing is unsaved, and undo brings back how it was', async () => {
    const { folder, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    folder.write(path, 'other')
    await settle()
    expect(editor.value).toBe('other')
    expect(editor.undo).toEqual(['one'])
    expect(keeper.state.value.phase).toBe('saved')
    expect(editor.said.join()).toContain('Another program')
  })

  it('is shown beside what is unsaved, and nothing is overwritten before the choice', async () => {
    const { folder, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    editor.type('mine')
    folder.write(path, 'theirs')
    await settle()
    expect(keeper.state.value).toMatchObject({
      phase: 'choose',
      choice: { why: 'changed', mine: 'mine', theirs: { text: 'theirs' } },
    })
    expect(await keeper.save()).toBe('choose')
    expect([folder.files.get(path), editor.value]).toEqual(['theirs', 'mine'])
  })

  it.each(['mine', 'theirs', 'both'] as const)('loses neither text when one chooses %s', async (chosen) => {
    const { folder, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    editor.type('mine')
    // Without a word: it is noticed when one saves.
    folder.files.set(path, 'theirs')
    expect(await keeper.save()).toBe('choose')
    await keeper.choose(chosen)
    expect(keeper.state.value.phase).toBe('saved')
    const texts = [...folder.files.values(), ...(await keeper.earlier()).map(({ text }) => text)]
    expect(texts).toContain('mine')
    expect(texts).toContain('theirs')
    expect(folder.files.get(path)).toBe(chosen === 'mine' ? 'mine' : 'theirs')
    expect(editor.value).toBe(chosen === 'theirs' ? 'theirs' : 'mine')
    if (chosen === 'both') expect(keeper.state.value.path).toBe('harbour-lights-2.md')
  })

  it('while the page was gone meets the draft as a choice', async () => {
    const { folder, clock, page } = await start()
    const first = page()
    await first.keeper.open(path)
    first.editor.type('mine')
    await clock.pass(150)
    folder.files.set(path, 'theirs')
    const second = page(first, gone())
    await second.keeper.resume()
    expect(second.keeper.state.value.choice).toMatchObject({ why: 'draft', mine: 'mine' })
    expect(second.editor.value).toBe('mine')
  })

  it('while the page was gone with nothing unsaved is shown, and undo brings back how it was left', async () => {
    const { folder, clock, page } = await start()
    const first = page()
    await first.keeper.open(path)
    await clock.pass(150)
    folder.files.set(path, 'theirs')
    const second = page(first, gone())
    await second.keeper.resume()
    expect([second.editor.value, second.editor.undo]).toEqual(['theirs', ['one']])
    expect(second.keeper.state.value.phase).toBe('saved')
  })

  it('and is taken away stays on the desk, and saving puts it there again', async () => {
    const { folder, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    folder.files.delete(path)
    await keeper.lookAgain()
    expect(editor.value).toBe('one')
    expect(keeper.state.value.phase).toBe('kept')
    expect(await keeper.save()).toBe('saved')
    expect(folder.files.get(path)).toBe('one')
  })
})

describe('a folder that does not answer', () => {
  it('gets what was to be saved, with what was written since, when it answers again', async () => {
    const { folder, clock, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    editor.type('one two')
    folder.mood = 'away'
    expect(await keeper.save()).toBe('failed')
    expect(keeper.state.value).toMatchObject({
      phase: 'away',
      words: 'The folder cannot be reached; everything is kept here',
    })
    editor.type('one two three')
    await clock.pass(60_000)
    expect(keeper.state.value.phase).toBe('away')
    folder.mood = 'well'
    await clock.pass(40_000)
    expect(folder.files.get(path)).toBe('one two three')
    expect(keeper.state.value.phase).toBe('saved')
  })

  it('does not hold up the desk when it is silent', async () => {
    const { folder, clock, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    editor.type('one two')
    folder.mood = 'silent'
    const saving = keeper.save()
    await clock.pass(21_000)
    expect(await saving).toBe('failed')
    expect(keeper.state.value.phase).toBe('away')
  })

  it('after it has written is not taken for another program', async () => {
    const { folder, clock, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    editor.type('one two')
    folder.mood = 'breaks after writing'
    expect(await keeper.save()).toBe('failed')
    expect(folder.files.get(path)).toBe('one two')
    editor.type('one two three')
    folder.mood = 'well'
    await clock.pass(3000)
    expect(folder.files.get(path)).toBe('one two three')
    expect(keeper.state.value.phase).toBe('saved')
  })

  it('after it has written, and the page is gone too, is not taken for another program', async () => {
    const { folder, clock, page } = await start()
    const first = page()
    await first.keeper.open(path)
    first.editor.type('one two')
    folder.mood = 'breaks after writing'
    await first.keeper.save()
    first.editor.type('one two three')
    await clock.pass(150)
    folder.mood = 'well'
    const second = page(first, gone())
    await second.keeper.resume()
    expect(second.keeper.state.value.phase).toBe('kept')
    expect(second.editor.value).toBe('one two three')
    expect(await second.keeper.save()).toBe('saved')
  })

  it('lets a draft be opened, and says so', async () => {
    const { folder, clock, page } = await start()
    const first = page()
    await first.keeper.open(path)
    first.editor.type('mine')
    await clock.pass(150)
    folder.mood = 'away'
    const second = page(first, gone())
    expect(await second.keeper.resume()).toBe(true)
    expect(second.editor.value).toBe('mine')
    expect(second.keeper.state.value.phase).toBe('away')
    folder.mood = 'well'
    await clock.pass(5000)
    expect(second.keeper.state.value.phase).toBe('kept')
  })

  it('leaves the desk as it is when a lesson cannot be opened', async () => {
    const { page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    expect(await keeper.open('nowhere.md')).toBe(false)
    expect(editor.value).toBe('one')
    expect(editor.said.join()).toContain('nowhere.md cannot be opened: there is no such file.')
  })

  it('that is full is told, and the words stay', async () => {
    const { folder, page } = await start()
    const { keeper, editor } = page()
    await keeper.open(path)
    editor.type('mine')
    folder.mood = 'full'
    expect(await keeper.save()).toBe('failed')
    expect(keeper.state.value.words).toBe('Not saved: there is no room in the folder')
    expect(editor.value).toBe('mine')
  })
})

describe('a browser that keeps nothing', () => {
  it('lets one go on writing and says it once', async () => {
    const { folder, drafts, clock, page } = await start()
    const full = { ...drafts, put: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) }
    const { keeper, editor } = page(undefined, { drafts: full })
    await keeper.open(path)
    for (const text of ['a', 'ab', 'abc']) {
      editor.type(text)
      await clock.pass(200)
    }
    expect(editor.value).toBe('abc')
    expect(editor.said.filter((words) => words.includes('keeps nothing'))).toHaveLength(1)
    expect(keeper.state.value.words).toContain('keeps nothing by itself')
    expect(await keeper.save()).toBe('saved')
    expect(folder.files.get(path)).toBe('abc')
  })
})

describe('two tabs on one lesson', () => {
  it('write in one of them; the other one sees what is written', async () => {
    const { clock, page } = await start()
    const first = page()
    const second = page()
    await first.keeper.open(path)
    await second.keeper.open(path)
    expect(second.keeper.state.value).toMatchObject({ phase: 'looking', unsaved: false })
    first.editor.type('one two')
    await clock.pass(150)
    expect(second.editor.value).toBe('one two')
    second.editor.type('no')
    expect(second.editor.value).toBe('one two')
    expect(await second.keeper.save()).toBe('looking')
  })

  it('change places, and what was not sent yet arrives', async () => {
    const { folder, clock, page } = await start()
    const first = page()
    const second = page()
    await first.keeper.open(path)
    await second.keeper.open(path)
    first.editor.type('one, unsent')
    await second.keeper.takeOver()
    expect(second.editor.value).toBe('one, unsent')
    expect(second.editor.undo).toEqual(['one'])
    expect(first.keeper.state.value.phase).toBe('looking')
    expect(second.keeper.state.value.phase).toBe('kept')
    second.editor.type('one, unsent, more')
    expect(await second.keeper.save()).toBe('saved')
    expect(folder.files.get(path)).toBe('one, unsent, more')
    await clock.pass(150)
    await first.keeper.takeOver()
    expect(first.editor.value).toBe('one, unsent, more')
    expect(first.keeper.state.value.phase).toBe('saved')
  })

  it('of which one sleeps lose nothing: its last words become an earlier text', async () => {
    const { tabs, drafts, clock, page } = await start()
    const first = page()
    const second = page()
    await first.keeper.open(path)
    await second.keeper.open(path)
    first.editor.type('kept')
    await clock.pass(150)
    const { lesson } = (await drafts.all())[0] ?? { lesson: '' }
    tabs.sleep(lesson)
    await second.keeper.takeOver()
    expect(second.editor.value).toBe('kept')
    second.editor.type('kept, and more')
    // The first one wakes up and writes before it hears that it has lost its place.
    first.editor.type('kept, too late')
    await clock.pass(150)
    expect((await drafts.get(lesson))?.text).toBe('kept, and more')
    expect((await drafts.earlier(lesson)).map(({ text }) => text)).toContain('kept, too late')
    expect(first.keeper.state.value.phase).toBe('looking')
  })

  it('of which the writing one is closed: the other one goes on', async () => {
    const { clock, page } = await start()
    const first = page()
    const second = page()
    await first.keeper.open(path)
    await second.keeper.open(path)
    first.editor.type('one two')
    await clock.pass(150)
    await first.keeper.close()
    await settle()
    expect(second.keeper.state.value.phase).toBe('kept')
    expect(second.editor.value).toBe('one two')
  })

  it('do not both come back to one lesson by themselves', async () => {
    const { page } = await start()
    const first = page()
    await first.keeper.open(path)
    await first.keeper.flush()
    const second = page()
    expect(await second.keeper.resume()).toBe(false)
    expect(second.keeper.state.value.phase).toBe('empty')
  })
})

describe('another folder', () => {
  it('takes a lesson that is in none, and leaves one where it is that is in one', async () => {
    const { folder, page } = await start()
    const other = fakeFolder('other lessons')
    const { keeper, editor } = page()
    await keeper.open(path)
    editor.type('one two')
    await keeper.use(other)
    expect(await keeper.save()).toBe('saved')
    expect(folder.files.get(path)).toBe('one two')
    await keeper.begin('new', 'pier')
    expect(await keeper.save()).toBe('saved')
    expect([...other.files]).toEqual([['pier.md', 'new']])
  })

  it('is asked for again when a draft of it is left, and then gets it', async () => {
    const { folder, clock, page } = await start()
    const first = page()
    await first.keeper.open(path)
    first.editor.type('one two')
    await clock.pass(150)
    await first.keeper.close()
    const second = page()
    await second.keeper.use(fakeFolder('other lessons'))
    const [left] = await second.keeper.unsaved()
    if (!left) throw new Error('Nothing is left')
    await second.keeper.openLeft(left)
    expect(second.keeper.state.value).toMatchObject({ phase: 'away', path })
    await clock.pass(60_000)
    await second.keeper.use(folder)
    expect(second.keeper.state.value).toMatchObject({ phase: 'kept', path })
    expect(await second.keeper.save()).toBe('saved')
    expect(folder.files.get(path)).toBe('one two')
  })

  it('can take a draft of a folder that is gone, as a new file', async () => {
    const { clock, page } = await start()
    const first = page()
    await first.keeper.open(path)
    first.editor.type('one two')
    await clock.pass(150)
    await first.keeper.close()
    const other = fakeFolder('other lessons')
    const second = page()
    await second.keeper.use(fakeFolder('a third one'))
    for (const left of await second.keeper.unsaved()) await second.keeper.openLeft(left)
    await second.keeper.use(other)
    expect(second.keeper.state.value.phase).toBe('kept')
    expect(await second.keeper.save()).toBe('saved')
    expect([...other.files]).toEqual([[path, 'one two']])
    expect(await second.keeper.unsaved()).toEqual([])
  })

  it('lists lessons that were left with words in no folder, and opens them', async () => {
    const { page } = await start()
    const { keeper, editor } = page()
    await keeper.begin('nobody wrote in this one', 'quay')
    await keeper.begin('begun', 'pier')
    editor.type('left')
    await keeper.open(path)
    const left = await keeper.unsaved()
    expect(left).toMatchObject([{ name: 'pier' }])
    for (const one of left) expect(await keeper.openLeft(one)).toBe(true)
    expect(editor.value).toBe('left')
    await keeper.close()
    expect(editor.value).toBeUndefined()
  })
})
