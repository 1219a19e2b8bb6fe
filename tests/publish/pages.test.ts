import { expect, test } from 'vitest'
import { handoutHtml } from '../../src/publish/html.ts'
import { printHandout } from '../../src/publish/pdf.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { drawStub, plainLesson } from './lesson.ts'
import { openPdf, pageTexts } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const theme = await loadTheme('step-sheet')

/** A lesson whose steps are told apart by their words: `s3first`, `s3last`, `s3caption`; headings `h0`, `h1` … */
function longLesson(lines: readonly number[]): string {
  const step = (n: number, length: number): string => {
    const words = `s${n}first ${'fold the paper over and press it down '.repeat(length)}s${n}last.`
    const figure = length % 3 === 0 ? `\n\n   ::figure[s${n}caption]{show=flat}` : ''
    const tip =
      length % 4 === 0 ? `\n\n   :::tip\n   s${n}tip ${'mind the grain '.repeat(length)}\n   :::` : ''
    return `1. ${words}${figure}${tip}`
  }
  return lines.map((length, i) => `${i % 4 === 0 ? `## h${i / 4}\n\n` : ''}${step(i, length)}\n`).join('\n')
}

const numbers = (seed: number) =>
  Array.from({ length: 24 }, (_, i) => 1 + ((i * 7 + seed * 5 + ((i * seed) % 5)) % 9))

test.each([
  ['a4', 1],
  ['a4', 2],
  ['letter', 3],
  ['letter', 4],
] as const)('on %s, lesson %i: no step is split, and no heading stands alone', async (paper, seed) => {
  const lines = numbers(seed)
  const { view } = handoutView(plainLesson(longLesson(lines)), drawStub)
  const { pdf, pages } = await printHandout(await handoutHtml(view, theme, { paper }), browser())
  const texts = await pageTexts(await openPdf(pdf))
  expect(pages).toBeGreaterThan(3)
  const pageOf = (word: string): number => texts.findIndex((text) => new RegExp(`\\b${word}\\b`).test(text))
  lines.forEach((length, i) => {
    const page = pageOf(`s${i}first`)
    expect(page).toBeGreaterThanOrEqual(0)
    expect([`s${i}last`, pageOf(`s${i}last`)]).toEqual([`s${i}last`, page])
    if (length % 3 === 0) expect([`s${i}caption`, pageOf(`s${i}caption`)]).toEqual([`s${i}caption`, page])
    if (length % 4 === 0) expect([`s${i}tip`, pageOf(`s${i}tip`)]).toEqual([`s${i}tip`, page])
    if (i % 4 === 0) expect([`h${i / 4}`, pageOf(`h${i / 4}`)]).toEqual([`h${i / 4}`, page])
  })
})
