import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { tracingHtml, tracingPdf } from '../../src/publish/tracing.ts'
import { measures } from '../../src/workshop/measures.ts'
import { lineBoxes } from './pdf-lines.ts'
import { openPdf, pageSizes, pageTexts } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const lesson = fillLesson(
  readLesson(readFileSync(new URL('../../lessons/harbour-lights.md', import.meta.url), 'utf8')),
)
const toMm = (points: number): number => (points / 72) * 25.4
/** Chromium rounds a page to whole pixels of 1/96 in, so that lengths in it are off by up to so much of themselves. */
const near = (found: number, wanted: number): boolean => Math.abs(found - wanted) < 0.02 + wanted * 0.001

describe.each(['a4', 'letter'] as const)('on %s', (paper) => {
  const print = async () =>
    openPdf(await tracingPdf(await tracingHtml(lesson, paper, 'step-sheet'), browser()))

  test('it is not scaled, and its rulers measure 100 mm and 4 in on every page', async () => {
    const pdf = await print()
    expect(await pdf.getViewerPreferences()).toMatchObject({ PrintScaling: 'None' })
    for (let page = 1; page <= pdf.numPages; page++) {
      const level = (await lineBoxes(pdf, page))
        .filter(({ height }) => height < 0.01)
        .map(({ width }) => toMm(width))
      for (const length of [100, 101.6])
        expect(
          level.filter((x) => near(x, length)),
          `page ${page}: ${level}`,
        ).toHaveLength(1)
    }
  })

  test('each piece is there at its real size, or in parts', async () => {
    const pdf = await print()
    const found = (
      await Promise.all(Array.from({ length: pdf.numPages }, (_, i) => lineBoxes(pdf, i + 1)))
    ).flat()
    for (const { name, width, height } of measures(lesson).cards[0]?.pieces ?? []) {
      const sides = [width.mm, height.mm].sort((a, b) => a - b)
      const same = found.filter((box) => {
        const own = [toMm(box.width), toMm(box.height)].sort((a, b) => a - b)
        return own.every((side, i) => near(side, sides[i] ?? 0))
      })
      expect(same.length, name).toBeGreaterThan(0)
    }
    const texts = await pageTexts(pdf)
    for (const part of [1, 2, 3, 4]) expect(texts.join(' ')).toContain(`envelope, part ${part} of 4`)
  })

  test('nothing is drawn where no printer reaches', async () => {
    const pdf = await print()
    const sizes = await pageSizes(pdf)
    for (let page = 1; page <= pdf.numPages; page++) {
      const [width, height] = sizes[page - 1] ?? [0, 0]
      // The page itself is painted from edge to edge.
      const drawn = (await lineBoxes(pdf, page)).filter(
        (box) => box.width < width - 1 && box.height < height - 1,
      )
      const least = (9 / 25.4) * 72
      for (const box of drawn) {
        expect(box.left).toBeGreaterThan(least)
        expect(box.bottom).toBeGreaterThan(least)
        expect(width - box.left - box.width).toBeGreaterThan(least)
        expect(height - box.bottom - box.height).toBeGreaterThan(least)
      }
    }
  })
})
