import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { openPdf, pageTexts } from '../publish/pdf-reading.ts'
import { openDesk, troubleOf, useDeskBrowser } from './open-desk.ts'
import { type ServedDesk, serveDesk } from './served-desk.ts'

const browser = useDeskBrowser()
const button = (page: Page, words: string) => page.locator(`::-p-aria([name="${words}"][role="button"])`)
const tab = (page: Page, words: string) => page.locator(`::-p-aria([name="${words}"][role="tab"])`)

/** The words of the handout on the desk. */
const handout = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      document.querySelector<HTMLIFrameElement>('.looking-frame')?.contentDocument?.body?.textContent ?? '',
  )
/** Looked for now and then: a page that nobody looks at draws no frames to look in. */
const soon = { timeout: 100_000, polling: 200 } as const
const until = (page: Page, words: string): Promise<unknown> =>
  page.waitForFunction(
    (wanted) =>
      document
        .querySelector<HTMLIFrameElement>('.looking-frame')
        ?.contentDocument?.body?.textContent?.replace(/\s+/g, ' ')
        .includes(wanted),
    soon,
    words,
  )

/** Until something is so on the page. */
const when = (page: Page, is: () => unknown): Promise<unknown> => page.waitForFunction(is, soon)

/** Selects the line of the editor that says something. */
async function selectLine(page: Page, words: string): Promise<void> {
  await page.locator('.cm-content').click()
  await page.evaluate((wanted) => {
    const line = [...document.querySelectorAll('.cm-line')].find((one) => one.textContent === wanted)
    if (!line) throw new Error(`The editor does not show ${wanted}`)
    getSelection()?.selectAllChildren(line)
  }, words)
}

// Each part goes on where the one before left off, and a busy machine takes its time for each.
vi.setConfig({ testTimeout: 200_000 })

describe('a first lesson, from nothing to paper', () => {
  let served: ServedDesk
  let page: Page
  let downloads: string
  beforeAll(async () => {
    served = await serveDesk()
    downloads = await mkdtemp(join(tmpdir(), 'downloads-'))
    page = await openDesk(await browser(), { address: served.address })
    page.setDefaultTimeout(100_000)
    const session = await page.createCDPSession()
    await session.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: downloads })
  })
  afterAll(async () => {
    await served.end()
    await rm(downloads, { recursive: true, force: true })
  })

  test('a fold is chosen, and the handout of a card lies on the desk', async () => {
    await page.locator('.start-unit select').fill('in')
    await button(page, 'Bridge').click()
    await until(page, '8 1/2 × 5 in')
    expect(troubleOf(page)).toEqual([])
  })

  test('another size, and every number follows', async () => {
    const size = page.locator('::-p-aria([name="Size of the card, shut"])')
    await size.click()
    await page.keyboard.type('6 x 6 in')
    await page.keyboard.press('Enter')
    await until(page, '7 1/2 × 6 in')
    expect(await handout(page)).not.toContain('8 1/2')
    await page.locator('::-p-aria([name="Unit of all measures"])').fill('mm')
    await until(page, '190 × 152 mm')
    await button(page, '(back to its own size)').click()
    await page.locator('::-p-aria([name="Unit of all measures"])').fill('in')
    await until(page, '8 1/2 × 5 in')
  })

  test('what is broken is told where it stands, and its cure is one key away', async () => {
    await selectLine(page, 'closed: 7 x 5 in')
    await page.keyboard.type('closd: 7 x 5 in')
    await when(page, () => document.querySelector('.writing-list-head')?.textContent?.includes('wrong'))
    // The first is that there is no size; the second, why.
    await page.keyboard.press('F8')
    await page.keyboard.press('F8')
    await page.keyboard.down('Control')
    await page.keyboard.press('.')
    await page.keyboard.up('Control')
    await when(page, () => document.querySelector('.cm-content')?.textContent?.includes('closed: 7 x 5 in'))
    await when(page, () => !document.querySelector('.writing-list-head')?.textContent?.includes('wrong'))
  })

  test('it is saved in the folder, under a name of its own', async () => {
    await button(page, 'Save').click()
    await when(page, () => document.querySelector('.keep-done')?.textContent?.startsWith('Saved'))
    const [file = ''] = await readdir(served.folder)
    expect(file).toBe('bridge.md')
    expect(await readFile(join(served.folder, file), 'utf8')).toContain('closed: 7 x 5 in')
  })

  test('it is printed as a PDF', async () => {
    await button(page, 'Print and save as …').click()
    await page.locator('.dialog-more').click()
    const path = join(downloads, 'bridge.pdf')
    await expect.poll(() => readdir(downloads), { timeout: 100_000 }).toContain('bridge.pdf')
    const texts = await pageTexts(await openPdf(await readFile(path)))
    expect(texts.length).toBeGreaterThan(1)
    expect(texts.join(' ')).toContain('8 1/2 × 5 in')
    await page.keyboard.press('Escape')
    expect(troubleOf(page)).toEqual([])
  })

  test('the class of it is worked out, with the solver in the page', async () => {
    await tab(page, 'The class').click()
    await button(page, 'Cutting the paper').click()
    await when(page, () =>
      document
        .querySelector<HTMLIFrameElement>('.page-frame')
        ?.contentDocument?.body?.textContent?.includes('is it the fewest'),
    )
    expect(troubleOf(page)).toEqual([])
  })
})
