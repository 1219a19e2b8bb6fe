import { attempt, type Reading, report } from '../card/reading.ts'
import type { Entry } from '../card/yaml.ts'
import type { Place } from '../length/finding.ts'
import { readSize } from '../length/text.ts'
import type { FrontMatter, StockSheet } from './lesson.ts'
import { textsOf } from './yaml-reading.ts'

const example = 'Write `sheets: 12 x 12 in`, or one for each stock, such as `sheets: {blue card: 12 x 12 in}`'

/** The sheets that the stocks of a lesson are cut from: one for all, or by stock. */
export function sheetsOf(reading: Reading, entry: Entry | undefined): Pick<FrontMatter, 'sheets'> {
  if (entry === undefined || entry.kind === 'empty') return {}
  const sheets =
    entry.kind === 'map'
      ? [...entry.fields.values()].flatMap(({ key, keyPlace, value }) =>
          sizeOf(reading, value).map(({ size }): StockSheet => ({ stock: key, size, place: keyPlace })),
        )
      : sizeOf(reading, entry).map(({ size, place }): StockSheet => ({ size, place }))
  return sheets.length > 0 ? { sheets } : {}
}

function sizeOf(reading: Reading, entry: Entry): { size: StockSheet['size']; place: Place }[] {
  const [text, ...more] = textsOf(reading, entry, 'A sheet wants its size', example)
  const [second] = more
  if (second) report(reading, 'value', second.place, 'A stock has one sheet here', example)
  const size = text && attempt(reading, text, readSize)
  if (!text || !size) return []
  if (size.width.gt(0) && size.height.gt(0)) return [{ size, place: text.place }]
  report(reading, 'value', text.place, 'A sheet is larger than nothing', example)
  return []
}
