import { expect, test } from 'vitest'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { printPdf } from '../../src/publish/pdf.ts'
import { codesFor } from '../../src/publish/scan.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { axeFindings } from './axe.ts'
import { decoded } from './decoded.ts'
import { filled } from './lesson.ts'
import { pdfPixels, pngPixels } from './pdf-pixels.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()

const links = [
  'https://example.org/quillhaven/low-tide',
  'https://example.org/Möwen am Kai?tag=früh&size=5×7#fold'.replaceAll(' ', '-'),
  `https://example.org/watch?list=${'abcDEF123-_'.repeat(20)}&t=90`,
]

const lesson = (front: string, body = 'A card of the harbour.') =>
  filled(`---\ntitle: Low tide\n${front}---\n\n${body}\n\n1. Fold it.\n`)
const page = async (of: ReturnType<typeof lesson>, paper: 'a4' | 'letter' = 'a4', theme = 'step-sheet') => {
  const { view } = handoutView(of, figuresOf(of), new Map(), await codesFor(of))
  return handoutHtml(view, await loadTheme(theme), { paper })
}

const printed = links.flatMap((link) => (['a4', 'letter'] as const).map((paper) => ({ link, paper })))

test.each(printed)('the code in a PDF on $paper opens $link', async ({ link, paper }) => {
  const pdf = await printPdf(await page(lesson(`video: ${link}\n`), paper), browser())
  expect(decoded(await pdfPixels(browser(), pdf, 150))).toBe(link)
})

test('where little is filled, the code is black all the same', async () => {
  const [link = ''] = links
  const pdf = await printPdf(await page(lesson(`video: ${link}\n`), 'a4', 'ink-saver'), browser())
  expect(decoded(await pdfPixels(browser(), pdf, 150))).toBe(link)
})

test.each(links)('the code on the page at its printed size opens %s', async (link) => {
  const tab = await browser().newPage()
  await tab.setContent(await page(lesson('', `::scan[Watch the fold]{link="${link}"}`)))
  const scan = await tab.$('.scan')
  const png = (await scan?.screenshot()) ?? new Uint8Array()
  const [width, modules, href] = (await tab.evaluate(`[
    document.querySelector('svg.scan-code').getBoundingClientRect().width / 96 * 25.4,
    document.querySelector('svg.scan-code').viewBox.baseVal.width,
    document.querySelector('.scan-picture').getAttribute('href'),
  ]`)) as [number, number, string]
  await tab.close()
  expect(decoded(await pngPixels(browser(), png))).toBe(link)
  expect(width).toBeGreaterThan(21.99)
  expect(width / modules).toBeGreaterThan(0.499)
  expect(href).toBe(link)
})

test('a page with codes is one that everybody can use', async () => {
  const html = await page(
    lesson(`video: ${links[0]}\n`, `Look.\n\n::scan[Watch the fold]{link="${links[1]}"}`),
  )
  for (const width of [1200, 390]) expect(await axeFindings(browser(), html, width)).toEqual([])
})

test('a short address stays on one line, a long one may break behind its slashes', async () => {
  const short = await page(lesson('video: https://example.org/kite\n'))
  expect(short).toContain('<a class="kept" href="https://example.org/kite">https://example.org/kite</a>')
  expect(await page(lesson(`video: ${links[0]}\n`))).toContain('<wbr>quillhaven/')
})

test('the address stands in letters beside the code, with its caption', async () => {
  const html = await page(lesson('', `::scan[Watch the *fold*]{link=${links[0]}}`))
  expect(html).toContain('Watch the <em>fold</em>')
  expect(html.replaceAll('<wbr>', '')).toContain(`>${links[0]}</a>`)
})

test('a link that is too long is printed in letters alone', async () => {
  const long = `https://example.org/${'a'.repeat(431)}`
  const html = await page(lesson(`video: ${long}\n`))
  expect(html).not.toContain('<svg class="scan-code"')
  expect(html).toContain(`href="${long}"`)
  expect(html).not.toContain('Scan to')
})

test('a lesson without links is printed as before', async () => {
  expect(await page(lesson(''))).not.toContain('class="scan')
})
