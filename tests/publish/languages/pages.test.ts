import { expect, test } from 'vitest'
import { readLesson } from '../../../src/lesson/read.ts'
import { unitsOf } from '../../../src/lesson/sizes/offered.ts'
import { handoutHtml } from '../../../src/publish/html.ts'
import { screenView } from '../../../src/publish/screen/view.ts'
import { sizeChartHtml } from '../../../src/publish/size-chart.ts'
import { sizeChartView } from '../../../src/publish/size-chart-view.ts'
import { lessonText } from '../../../src/publish/text/lesson-text.ts'
import { leftOutText, parts } from '../../../src/publish/text/parts.ts'
import { loadScreenTheme, loadSizeChartTheme } from '../../../src/publish/theme.ts'
import { tracingHtml } from '../../../src/publish/tracing.ts'
import { sizeChart } from '../../../src/workshop/size-chart.ts'
import { sizeChartCsv } from '../../../src/workshop/size-chart-csv.ts'
import { sizeChartText } from '../../../src/workshop/size-chart-text.ts'
import { type Foreign, foreign, invented, inventedText } from './invented.ts'
import { saidIn, strange } from './words.ts'

const chartOf = (lang: Foreign) => {
  const own = invented(lang)
  return { own, chart: sizeChart(readLesson(inventedText(lang)), own, unitsOf(own.frontMatter)) }
}

test.each(foreign)('templates in %s', async (lang) => {
  const html = await tracingHtml(invented(lang), 'a4', 'step-sheet')
  expect(html).toContain(`<html lang="${lang}">`)
  expect(strange(saidIn(html), lang)).toEqual([])
})

test.each(foreign)('the class screen in %s, with what its program says', async (lang) => {
  const { view } = screenView(invented(lang))
  const html = await handoutHtml(view, await loadScreenTheme('step-sheet'), { paper: 'a4' })
  const { words, ...told } = JSON.parse(view.told.html)
  expect(Object.keys(told)).toEqual(['title', 'steps'])
  const said = saidIn(html.replace(view.told.html, ''))
  expect(strange(said, lang)).toEqual([])
  expect(
    strange(
      Object.values(words)
        .join(' ')
        .replace(/\{\w+\}/g, ''),
      lang,
    ),
  ).toEqual([])
})

test.each(foreign)('the chart of sizes in %s, printed, in a terminal and as a table', async (lang) => {
  const { own, chart } = chartOf(lang)
  const view = sizeChartView({ ...chart, findings: [] }, own)
  const html = await sizeChartHtml(view, await loadSizeChartTheme('step-sheet'), 'a4')
  for (const text of [saidIn(html), sizeChartText({ ...chart, findings: [] }), sizeChartCsv(chart)])
    expect(strange(text, lang)).toEqual([])
  // A country that learns in millimetres has them first.
  expect(view.tables[0]?.units.map(({ unit }) => unit)).toEqual(['mm', 'in'])
})

test.each(foreign)('a lesson as text in %s, and what may be left out of it', (lang) => {
  const { own, chart } = chartOf(lang)
  const options = { chapters: true, sizes: { ...chart, findings: [] } }
  for (const as of ['text', 'md'] as const) {
    const { text } = lessonText(own, { as, ...options })
    expect(strange(text, lang)).toEqual([])
  }
  expect(strange(leftOutText(parts, own.wording), lang)).toEqual([])
})
