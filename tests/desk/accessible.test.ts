import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'puppeteer-core'
import { beforeAll, describe, expect, test } from 'vitest'
import { openDesk, troubleOf, useDeskBrowser } from './open-desk.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const browser = useDeskBrowser()

/** Rules of axe-core that the page breaks, with the elements. What lies in frames is a print, and tested as one. */
async function complaints(page: Page): Promise<string[]> {
  await page.evaluate(axe)
  const found = await page.evaluate('axe.run(document, { iframes: false, resultTypes: ["violations"] })')
  const { violations, passes } = found as {
    violations: { id: string; nodes: { html: string }[] }[]
    passes: { id: string }[]
  }
  expect(passes.length).toBeGreaterThan(15)
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 200)}`))
}

const press = (page: Page, words: string) => page.locator(`::-p-text(${words})`).click()
const seen = (page: Page, what: string) => page.waitForSelector(what, { timeout: 50_000 })

const views: readonly (readonly [name: string, look: (page: Page) => Promise<unknown>])[] = [
  ['the empty desk', (page) => seen(page, '.start-fold img, .start-fold svg')],
  [
    'the handout',
    async (page) => {
      await press(page, 'Harbour lights')
      await seen(page, '.looking-frame')
      await seen(page, '.writing-nothing')
    },
  ],
  ['step by step', (page) => press(page, 'Step by step').then(() => seen(page, '.looking-steps'))],
  ['in space', (page) => press(page, 'In space').then(() => seen(page, '.looking-space'))],
  ['all its sizes', (page) => press(page, 'All its sizes').then(() => seen(page, '.looking-chart'))],
  ['the class', (page) => press(page, 'The class').then(() => seen(page, '.page-frame'))],
  [
    'the class file',
    (page) => press(page, 'Write prices, paper and times').then(() => seen(page, 'textarea')),
  ],
  [
    'the card, field by field',
    (page) => press(page, 'The card, field by field').then(() => seen(page, '.form-field, fieldset')),
  ],
  ['what can be printed', (page) => press(page, 'Print and save as').then(() => seen(page, 'dialog'))],
  [
    'another lesson',
    async (page) => {
      await page.keyboard.press('Escape')
      await press(page, 'Another lesson')
      await seen(page, 'dialog')
    },
  ],
]

describe.each([
  { light: 'light', width: 1400 },
  { light: 'dark', width: 1400 },
  { light: 'light', width: 390 },
] as const)('$light, $width px wide', ({ light, width }) => {
  let page: Page
  beforeAll(async () => {
    page = await openDesk(await browser(), { width })
    await page.emulateMediaFeatures([
      { name: 'prefers-color-scheme', value: light },
      { name: 'prefers-reduced-motion', value: 'reduce' },
    ])
  })

  test.each(views)('axe-core finds nothing to complain of in %s', async (_, look) => {
    await look(page)
    expect(await complaints(page)).toEqual([])
    // Nothing sticks out sideways: at 390 px, which is also what 1560 px are at four times the size.
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
  })

  test('nothing went wrong in the page', () => expect(troubleOf(page)).toEqual([]))
})
