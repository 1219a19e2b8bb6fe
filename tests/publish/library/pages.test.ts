import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, test } from 'vitest'
import { indexHtml } from '../../../src/publish/library/index-page.ts'
import { lessonHtml } from '../../../src/publish/library/lesson-page.ts'
import type { LibraryLesson, LibraryView } from '../../../src/publish/library/library-view.ts'
import { reportHtml } from '../../../src/publish/library/report-page.ts'
import { axeFindings } from '../axe.ts'
import { withBrowser } from '../with-browser.ts'

const browser = withBrowser()

const lesson = (name: string, words: string, more: Partial<LibraryLesson> = {}): LibraryLesson => ({
  path: `sea/${name}.md`,
  folder: `sea/${name}`,
  title: name,
  summary: 'A card.',
  level: 'For beginners',
  lang: 'en',
  words,
  picture: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" role="img" aria-labelledby="t-${name}"><title id="t-${name}">The card ${name}</title><path d="M0 0h9v9z"/></svg>`,
  prints: [
    { name: `${name}-in-a4`, size: '5 × 7 in', unit: 'in', paper: 'a4', theme: 'step-sheet', pdf: true },
  ],
  older: [],
  findings: [],
  ...more,
})

const mistake = {
  rule: 'unknown-name',
  severity: 'error',
  line: 3,
  column: 4,
  message: 'Unexpected `<b>`',
  suggestion: 'Write `base`',
} as const
const view: LibraryView = {
  title: 'At the harbour',
  lessons: [
    lesson('gulls', 'gulls bridge vellum'),
    lesson('terns', 'terns gate cafe'),
    lesson('50% #1', 'easel', { prints: [], findings: [mistake] }),
  ],
  findings: [],
  problems: [{ message: 'The disk is full', lessons: ['sea/gulls.md'] }],
}

test('words find lessons in the index, opened from the disk', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'index-'))
  writeFileSync(join(folder, 'index.html'), await indexHtml(view))
  const page = await browser().newPage()
  await page.goto(pathToFileURL(join(folder, 'index.html')).href)
  const shown = () =>
    page.$$eval('.lessons > li:not([hidden]) h2', (heads) =>
      heads.map((head) => head.textContent?.replaceAll('\u00a0', ' ')),
    )
  expect(await shown()).toEqual(['gulls', 'terns', '50% #1'])
  await page.type('#find', 'Café ga')
  expect(await shown()).toEqual(['terns'])
  expect(await page.$eval('.finder output', (output) => output.textContent)).toBe('1 lesson')
  await page.type('#find', ' whale')
  expect(await shown()).toEqual([])
  // Every letter of a name is part of the address.
  expect(
    await page.$$eval('.lessons a', (links) => links.map((link) => link.getAttribute('href'))),
  ).toContain('./sea/50%25%20%231/index.html')
  await page.close()
  rmSync(folder, { recursive: true })
}, 120_000)

test('no page breaks a rule of accessibility, and what a lesson says stays text', async () => {
  const [, , wrong] = view.lessons
  if (!wrong) throw new Error('No lesson')
  for (const html of [await indexHtml(view), await reportHtml(view), await lessonHtml(wrong, view.title)]) {
    expect(html).not.toContain('<b>')
    expect(await axeFindings(browser(), html, 900)).toEqual([])
  }
}, 120_000)
