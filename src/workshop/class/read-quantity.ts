import { attempt, type Reading, report } from '../../card/reading.ts'
import type { Entry } from '../../card/yaml.ts'
import { areaOf, readArea } from '../../length/area.ts'
import { sheetSize } from '../../length/paper.ts'
import { parseMeasure } from '../../length/parse.ts'
import { readSize } from '../../length/text.ts'
import { readCounted } from '../../lesson/count-text.ts'
import { readDose } from '../../lesson/dose.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import type { Quantity } from '../needs.ts'
import { countIn, lengthIn } from './amounts.ts'

/**
 * A quantity without names: `3` things, `30 drops`, `2 m`, `60 g`, `40 cm²`, or `8 x 10 in` of a sheet; otherwise a
 * finding, and undefined.
 */
export function quantityAlone(
  reading: Reading,
  entry: Entry | undefined,
  what: string,
): Quantity | undefined {
  const cure = `Write how much, such as \`${what}: 3\`, \`${what}: 2 m\` or \`${what}: 60 g\``
  const [item] = textsOf(reading, entry, `\`${what}\` wants how much there is`, cure)
  if (!item) return undefined
  const { text } = item
  if (/^\s*-?\d+\s*$/.test(text)) {
    const count = countIn(reading, item, what, 0)
    return count === undefined ? undefined : { kind: 'count', count }
  }
  const counted = readCounted(text)
  if (counted) return { kind: 'count', ...counted }
  const dose = readDose(text)
  if (dose) return { kind: 'dose', dose }
  const area = readArea(text)
  if (area) return { kind: 'area', area }
  if (isSize(text)) {
    const size = attempt(reading, item, readSize)
    if (!size) return undefined
    if (size.width.gte(0) && size.height.gte(0)) return { kind: 'area', area: areaOf(size) }
    report(reading, 'value', item.place, `\`${what}\` cannot be less than nothing`, cure)
    return undefined
  }
  if (/\d/.test(text)) {
    const length = lengthIn(reading, item, what)
    return length && { kind: 'length', length }
  }
  report(reading, 'value', item.place, `\`${text.trim()}\` is no amount`, cure)
  return undefined
}

function isSize(text: string): boolean {
  if (sheetSize(text)) return true
  try {
    return parseMeasure(text).expression.kind === 'size'
  } catch {
    return false
  }
}
