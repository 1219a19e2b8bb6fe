import { expect, test } from 'vitest'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { filled } from './lesson.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const text = (make: string) =>
  `---\ntitle: Shells\n---\n\n\`\`\`card\nfold: side\nclosed: 5 x 7 in\nenvelope: ${make}\n\`\`\`\n\n1. Cut the base to {base.size}.\n`

test.each([
  ['diagonal', 1200],
  ['diagonal', 390],
  ['side seam', 1200],
  ['side seam', 390],
])('a %s envelope that no step makes is drawn below its measures, %i px wide', async (make, width) => {
  const lesson = filled(text(make))
  const { view } = handoutView(lesson, figuresOf(lesson))
  const page = await browser().newPage()
  await page.setViewport({ width, height: 900 })
  await page.setContent(await handoutHtml(view, await loadTheme('step-sheet'), { paper: 'a4' }))
  const boxes = (await page.evaluate(`['.envelope .facts', '.envelope-figure'].map((one) => {
    const { top, bottom, left, right } = document.querySelector(one).getBoundingClientRect()
    return { top, bottom, left, right }
  })`)) as { top: number; bottom: number; left: number; right: number }[]
  await page.close()
  const [facts, figure] = boxes
  expect(facts?.bottom).toBeLessThan(figure?.top ?? 0)
  expect(figure?.right).toBeLessThanOrEqual(width)
})
