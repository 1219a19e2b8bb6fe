import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { policyOf } from '../../src/desk/server/page.ts'
import { type OpenDesk, openDesk as openServer } from '../../src/desk/server/serve.ts'
import { deskFile, openDesk, useDeskBrowser } from './open-desk.ts'

const browser = useDeskBrowser()
const slow = 180_000

/** What stands in the editor, and in the line that says where it is kept. */
const words = (page: Page): Promise<string> =>
  page.evaluate("document.querySelector('.cm-content')?.innerText ?? ''") as Promise<string>
const line = (page: Page): Promise<string> =>
  page.evaluate("document.querySelector('.keep-line [role=status]')?.innerText ?? ''") as Promise<string>

const until = async (page: Page, code: string): Promise<void> => {
  await page.waitForFunction(code, { timeout: 60_000, polling: 100 })
}
const untilLine = (page: Page, part: string): Promise<void> =>
  until(
    page,
    `document.querySelector('.keep-line [role=status]')?.innerText.includes(${JSON.stringify(part)})`,
  )
const untilWords = (page: Page, part: string): Promise<void> =>
  until(page, `document.querySelector('.cm-content')?.innerText.includes(${JSON.stringify(part)})`)

/** Waits until the browser's own database has a draft with these words. */
const untilKept = (page: Page, part: string): Promise<void> =>
  until(
    page,
    `new Promise((resolve) => {
      const opening = indexedDB.open('foldlore desk')
      opening.onsuccess = () => {
        const all = opening.result.transaction('drafts').objectStore('drafts').getAll()
        all.onsuccess = () => {
          opening.result.close()
          resolve(all.result.some((draft) => draft.text.includes(${JSON.stringify(part)})))
        }
      }
    })`,
  )

/** Presses a button by its words. */
async function press(page: Page, name: string): Promise<void> {
  const button = await page.waitForSelector(`aria/${name}[role="button"]`, { timeout: 60_000 })
  await button?.click()
}

/** Writes at the very beginning of the lesson. */
async function write(page: Page, text: string): Promise<void> {
  await page.bringToFront()
  await page.focus('.cm-content')
  await page.keyboard.down('Control')
  await page.keyboard.press('Home')
  await page.keyboard.up('Control')
  await page.keyboard.type(text)
}

async function chord(page: Page, key: 's' | 'z'): Promise<void> {
  await page.keyboard.down('Control')
  await page.keyboard.press(key)
  await page.keyboard.up('Control')
}

describe('the page from a file', () => {
  it(
    'left in mid-word comes back with the word and with undo',
    async () => {
      const page = await openDesk(await browser())
      await press(page, 'Ferry day')
      await untilWords(page, 'Ferry day')
      expect(await line(page)).toBe('Kept in this browser, not saved as a file yet')
      await write(page, 'half a wor')
      await page.close()
      const again = await openDesk(await browser())
      await untilWords(again, 'half a wor')
      await again.focus('.cm-content')
      await chord(again, 'z')
      await until(again, "!document.querySelector('.cm-content').innerText.includes('half a wor')")
      expect(await words(again)).toContain('Ferry day')
      await again.close()
    },
    slow,
  )

  it(
    'comes back after it has crashed',
    async () => {
      const page = await openDesk(await browser())
      await untilWords(page, 'Ferry day')
      await write(page, 'before the crash ')
      await untilKept(page, 'before the crash ')
      await page.goto('chrome://crash', { timeout: 3000 }).catch(() => {})
      const again = await openDesk(await browser())
      await untilWords(again, 'before the crash')
      await again.close()
      await page.close().catch(() => {})
    },
    slow,
  )
})

describe('the page from the local server', () => {
  let folder: string
  let server: OpenDesk
  const file = (name = 'pier.md'): string => join(folder, name)
  const serve = async (port?: number): Promise<OpenDesk> => {
    const html = readFileSync(await deskFile(), 'utf8')
    const page = async () => ({ html, policy: policyOf(html) })
    return openServer({ folder, page, version: '1.2.3', ...(port !== undefined && { port }) })
  }
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'foldlore-desk-keeping-'))
    server = await serve()
  }, slow)
  afterAll(async () => {
    await server.close()
    rmSync(folder, { recursive: true, force: true })
  })

  const lesson = '---\ntitle: The pier\n---\n\n```card\nfold: side\nclosed: A6\n```\n\nWords of the pier.\n'
  /** A lesson, opened by hand: from the empty desk, or from beside the one that was there last. */
  const openLesson = async (name: string): Promise<Page> => {
    const page = await openDesk(await browser(), { address: server.address })
    const other = await page.waitForSelector(
      '::-p-xpath(//button[contains(., "Open a lesson") or contains(., "Another lesson")])',
      { timeout: 60_000 },
    )
    await other?.click()
    const choice = await page.waitForSelector(`::-p-xpath(//dialog//button[contains(., "${name}")])`, {
      timeout: 60_000,
    })
    await choice?.click()
    await untilWords(page, 'The pier')
    return page
  }

  it(
    'saves, takes over what another program writes, and shows both when both have written',
    async () => {
      writeFileSync(file(), lesson)
      const page = await openLesson('pier.md')
      await untilLine(page, 'Saved in pier.md')
      await page.focus('.cm-content')
      await page.keyboard.down('Control')
      await page.keyboard.press('End')
      await page.keyboard.up('Control')
      await page.keyboard.type('More.')
      await untilLine(page, 'not saved in the folder yet')
      await chord(page, 's')
      await untilLine(page, 'Saved in pier.md')
      expect(readFileSync(file(), 'utf8')).toBe(`${lesson}More.`)
      // Nothing is unsaved: the other text is shown.
      writeFileSync(file(), lesson.replace('Words', 'Other words'))
      await untilWords(page, 'Other words of the pier')
      await untilLine(page, 'Saved in pier.md')
      // Both have written.
      await page.keyboard.type('Mine.')
      await untilLine(page, 'not saved')
      writeFileSync(file(), lesson.replace('Words', 'Their words'))
      await page.waitForSelector('dialog.both[open]', { timeout: 60_000 })
      await chord(page, 's')
      expect(readFileSync(file(), 'utf8')).toContain('Their words')
      const keep = await page.waitForSelector('::-p-xpath(//button[contains(., "Keep both")])')
      await keep?.click()
      await untilLine(page, 'Saved in pier-2.md')
      expect(readFileSync(file(), 'utf8')).toContain('Their words')
      expect(readFileSync(file('pier-2.md'), 'utf8')).toContain('Mine.')
      await page.close()
    },
    slow,
  )

  it(
    'says so when the server is stopped, and saves when it is started again',
    async () => {
      writeFileSync(file('quay.md'), lesson)
      const page = await openLesson('quay.md')
      await untilLine(page, 'Saved in quay.md')
      await page.focus('.cm-content')
      await page.keyboard.down('Control')
      await page.keyboard.press('End')
      await page.keyboard.up('Control')
      await page.keyboard.type('While it was stopped.')
      const { port } = server
      await server.close()
      await chord(page, 's')
      await untilLine(page, 'The folder cannot be reached; everything is kept here')
      expect(readFileSync(file('quay.md'), 'utf8')).toBe(lesson)
      server = await serve(port)
      // The address of the new start, in the same tab.
      await page.goto(server.address)
      await untilWords(page, 'While it was stopped.')
      await untilLine(page, 'not saved in the folder yet')
      await page.focus('.cm-content')
      await chord(page, 's')
      await untilLine(page, 'Saved in quay.md')
      expect(readFileSync(file('quay.md'), 'utf8')).toBe(`${lesson}While it was stopped.`)
      await page.close()
    },
    slow,
  )

  it(
    'in two tabs is written in one, and the other takes over with the last word',
    async () => {
      writeFileSync(file('mole.md'), lesson)
      const first = await openLesson('mole.md')
      const second = await openLesson('mole.md')
      await untilLine(second, 'Open in another tab')
      await write(first, 'Word')
      await second.bringToFront()
      await press(second, 'Write here instead')
      await untilWords(second, 'Word')
      await untilLine(second, 'not saved in the folder yet')
      await untilLine(first, 'Open in another tab')
      await second.focus('.cm-content')
      await chord(second, 's')
      await untilLine(second, 'Saved in mole.md')
      expect(readFileSync(file('mole.md'), 'utf8')).toBe(`Word${lesson}`)
      await first.close()
      await second.close()
    },
    slow,
  )
})
