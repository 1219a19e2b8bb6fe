import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'puppeteer-core'
import { beforeAll, describe, expect, test } from 'vitest'
import { openDesk, troubleOf, useDeskBrowser } from './open-desk.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const browser = useDeskBrowser()
const slow = 180_000

let page: Page
const seen = (what: string) => page.waitForSelector(what, { timeout: 60_000 })
const gone = (what: string) =>
  page.waitForFunction((s) => !document.querySelector(s), { timeout: 60_000 }, what)
/** The paragraph that the cursor is in. */
const line = (): Promise<string> =>
  page.evaluate(() => document.querySelector('.cm-activeLine')?.textContent ?? '')
const said = (): Promise<string> =>
  page.evaluate(() => [...document.querySelectorAll('[role=status]')].map((one) => one.textContent).join(' '))
const both = async (
  key: 'Home' | 'End' | 'z' | 'y' | '.' | 'f' | 'a',
  held: 'Control' | 'Shift' = 'Control',
) => {
  await page.keyboard.down(held)
  await page.keyboard.press(key)
  await page.keyboard.up(held)
}
const times = async (count: number, key: 'Backspace' | 'ArrowDown' | 'ArrowLeft') => {
  for (let i = 0; i < count; i++) await page.keyboard.press(key)
}

/** Goes down from the top to the end of the paragraph that begins so. */
async function seek(words: string): Promise<void> {
  await page.evaluate(() => document.querySelector<HTMLElement>('.cm-content')?.focus())
  await both('Home')
  for (let i = 0; i < 150 && !(await line()).startsWith(words); i++) await page.keyboard.press('ArrowDown')
  expect(await line()).toContain(words)
  // A long paragraph takes several lines of the screen.
  for (let i = 0; i < 4; i++) {
    await page.keyboard.press('ArrowDown')
    if (!(await line()).startsWith(words)) {
      await page.keyboard.press('ArrowUp')
      break
    }
  }
  await page.keyboard.press('End')
}

beforeAll(async () => {
  page = await openDesk(await browser())
  page.setDefaultTimeout(60_000)
  await page.locator('::-p-text(Low tide)').click()
  await seen('.cm-content')
  await page.waitForFunction(
    () => document.querySelector('.writing-nothing')?.textContent === 'Nothing to mend.',
    {
      timeout: 60_000,
    },
  )
}, slow)

describe('a mistake', () => {
  test(
    'is underlined, marked in the margin and listed below',
    async () => {
      await seek('fold: z')
      await page.keyboard.type('z')
      await seen('.writing-found-error')
      await seen('.writing-mark-error')
      expect(await page.evaluate(() => document.querySelector('.writing-found-error')?.textContent)).toBe(
        'zz',
      )
      expect(await page.evaluate(() => document.querySelector('.writing-list-head')?.textContent)).toContain(
        '1 thing is wrong',
      )
    },
    slow,
  )

  test(
    'is found by a key, which says what is wrong and what cures it',
    async () => {
      await page.keyboard.press('Escape')
      await both('Home')
      await page.keyboard.press('F8')
      await seen('.writing-note .writing-cure')
      expect(await line()).toBe('fold: zz')
      expect(await said()).toContain('Unexpected fold zz')
    },
    slow,
  )

  test(
    'is cured by another, and undone like anything else',
    async () => {
      await both('.')
      await gone('.writing-found-error')
      expect(await line()).toBe('fold: z')
      await both('z')
      expect(await line()).toBe('fold: zz')
      await both('y')
      expect(await line()).toBe('fold: z')
      await gone('.writing-found-error')
    },
    slow,
  )
})

describe('a measure', () => {
  test(
    'is offered with its value, and taken with Enter',
    async () => {
      await seek('1. ')
      await page.keyboard.type(' {base.wi')
      await seen('.cm-tooltip-autocomplete')
      const offered = await page.evaluate(() =>
        [...document.querySelectorAll('.cm-tooltip-autocomplete li')].map((one) => [
          one.querySelector('.cm-completionLabel')?.textContent,
          one.querySelector('.cm-completionDetail')?.textContent,
        ]),
      )
      expect(offered[0]?.[0]).toBe('base.width')
      expect(offered[0]?.[1]).toMatch(/^\d.* (?:in|mm)$/)
      // A list that has just come up does not take the key that was meant for the words.
      await new Promise((rest) => setTimeout(rest, 200))
      await page.keyboard.press('Enter')
      await page.waitForFunction(() =>
        document.querySelector('.cm-activeLine')?.textContent?.endsWith('{base.width}'),
      )
    },
    slow,
  )

  test(
    'is explained by a key, beside it and aloud',
    async () => {
      await times(2, 'ArrowLeft')
      await page.keyboard.press('F9')
      await seen('.writing-explained strong')
      const value = await page.evaluate(
        () => document.querySelector('.writing-explained strong')?.textContent,
      )
      expect(value).toMatch(/^\d.* (?:in|mm)$/)
      expect(await said()).toContain(`${value}, that is `)
      await page.keyboard.press('Escape')
      await gone('.writing-explained')
    },
    slow,
  )
})

test(
  'a piece is renamed everywhere in one step, and not to a name that is taken',
  async () => {
    const text = (): Promise<string> =>
      page.evaluate(() => document.querySelector('.cm-content')?.textContent ?? '')
    await seek('layers:')
    await page.keyboard.press('ArrowDown')
    const name = (await line()).trim().replace(/:.*/, '')
    await page.keyboard.press('End')
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('F2')
    await seen('.writing-rename input')
    await page.keyboard.type('base')
    await page.keyboard.press('Enter')
    await page.waitForFunction(() =>
      document.querySelector('#writing-refused')?.textContent?.includes('already'),
    )
    await both('a')
    await page.keyboard.type('tide line')
    await page.keyboard.press('Enter')
    await gone('.writing-rename')
    await page.waitForFunction(() =>
      document.querySelector('.writing-done')?.textContent?.includes('tide line'),
    )
    expect(await text()).toContain('tide line:')
    // The keyboard is back in the words.
    await both('z')
    expect((await line()).trim()).toMatch(new RegExp(`^${name}:`))
  },
  slow,
)

test(
  'Tab goes on from the words, and indents in the card block',
  async () => {
    await seek('closed:')
    const before = await line()
    await page.keyboard.press('Tab')
    expect(await line()).toBe(`  ${before}`)
    await both('z')
    expect(await line()).toBe(before)
    await seek('1. ')
    const words = await line()
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.closest('.cm-content'))).toBeNull()
    await seek('1. ')
    expect(await line()).toBe(words)
  },
  slow,
)

test(
  'looking for words speaks plainly, and Escape closes it',
  async () => {
    await both('f')
    await seen('.cm-search')
    const words = await page.evaluate(() => document.querySelector('.cm-search')?.textContent ?? '')
    expect(words).toContain('Whole words')
    expect(words).not.toMatch(/regexp|by word|replace/i)
    await page.keyboard.press('Escape')
    await gone('.cm-search')
  },
  slow,
)

test(
  'axe-core has nothing against the words, their notes and their list',
  async () => {
    await seek('fold: z')
    await page.keyboard.type('z')
    await seen('.writing-found-error')
    await both('Home')
    await page.keyboard.press('F8')
    await seen('.writing-note')
    await page.locator('.writing-list-head').click()
    await seen('.writing-list ol')
    await page.evaluate(axe)
    const found = (await page.evaluate('axe.run(".writing-side", { resultTypes: ["violations"] })')) as {
      violations: { id: string; nodes: { html: string }[] }[]
    }
    expect(found.violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([])
    // And from the list: its cure.
    await page.locator('.writing-list .writing-cure').click()
    await gone('.writing-found-error')
  },
  slow,
)

test(
  'what was done can still be undone when the page was left and opened again',
  async () => {
    await seek('closed:')
    const before = await line()
    await page.keyboard.type(' # a word aside')
    const after = await line()
    await page.waitForFunction(
      () =>
        new Promise((resolve) => {
          const opening = indexedDB.open('foldlore desk')
          opening.onsuccess = () => {
            const all = opening.result.transaction('drafts').objectStore('drafts').getAll()
            all.onsuccess = () => {
              opening.result.close()
              resolve(all.result.some(({ text }) => text.includes('# a word aside')))
            }
          }
        }),
      { polling: 300 },
    )
    await page.reload()
    await seen('.cm-content')
    await seek(after.slice(0, 6))
    expect(await line()).toBe(after)
    await both('z')
    expect(await line()).toBe(before)
  },
  slow,
)

test('nothing went wrong in the page', () => expect(troubleOf(page)).toEqual([]))
