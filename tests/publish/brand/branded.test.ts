import { expect, test } from 'vitest'
import type { PageBrand } from '../../../src/publish/brand/page-brand.ts'
import { figuresOf } from '../../../src/publish/figures-of.ts'
import { handoutHtml } from '../../../src/publish/html.ts'
import { openPage } from '../../../src/publish/launch.ts'
import { layingOf, printLaid } from '../../../src/publish/print-made.ts'
import { loadTheme } from '../../../src/publish/theme.ts'
import { themeNames } from '../../../src/publish/theme-folder.ts'
import { handoutView } from '../../../src/publish/view.ts'
import { axeFindings } from '../axe.ts'
import { pier } from '../lesson.ts'
import { openPdf, pageTexts, tags } from '../pdf-reading.ts'
import { withBrowser } from '../with-browser.ts'

const browser = withBrowser()
const names = await themeNames()
const mark =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><path d="M2 18C8 2 30 2 38 2z"/></svg>'
const brand: PageBrand = {
  logo: {
    data: `data:image/svg+xml;base64,${Buffer.from(mark).toString('base64')}`,
    alternative: 'The “Quillhaven” paper table & <sand>',
  },
  accent: { onPaper: '#1b5e6b', onDark: '#7ab8c4' },
  second: { onPaper: '#6a3d7c', onDark: '#c4a4d0' },
  footer: 'Quillhaven “paper” table & </style> \\a lamp house',
}

async function made(name: string, own: PageBrand | null = brand) {
  const theme = await loadTheme(name)
  const lesson = pier()
  const { view } = handoutView(lesson, figuresOf(lesson), new Map(), undefined, theme.print.rooms)
  const half = theme.print.pages === 'half'
  const html = await handoutHtml({ ...view, ...(own && { brand: own }) }, theme, { paper: 'a4', half })
  return { theme, html }
}

test.each(names)('%s: the logo is read before the title, and every page has the footer', async (name) => {
  const { theme, html } = await made(name)
  const { pdf } = await printLaid(html, layingOf(theme.print, 'a4'), browser())
  const document = await openPdf(pdf)
  const all = await tags(document)
  const logo = all.findIndex(({ alt }) => alt === brand.logo?.alternative)
  expect(all[logo]?.role).toBe('Figure')
  expect(logo).toBeLessThan(all.findIndex(({ role }) => role === 'H1'))
  const texts = await pageTexts(document)
  const whole = theme.print.sheets === 'single' ? texts : [texts.join(' ')]
  for (const text of whole) expect(text.replace(/\s+/g, ' ')).toContain(brand.footer)
})

test.each(names)('%s: the numbers of steps have the accent, unless ink is to be saved', async (name) => {
  const { html } = await made(name)
  const page = await openPage(browser())
  await page.setContent(html)
  const colour = await page.evaluate(
    `getComputedStyle(document.querySelector('.step-number, .card-number')).color`,
  )
  await page.close()
  expect(colour).toBe(name === 'ink-saver' ? 'rgb(60, 60, 60)' : 'rgb(27, 94, 107)')
})

test.each(names)('%s: axe-core finds nothing to complain of', async (name) => {
  expect(await axeFindings(browser(), (await made(name)).html, 1200)).toEqual([])
})

test('a page without a brand has nothing of one', async () => {
  const { html } = await made('step-sheet', null)
  const found = /class="brand-|--brand-\w+:|@page:first/.exec(html)
  expect(found?.[0]).toBeUndefined()
})
