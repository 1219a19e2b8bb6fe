import { readFile } from 'node:fs/promises'
import type { Page } from 'puppeteer-core'
import { beforeAll, expect, test } from 'vitest'
import { openDesk, troubleOf, useDeskBrowser } from './open-desk.ts'

const browser = useDeskBrowser()

// One page for all, as one teacher uses it: each test goes on where the one before left off.
let page: Page
beforeAll(async () => {
  page = await openDesk(await browser())
  page.setDefaultTimeout(50_000)
})

const words = () => page.locator('::-p-aria([name="The words"])').click()
const fields = () => page.locator('::-p-aria([name="The card, field by field"])').click()

/** The words of the card as they stand in the editor. */
async function cardText(): Promise<string> {
  await words()
  await page.waitForSelector('.cm-line')
  const lines = await page.$$eval('.cm-line', (all) => all.map((line) => line.textContent ?? ''))
  await fields()
  const start = lines.indexOf('```card') + 1
  return lines.slice(start, lines.indexOf('```', start)).join('\n')
}

const focused = (): Promise<string> =>
  page.evaluate(() => {
    const here = document.activeElement
    return here instanceof HTMLInputElement
      ? (here.labels?.[0]?.textContent ?? '')
      : (here?.textContent ?? '')
  })

async function write(label: string, text: string): Promise<void> {
  const field = await page.waitForSelector(`::-p-aria([name="${label}"][role="textbox"])`)
  await field?.click({ count: 3 })
  await page.keyboard.type(text)
}

/** Waits until the card says something, with all its words in one text. */
const says = (said: string) =>
  page.waitForFunction((wanted) => document.querySelector('.form')?.textContent?.includes(wanted), {}, said)

const starter = `fold: bridge
closed: 7 x 5 in
leg: 3/4 in
base: {stock: coloured card, weight: 300 gsm}
layers:
  backdrop:
    on: floor
    border: {sides: 1/16 in, ends: 0 in}
    stock: patterned paper
spans:
  strip: {height: 1 1/2 in, at: bottom, stock: white card}`

/** What a checker of accessible pages finds wrong with a part of the page: nothing. */
async function seenByAll(part: string): Promise<void> {
  await page.evaluate(await readFile('node_modules/axe-core/axe.min.js', 'utf8'))
  for (const value of ['light', 'dark']) {
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }])
    const found = await page.evaluate(async (selector) => {
      const { axe } = window as unknown as { axe: typeof import('axe-core') }
      const { violations } = await axe.run(selector)
      return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`))
    }, part)
    expect(found).toEqual([])
  }
}

test('every fold is offered with its name, and a picture where it is in sight', async () => {
  await page.waitForFunction(() => document.querySelectorAll('.start-fold').length === 28)
  await page.waitForFunction(() => document.querySelectorAll('.start-picture img').length > 3)
  const pictures = await page.$$eval('.start-picture img', (all) => all.map(({ alt }) => alt))
  expect(pictures.filter((alt) => !/standing|stands|shut/.test(alt))).toEqual([])
  await page.type('.start-words', 'doors')
  await page.waitForFunction(() => document.querySelectorAll('.start-fold').length < 28)
  const found = await page.$$eval('.start-choose', (all) => all.map((one) => one.textContent))
  expect(found).toContain('Gate')
  expect(found).not.toContain('Easel')
  expect(troubleOf(page)).toEqual([])
})

test('the empty desk can be used by everyone, by day and by night', () => seenByAll('.start'))

test('a field changes its own value in the text, and the keyboard goes on to the next field', async () => {
  await page.$eval('.start-words', (input) => {
    ;(input as HTMLInputElement).value = ''
    input.dispatchEvent(new Event('input', { bubbles: true }))
  })
  await page.locator('::-p-aria([name="Bridge"][role="button"])').click()
  await fields()
  await write('Leg', '1 in')
  await page.keyboard.press('Tab')
  await says('4 7/8 × 5 in')
  expect(await focused()).toBe('Tab')
  expect(await cardText()).toBe(starter.replace('leg: 3/4 in', 'leg: 1 in'))
  expect(troubleOf(page)).toEqual([])
})

test('a change of a field is undone in one step', async () => {
  await words()
  await page.locator('.cm-content').click()
  await page.keyboard.down('Control')
  await page.keyboard.press('z')
  await page.keyboard.up('Control')
  expect(await cardText()).toBe(starter)
})

test('a value that cannot be is told at its field, and what was written stays', async () => {
  await write('Leg', '9 in')
  await page.keyboard.press('Enter')
  await says('leaves no floor')
  const said = await page.$eval('.form-input[aria-invalid]', (input) => (input as HTMLInputElement).value)
  expect(said).toBe('9 in')
  await write('Leg', '3/4 in')
  await page.keyboard.press('Enter')
  await says('5 3/8 × 5 in')
})

test('a layer is put on, named and taken out with the keyboard alone', async () => {
  await (await page.waitForSelector('::-p-aria([name="A layer"][role="button"])'))?.focus()
  await page.keyboard.press('Enter')
  await page.waitForFunction(() => (document.activeElement as HTMLInputElement | null)?.value === 'mat')
  expect(await focused()).toBe('Name')
  expect(await cardText()).toContain('  mat:\n    on: left tab\n    border: 1/8 in\n')
  await write('Name', 'sail')
  await page.keyboard.press('Enter')
  await says('“sail”')
  expect(await focused()).toBe('Name')
  expect(await cardText()).toContain('  sail:\n    on: left tab\n')
  await (await page.waitForSelector('::-p-aria([name="Take “sail” out"])'))?.focus()
  await page.keyboard.press('Enter')
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.form-title')].every((title) => title.textContent !== 'sail'),
  )
  expect(await focused()).toBe('Put something on it')
  expect(await cardText()).toBe(starter)
})

test('what is written into the words is in the fields', async () => {
  await words()
  await page.locator('::-p-text(leg: 3/4 in)').click()
  await page.keyboard.press('End')
  await page.keyboard.type(' + 1/4 in')
  await fields()
  await says('comes to 1 in')
})

test('the fields can be used by everyone, by day and by night', async () => {
  await page.evaluate(() => {
    for (const group of document.querySelectorAll('details.form-group')) group.setAttribute('open', '')
  })
  await page.waitForSelector('.form-panels')
  await seenByAll('.form')
})
