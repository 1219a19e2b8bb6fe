import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openDesk, troubleOf, useDeskBrowser } from './open-desk.ts'
import { type ServedDesk, serveDesk } from './served-desk.ts'

const browser = useDeskBrowser()
const mark =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 20"><path d="M0 0h60v20H0z" fill="#8a1f6b"/></svg>'
let desk: ServedDesk
let page: Page
beforeAll(async () => {
  desk = await serveDesk()
  mkdirSync(join(desk.folder, 'sea'))
  writeFileSync(join(desk.folder, 'sea/ebbe.md'), readFileSync('lessons/deutsch/ebbe.md'))
  writeFileSync(
    join(desk.folder, 'workshop.yaml'),
    'logo: mark.svg\nname: Papiertisch\naccent: "#8a1f6b"\nfooter: Am alten Lampenhaus\n',
  )
  writeFileSync(join(desk.folder, 'mark.svg'), mark)
  page = await openDesk(await browser(), { address: desk.address })
  await page.locator('::-p-text(Open a lesson)').click()
  await page.locator('::-p-text(Ebbe)').click()
  await page.waitForSelector('.looking-row[aria-busy="false"]')
}, 240_000)
afterAll(() => desk.end())

/** What is seen in the frame of a view. */
const seen = (frame: string, selector: string): Promise<string[]> =>
  page.evaluate(
    (of, wanted) => {
      const doc = document.querySelector<HTMLIFrameElement>(of)?.contentDocument
      return [...(doc?.querySelectorAll(wanted) ?? [])].map(({ textContent }) => textContent ?? '')
    },
    frame,
    selector,
  )
const foot = (): Promise<string> =>
  page.$eval('.looking-foot-line', (line) =>
    [...line.children]
      .map((part) =>
        [...(part.children.length > 0 ? part.children : [part])].map((one) => one.textContent).join('/'),
      )
      .join('|'),
  )
const langOf = (frame: string): Promise<string | undefined> =>
  page.evaluate(
    (of) => document.querySelector<HTMLIFrameElement>(of)?.contentDocument?.documentElement.lang,
    frame,
  )

describe('a German lesson of a workshop that has a mark of its own', () => {
  test('has its logo, colours and footer on the desk, and a foot in German', async () => {
    await page.waitForFunction(() =>
      document.querySelector<HTMLElement>('.looking-foot-line')?.textContent.includes('Am alten Lampenhaus'),
    )
    const { src, alt, colour, top } = await page.evaluate(() => {
      const doc = document.querySelector<HTMLIFrameElement>('.looking-frame')?.contentDocument
      const logo = doc?.querySelector<HTMLImageElement>('.brand-logo img')
      const number = doc?.querySelector('.step-number')
      return {
        src: logo?.src,
        alt: logo?.alt,
        colour: number && getComputedStyle(number).color,
        top: ((logo?.getBoundingClientRect().top ?? 0) * 25.4 * (window.devicePixelRatio || 1)) / 96,
      }
    })
    expect([src, alt, colour]).toEqual([
      `data:image/svg+xml;base64,${btoa(mark)}`,
      'Papiertisch',
      'rgb(138, 31, 107)',
    ])
    // Half in the margin above the first page, as in print.
    expect(top).toBeCloseTo(8, 0)
    expect((await foot()).replaceAll('\u00a0', ' ')).toMatch(
      /^Ebbe.*\|.*Millimetern\/Am alten Lampenhaus\|Seite 1 von \d$/s,
    )
    expect(await langOf('.looking-frame')).toBe('de')
  })

  test('follows a `workshop.yaml` that another program has changed, when somebody comes back', async () => {
    writeFileSync(join(desk.folder, 'workshop.yaml'), 'footer: Am neuen Lampenhaus\n')
    await page.evaluate(() => window.dispatchEvent(new Event('focus')))
    await page.waitForFunction(() =>
      document.querySelector<HTMLElement>('.looking-foot-line')?.textContent.includes('neuen'),
    )
    expect(await seen('.looking-frame', '.brand-logo')).toEqual([])
  })

  test('speaks German step by step, in its chart of sizes and with its class; the desk itself English', async () => {
    const show = async (words: string, frame: string): Promise<void> => {
      await page.locator(`.views-slip::-p-text(${words})`).click()
      await page.waitForFunction(
        (of) => document.querySelector<HTMLIFrameElement>(of)?.contentDocument?.body?.textContent,
        {},
        frame,
      )
    }
    await show('Step by step', '.looking-step')
    expect(await langOf('.looking-step')).toBe('de')
    expect(await page.$eval('.looking-steps-head', (head) => (head as HTMLElement).textContent)).toContain(
      'step 1',
    )
    await show('All its sizes', '.looking-chart')
    expect(await langOf('.looking-chart')).toBe('de')
    expect(await seen('.looking-chart', 'h1')).toEqual([expect.stringContaining('Ebbe')])
    await show('The class', '.page-frame')
    expect(await langOf('.page-frame')).toBe('de')
    expect((await seen('.page-frame', 'h1')).join()).toContain('Materialliste')
    expect(troubleOf(page)).toEqual([])
  })
}, 240_000)

test('a theme of half pages is shown on them, and one of a single page in the type that fits', async () => {
  const choose = async (theme: string): Promise<void> => {
    await page.evaluate((wanted) => {
      const themes = [...document.querySelectorAll('select')].find((one) =>
        [...one.options].some(({ value }) => value === wanted),
      )
      if (!themes) throw new Error('no themes to choose from')
      themes.value = wanted
      themes.dispatchEvent(new Event('change', { bubbles: true }))
    }, theme)
    await new Promise((done) => setTimeout(done, 500))
    await page.waitForSelector('.looking-row[aria-busy="false"]')
  }
  const leaves = () =>
    page.evaluate(() => {
      const all = [...document.querySelectorAll<HTMLElement>('.looking-leaf')]
      const root =
        document.querySelector<HTMLIFrameElement>('.looking-frame')?.contentDocument?.documentElement
      const size = [all[0]?.style.width, all[0]?.style.height].map((side) =>
        Math.round((Number.parseFloat(side ?? '') * 25.4) / 96),
      )
      return { count: all.length, size, set: root?.className }
    })
  await page.locator('::-p-text(The handout)').click()
  await choose('booklet')
  const booklet = await leaves()
  // Half of an A4 sheet, in whole millimetres.
  expect(booklet.size).toEqual([149, 210])
  expect(booklet.count).toBeGreaterThan(3)
  await choose('card')
  expect(await leaves()).toEqual({
    count: 1,
    size: [149, 210],
    set: expect.stringMatching(/^page-type-\d+$/),
  })
  await page.locator('::-p-text(Step by step)').click()
  await page.waitForFunction(() =>
    document.querySelector<HTMLIFrameElement>('.looking-step')?.contentDocument?.querySelector('.step'),
  )
})
