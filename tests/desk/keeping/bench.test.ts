import { readFileSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'puppeteer-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startDeskBrowser } from '../open-desk.ts'
import { ask, openBench, serveBench, until } from './open-bench.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

let bench: Awaited<ReturnType<typeof serveBench>>
let profile: string
let browser: Browser

beforeAll(async () => {
  bench = await serveBench()
  profile = await mkdtemp(join(tmpdir(), 'foldlore-keeping-'))
  browser = await startDeskBrowser({ profile })
})
afterAll(async () => {
  await browser.close()
  await bench.close()
  await rm(profile, { recursive: true, force: true, maxRetries: 5 })
})

const text = (page: Page): Promise<string> => ask(page, 'view.state.doc.toString()')
const phase = (page: Page): Promise<string> => ask(page, 'keeper.state.value.phase')

let number = 0
/** A file of its own for each test, open in a tab. */
async function open(content = 'one\n'): Promise<{ page: Page; path: string }> {
  const path = `lesson-${++number}.md`
  const page = await openBench(browser, bench.address)
  await ask(page, `write('${path}', ${JSON.stringify(content)})`)
  await ask(page, `keeper.open('${path}')`)
  await ask(page, 'view.focus()')
  await page.bringToFront()
  return { page, path }
}

const comeBack = async (): Promise<Page> => openBench(browser, bench.address)

describe('a page that is left in mid-word', () => {
  it('comes back with text, selection and undo', async () => {
    const { page } = await open()
    await page.keyboard.press('End')
    await page.keyboard.type(' two')
    await page.waitForFunction('true')
    await new Promise((resolve) => setTimeout(resolve, 700))
    await page.keyboard.type(' thr')
    // At once: nothing waits for the draft.
    await page.close({ runBeforeUnload: false })
    const again = await comeBack()
    expect(await ask(again, 'keeper.resume()')).toBe(true)
    expect(await text(again)).toBe('one two thr\n')
    expect(await ask(again, 'view.state.selection.main.head')).toBe(11)
    await ask(again, 'undo()')
    expect(await text(again)).toBe('one two\n')
    await ask(again, 'undo()')
    expect(await text(again)).toBe('one\n')
    await again.close()
  })

  it('by a reload goes on in the same lesson, and writes', async () => {
    const { page } = await open()
    await page.keyboard.type('x')
    await page.reload()
    await page.waitForFunction('globalThis.ready')
    expect(await ask(page, 'keeper.resume()')).toBe(true)
    expect(await text(page)).toBe('xone\n')
    expect(await phase(page)).toBe('kept')
    await page.close()
  })
})

describe('a page that crashes', () => {
  it('comes back with all but the last moment', async () => {
    const { page } = await open()
    await page.keyboard.type('before the crash ')
    await new Promise((resolve) => setTimeout(resolve, 400))
    // The renderer is gone: no event of leaving is fired.
    await page.goto('chrome://crash', { timeout: 1500 }).catch(() => {})
    const again = await comeBack()
    await ask(again, 'keeper.resume()')
    expect(await text(again)).toBe('before the crash one\n')
    await ask(again, 'undo()')
    expect(await text(again)).toBe('one\n')
    await again.close()
    await page.close().catch(() => {})
  })

  it('with the whole browser, killed, comes back too', async () => {
    const { page, path } = await open()
    await page.keyboard.type('before the kill ')
    await new Promise((resolve) => setTimeout(resolve, 400))
    const process = browser.process()
    const gone = new Promise((resolve) => process?.once('exit', resolve))
    process?.kill('SIGKILL')
    await gone
    browser = await startDeskBrowser({ profile })
    const again = await comeBack()
    await ask(again, `keeper.open('${path}')`)
    expect(await text(again)).toBe('before the kill one\n')
    expect(await phase(again)).toBe('kept')
    await again.close()
  })
})

describe('a file in a folder', () => {
  it('is saved whole, with the ends of lines that it had', async () => {
    const { page, path } = await open('one\r\ntwo\r\n')
    await page.keyboard.type('x')
    expect(await ask(page, 'keeper.save()')).toBe('saved')
    expect(await ask(page, `read('${path}')`)).toBe('xone\r\ntwo\r\n')
    expect(await phase(page)).toBe('saved')
    await page.close()
  })

  it('that another program changes is taken over, and undo brings back how it was', async () => {
    const { page, path } = await open()
    await ask(page, `write('${path}', 'changed elsewhere\\n')`)
    await ask(page, "dispatchEvent(new Event('focus'))")
    await until(page, "view.state.doc.toString() === 'changed elsewhere\\n'")
    expect(await phase(page)).toBe('saved')
    await ask(page, 'undo()')
    expect(await text(page)).toBe('one\n')
    await page.close()
  })

  it('that another program changes under unsaved words is shown beside them', async () => {
    const { page, path } = await open()
    await page.keyboard.type('mine ')
    await ask(page, `write('${path}', 'theirs\\n')`)
    expect(await ask(page, 'keeper.save()')).toBe('choose')
    expect(await ask(page, `read('${path}')`)).toBe('theirs\n')
    await page.waitForSelector('dialog.both[open]')
    const rows = await ask(
      page,
      "[...document.querySelectorAll('.both-table tbody tr')].map((row) => row.innerText)",
    )
    expect(JSON.stringify(rows)).toContain('mine one')
    expect(JSON.stringify(rows)).toContain('theirs')
    await page.evaluate(axe)
    for (const value of ['light', 'dark']) {
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }])
      const found =
        "axe.run('dialog', { resultTypes: ['violations'] }).then((told) => told.violations.map((one) => one.id))"
      expect(await ask(page, found)).toEqual([])
    }
    // By keyboard alone: the texts, then the ways to go on.
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    expect(await ask(page, 'document.activeElement.innerText')).toContain('Keep both')
    await page.keyboard.press('Enter')
    await until(page, "keeper.state.value.phase === 'saved'")
    expect(await ask(page, `read('${path}')`)).toBe('theirs\n')
    expect(await ask(page, `read('${path.replace('.md', '-2.md')}')`)).toBe('mine one\n')
    expect(await page.$('dialog.both')).toBeNull()
    await page.close()
  })

  it('and the folder are known again after a reload', async () => {
    const { page } = await open()
    await ask(
      page,
      'navigator.storage.getDirectory().then((folder) => rememberFolder(folder)).then(() => true)',
    )
    await page.reload()
    await page.waitForFunction('globalThis.ready')
    const id = 'lastFolder().then((last) => last.enter()).then((store) => store.id)'
    const first = await ask<string>(page, id)
    expect(first).toMatch(/^folder [\w-]{36}$/)
    expect(await ask(page, id)).toBe(first)
    await page.close()
  })

  it('is listed with its title', async () => {
    const { page, path } = await open('---\ntitle: Harbour lights\n---\n')
    const listed = await ask(page, 'keeper.store.value.list()')
    expect(listed).toContainEqual(expect.objectContaining({ path, title: 'Harbour lights', kind: 'lesson' }))
    await page.close()
  })
})

describe('two tabs on one file', () => {
  it('write in one; the other looks, follows, and takes over with what was not sent yet', async () => {
    const { page: first, path } = await open()
    const second = await openBench(browser, bench.address)
    await ask(second, `keeper.open('${path}')`)
    expect(await phase(second)).toBe('looking')
    await first.bringToFront()
    await first.keyboard.type('followed ')
    await until(second, "view.state.doc.toString() === 'followed one\\n'")
    // Typed and taken over in the same moment.
    await ask(first, "view.dispatch({ changes: { from: 0, insert: 'unsent ' } })")
    await ask(second, 'keeper.takeOver()')
    expect(await text(second)).toBe('unsent followed one\n')
    expect([await phase(first), await phase(second)]).toEqual(['looking', 'kept'])
    await ask(second, "view.dispatch({ changes: { from: 0, insert: 'second ' } })")
    expect(await ask(second, 'keeper.save()')).toBe('saved')
    expect(await ask(first, 'keeper.save()')).toBe('looking')
    await until(first, "view.state.doc.toString() === 'second unsent followed one\\n'")
    // And back again.
    await ask(first, 'keeper.takeOver()')
    expect([await phase(first), await phase(second)]).toEqual(['saved', 'looking'])
    await first.close()
    // The one that wrote is closed: the other one goes on.
    await until(second, "keeper.state.value.phase === 'saved'")
    expect(await text(second)).toBe('second unsent followed one\n')
    await second.close()
  })

  it('of which one hangs: the other one takes over from its draft', async () => {
    const { page: first, path } = await open()
    await first.keyboard.type('kept ')
    await new Promise((resolve) => setTimeout(resolve, 400))
    const second = await openBench(browser, bench.address)
    await ask(second, `keeper.open('${path}')`)
    const hanging = first
      .evaluate('(() => { const end = Date.now() + 4000; while (Date.now() < end); })()')
      .catch(() => {})
    await ask(second, 'keeper.takeOver()')
    expect(await text(second)).toBe('kept one\n')
    await ask(second, "view.dispatch({ changes: { from: 0, insert: 'more ' } })")
    expect(await ask(second, 'keeper.save()')).toBe('saved')
    await hanging
    await until(first, "keeper.state.value.phase === 'looking'")
    await until(first, "view.state.doc.toString() === 'more kept one\\n'")
    await first.close()
    await second.close()
  })
})
