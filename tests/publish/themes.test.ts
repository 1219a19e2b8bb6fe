import { expect, test } from 'vitest'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { shippedFonts } from '../../src/publish/fonts.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { openPage } from '../../src/publish/launch.ts'
import { layingOf, printLaid } from '../../src/publish/print-made.ts'
import { mustShowCautions } from '../../src/publish/safety.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { themeNames } from '../../src/publish/theme-folder.ts'
import { handoutView } from '../../src/publish/view.ts'
import { axeFindings } from './axe.ts'
import { filled, pier, pierText } from './lesson.ts'
import { openPdf, tags } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const names = await themeNames()
/** The lesson with everything, and a caution of its own. */
const careful = (units: 'in' | 'mm' = 'in') =>
  filled(`${pierText}\n:::caution\nKeep the harbour cat off the glue, {base.width} away.\n:::\n`, { units })

async function made(name: string, lesson = careful()) {
  const theme = await loadTheme(name)
  const { view } = handoutView(lesson, figuresOf(lesson), new Map(), undefined, theme.print.rooms)
  const html = await handoutHtml(view, theme, { paper: 'a4', half: theme.print.pages === 'half' })
  return { theme, view, html }
}

test('these come with foldlore', () => {
  expect(names.toSorted()).toEqual(
    expect.arrayContaining(['booklet', 'card', 'ink-saver', 'large-print', 'step-sheet']),
  )
})

test.each(names)(
  '%s shows the cautions that are called for, and those of the lesson itself',
  async (name) => {
    const { view, html } = await made(name)
    expect(view.cautions).toHaveLength(2)
    expect(() => mustShowCautions(view.safety, html, name, view.cautions)).not.toThrow()
    expect(() =>
      mustShowCautions(view.safety, html.replaceAll('harbour cat', ''), name, view.cautions),
    ).toThrow(`The theme \`${name}\` leaves out cautions of the lesson itself`)
  },
)

test.each(names.flatMap((name) => [1200, 390].map((width) => [name, width] as const)))(
  '%s on a screen %i px wide: axe-core finds nothing to complain of',
  async (name, width) => {
    expect(await axeFindings(browser(), (await made(name)).html, width)).toEqual([])
  },
)

test.each(names)('%s: the PDF has a first heading, tables and figures with words', async (name) => {
  const { theme, html } = await made(name)
  const { pdf } = await printLaid(html, layingOf(theme.print, 'a4'), browser())
  const all = await tags(await openPdf(pdf))
  expect(all.filter(({ role }) => role === 'H1')).toHaveLength(1)
  expect(all.filter(({ role }) => role === 'Table').length).toBeGreaterThan(0)
  // A figure near the end of a page is drawn on the next one too, where nothing of it is seen: it is told twice then.
  const said = new Set(all.filter(({ role }) => role === 'Figure').map(({ alt = '' }) => alt))
  const drawn = new Set(
    Array.from(html.matchAll(/<svg[^>]* role="img".*?<desc[^>]*>(.*?)<\/desc>/gs), ([, words]) => words),
  )
  expect(said.size).toBe(drawn.size)
  expect(drawn.size).toBeGreaterThan(name === 'card' ? -1 : 3)
  for (const alt of said) expect(alt.length).toBeGreaterThan(20)
})

test.each(['in', 'mm'] as const)('large print, %s: nothing is smaller than 18 pt', async (units) => {
  const { theme, html } = await made('large-print', careful(units))
  const { pdf } = await printLaid(html, layingOf(theme.print, 'a4'), browser())
  const document = await openPdf(pdf)
  const small: string[] = []
  let texts = 0
  for (let i = 1; i <= document.numPages; i++) {
    const { items } = await (await document.getPage(i)).getTextContent()
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue
      texts++
      const [a = 0, b = 0] = item.transform
      if (Math.hypot(a, b) < 17.9) small.push(`${item.str} ${Math.hypot(a, b).toFixed(1)}`)
    }
  }
  expect(texts).toBeGreaterThan(100)
  expect(small).toEqual([])
})

test.each(names)('%s: every fraction is in a font that makes one of it', async (name) => {
  const { html } = await made(name)
  const page = await openPage(browser())
  await page.setContent(html)
  const families = (await page.evaluate(
    `[...document.querySelectorAll('.frac')].map((one) => getComputedStyle(one).fontFamily)`,
  )) as string[]
  await page.close()
  const good = shippedFonts.filter(({ fractions }) => fractions).map(({ family }) => family)
  expect(families.length).toBeGreaterThan(5)
  expect(families.filter((one) => !good.some((family) => one.replace(/"/g, '').startsWith(family)))).toEqual(
    [],
  )
})

test('the ink saver fills nothing but letters and arrows', async () => {
  const { html } = await made('ink-saver')
  const page = await openPage(browser())
  await page.setContent(html)
  const fills = (await page.evaluate(
    `[...new Set([...document.querySelectorAll('div.figure svg :is(path, rect, polygon, circle)')].map((one) => getComputedStyle(one).fill))]`,
  )) as string[]
  const tints = (await page.evaluate(
    `[...new Set([...document.querySelectorAll('main *')].map((one) => getComputedStyle(one).backgroundColor))]`,
  )) as string[]
  await page.close()
  // Arrow heads and letters of a word have the ink of its lines.
  expect(fills.toSorted()).toEqual(['none', 'rgb(255, 255, 255)', 'rgb(60, 60, 60)'])
  expect(tints.toSorted()).toEqual(['rgb(255, 255, 255)', 'rgba(0, 0, 0, 0)'].toSorted())
})

test.each(['a4', 'letter'] as const)('the card has a whole lesson on one side, %s', async (paper) => {
  const lesson = pier()
  const theme = await loadTheme('card')
  const { view } = handoutView(lesson, figuresOf(lesson))
  const html = await handoutHtml(view, theme, { paper, half: true })
  const { pdf, pages } = await printLaid(html, layingOf(theme.print, paper), browser())
  expect(pages).toBe(1)
  expect((await openPdf(pdf)).numPages).toBe(1)
  for (const { name, size } of view.cards.flatMap((card) => card.pieces)) {
    expect(html).toContain(name)
    expect(html).toContain(size.html)
  }
})
