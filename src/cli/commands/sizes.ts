import { extname } from 'node:path'
import { turnedTo } from '../../card/shape.ts'
import { hasErrors } from '../../length/finding.ts'
import { mainCard } from '../../lesson/figure-target.ts'
import { fillLesson } from '../../lesson/fill.ts'
import type { FilledLesson, OtherSize } from '../../lesson/lesson.ts'
import { readLesson } from '../../lesson/read.ts'
import { unitsOf } from '../../lesson/sizes/offered.ts'
import { sizeChart } from '../../workshop/size-chart.ts'
import { sizeChartText } from '../../workshop/size-chart-text.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import type { Options } from '../flags.ts'
import { tellFindings } from '../lesson-file.ts'
import { exitCodes } from '../problems.ts'
import { readText } from '../read-text.ts'

/**
 * `sizes LESSON`: to the terminal, or as the kind of file that `-o` names. `--closed` adds a size. A size that does not
 * work stands in the chart with the reason; then the exit code says so.
 */
export const sizes: Action = async ([path = ''], options, outside) => {
  const lesson = readLesson(await readText(path, outside))
  const own = fillLesson(lesson)
  if (!tellFindings(path, own.findings, options, outside)) return exitCodes.lessonErrors
  const units = options.units ? [options.units] : unitsOf(own.frontMatter)
  const chart = sizeChart(lesson, own, units, sizeAdded(options, own))
  const { output = '', json } = options
  const ending = extname(output).toLowerCase()
  if (json) {
    const { sizeChartJson } = await import('../../workshop/size-chart-json.ts')
    await answer(asJson(sizeChartJson(chart)), options, outside)
  } else if (output === '' || ending === '.txt') await answer(sizeChartText(chart), options, outside)
  else if (ending === '.md') {
    const { listingMarkdown } = await import('../../workshop/listing-markdown.ts')
    const { sizeChartListing } = await import('../../workshop/size-chart-listing.ts')
    await answer(listingMarkdown(sizeChartListing(chart)), options, outside)
  } else if (ending === '.csv') {
    const { sizeChartCsv } = await import('../../workshop/size-chart-csv.ts')
    await answer(sizeChartCsv(chart), options, outside)
  } else {
    const { printSizeChart } = await import('./printing.ts')
    await printSizeChart(chart, own, path, options, outside)
  }
  // In JSON they are part of the answer.
  if (!json) tellFindings(path, chart.findings, options, outside)
  return hasErrors(chart.findings) ? exitCodes.lessonErrors : exitCodes.done
}

/** The size that the command line adds: one of its own, or that of the lesson turned. */
function sizeAdded({ closed }: Options, own: FilledLesson): OtherSize[] {
  const card = mainCard(own.cards.map((proven) => proven.card))
  if (!closed || !card) return []
  const size = closed.size ?? (closed.turned && turnedTo(card.closed, closed.turned))
  return size ? [{ text: closed.text, size, place: { line: 1, column: 1 } }] : []
}
