import { expect, test } from 'vitest'
import { makeHandout, printMade } from '../../src/publish/handout.ts'
import { disk } from '../../src/publish/outside.ts'
import { filled, pierText } from './lesson.ts'
import { openPdf } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()

async function printed(text: string, theme: string) {
  const { page, findings } = await makeHandout(filled(text), { paper: 'a4', theme }, disk)
  if (!page) throw new Error(JSON.stringify(findings))
  return printMade(page, browser())
}

test('a lesson that goes beyond the one page of a theme is told, with a cure', async () => {
  const caution = ':::caution\nKeep the harbour cat off the glue, and the glue off the harbour cat.\n:::\n\n'
  const { findings, pdf } = await printed(`${pierText}\n${caution.repeat(60)}`, 'card')
  expect((await openPdf(pdf)).numPages).toBe(2)
  expect(findings).toMatchObject([
    { rule: 'too-long-for-one-page', severity: 'warning', message: expect.stringContaining('6 pt') },
  ])
  expect(findings[0]?.suggestion).toContain('--theme booklet')
  expect((await printed(pierText, 'card')).findings).toEqual([])
})

test('the foot of large print is on one line: the title, the size and the page', async () => {
  const { pdf, findings } = await printed(pierText, 'large-print')
  expect(findings).toEqual([])
  const { items } = await (await (await openPdf(pdf)).getPage(1)).getTextContent()
  // Baselines in the lower margin of 14 mm, from the foot of the page.
  const foot = items.flatMap((item) =>
    'str' in item && item.str.trim() !== '' && item.transform[5] < (14 * 72) / 25.4 ? [item] : [],
  )
  expect(new Set(foot.map(({ transform }) => Math.round(transform[5]))).size).toBe(1)
  const said = foot
    .map(({ str }) => str)
    .join(' ')
    .replace(/\s+/g, ' ')
  expect(said).toMatch(/8 × 6 in · page 1 of \d+/)
})
