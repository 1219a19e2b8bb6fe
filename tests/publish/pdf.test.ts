import { beforeAll, describe, expect, test } from 'vitest'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { printHandout, printPdf } from '../../src/publish/pdf.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { isOurs } from '../../src/publish/write.ts'
import { pier } from './lesson.ts'
import { actualTexts, openPdf, pageSizes, pageTexts, type Tag, tags } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const theme = await loadTheme('step-sheet')
const pageFor = (paper: 'a4' | 'letter', units: 'in' | 'mm' = 'in') => {
  const lesson = pier({ units })
  return handoutHtml(handoutView(lesson, figuresOf(lesson)).view, theme, { paper })
}

/** Points are 1/72 in. ISO 216 A4 is 210 × 297 mm; North American Letter is 8 1/2 × 11 in (PWG 5101.1, na_letter). */
const points = { a4: [(210 / 25.4) * 72, (297 / 25.4) * 72], letter: [8.5 * 72, 11 * 72] } as const

describe.each(['a4', 'letter'] as const)('%s', (paper) => {
  let pdf: Awaited<ReturnType<typeof openPdf>>
  let data: Uint8Array
  let texts: string[]
  let all: Tag[]
  let count: number
  let drawn: number
  beforeAll(async () => {
    const html = await pageFor(paper)
    drawn = html.match(/<svg[^>]* role="img"/g)?.length ?? 0
    const print = await printHandout(html, browser())
    data = print.pdf
    count = print.pages
    pdf = await openPdf(data)
    texts = await pageTexts(pdf)
    all = await tags(pdf)
  })
  const roles = (role: string) => all.filter((tag) => tag.role === role)

  test('every page has the size of the paper', async () => {
    expect(pdf.numPages).toBe(count)
    expect(count).toBeGreaterThan(1)
    for (const [width, height] of await pageSizes(pdf)) {
      // Chromium works in px of 1/96 in, and rounds to them.
      expect(Math.abs(width - points[paper][0])).toBeLessThan(1)
      expect(Math.abs(height - points[paper][1])).toBeLessThan(1)
    }
  })

  test('copying and searching find measures as they are said', () => {
    const whole = texts.join(' ')
    for (const measure of ['5 7/8 × 6 in', '8 × 1 1/4 in', '1 and 9 in', '1/16 in'])
      expect(whole).toContain(measure)
    expect(whole).not.toMatch(/57\/8|[⅛⅜⅝⅞½¼¾]/)
  })

  test('behind the bar of each fraction there is the `/` that was written', () => {
    expect(actualTexts(data).get('/')).toBeGreaterThan(10)
  })

  test('every page says which lesson, which print and which page it is', () => {
    texts.forEach((text, i) => {
      expect(text).toContain('8 × 6 in card, measures in inches')
      expect(text).toContain('Gulls over the “pier” & <sand>')
      expect(text).toContain(`page ${i + 1} of ${count}`)
    })
  })

  test('it has a title, a language, tags and an outline', async () => {
    const { info } = await pdf.getMetadata()
    expect(info).toMatchObject({
      Title: 'Gulls over the “pier” & <sand>',
      Creator: 'foldlore',
      Language: 'en-GB',
    })
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true })
    const outline = await pdf.getOutline()
    const said = (title: string) => title.replaceAll('\u00a0', ' ')
    expect(outline.map(({ title }) => said(title))).toEqual(['Gulls over the “pier” & <sand>'])
    expect(outline[0]?.items.map(({ title }) => said(title))).toEqual(
      expect.arrayContaining(['What you need', 'Pieces to cut', 'The base', 'The picture']),
    )
  })

  test('it has headings in order, lists, a table, and figures that say what they show', () => {
    expect(roles('H1')).toHaveLength(1)
    const levels = all.flatMap(({ role }) => /^H(\d)$/.exec(role)?.[1] ?? []).map(Number)
    levels.forEach((level, i) => {
      expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1)
    })
    expect(roles('H2').length).toBeGreaterThanOrEqual(4)
    expect(roles('L').length).toBeGreaterThanOrEqual(5)
    expect(roles('LI').length).toBeGreaterThanOrEqual(9)
    expect(roles('Table')).toHaveLength(1)
    // The cover and three in the steps; the small outlines in the table say nothing that their rows do not.
    expect(roles('Figure')).toHaveLength(drawn)
    expect(drawn).toBeGreaterThanOrEqual(4)
    for (const { alt } of roles('Figure')) expect(alt?.length ?? 0).toBeGreaterThan(20)
  })

  test('a later print may take its place', () => {
    expect(isOurs(data)).toBe(true)
  })
})

test('a print in millimetres has no inches in it', async () => {
  const texts = await pageTexts(await openPdf(await printPdf(await pageFor('a4', 'mm'), browser())))
  expect(texts.join(' ')).toContain('measures in millimetres')
  expect(texts.join(' ')).not.toMatch(/\d in\b(?! the)/)
})
