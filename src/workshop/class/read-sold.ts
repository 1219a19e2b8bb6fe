import { attempt, type Reading, report } from '../../card/reading.ts'
import type { Entry } from '../../card/yaml.ts'
import { readSize } from '../../length/text.ts'
import { readCounted } from '../../lesson/count-text.ts'
import { readDose } from '../../lesson/dose.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import { countIn, lengthIn } from './amounts.ts'
import { containers, type Sold } from './sold.ts'

/** In what a shop sells a supply; each is a key of the class file. */
export const saleKeys = ['roll', 'pack', 'sheet', ...containers] as const

/** How a supply is sold, as one key says it; otherwise a finding, and undefined. */
export function soldIn(
  reading: Reading,
  entry: Entry | undefined,
  key: (typeof saleKeys)[number],
): Sold | undefined {
  if (key === 'roll') {
    const length = lengthIn(reading, entry, 'roll')
    return length?.gt(0) ? { kind: 'roll', length } : undefined
  }
  if (key === 'pack') {
    const count = countIn(reading, entry, 'pack', 1)
    return count === undefined ? undefined : { kind: 'pack', count }
  }
  return key === 'sheet' ? sheetIn(reading, entry) : filledIn(reading, entry, key)
}

function sheetIn(reading: Reading, entry: Entry | undefined): Sold | undefined {
  const cure = 'Write its size, such as `sheet: 8 x 12 in`'
  const [text] = textsOf(reading, entry, '`sheet` wants a size', cure)
  const size = text && attempt(reading, text, readSize)
  if (!text || !size) return undefined
  if (size.width.gt(0) && size.height.gt(0)) return { kind: 'sheet', size }
  report(reading, 'value', text.place, 'A sheet is larger than nothing', cure)
  return undefined
}

function filledIn(
  reading: Reading,
  entry: Entry | undefined,
  container: (typeof containers)[number],
): Sold | undefined {
  const cure = `Write what is in it, such as \`${container}: 120 ml\`, \`${container}: 100 g\` or \`${container}: 300 drops\``
  const [text] = textsOf(reading, entry, `\`${container}\` wants what is in it`, cure)
  if (!text) return undefined
  const [dose, counted] = [readDose(text.text), readCounted(text.text)]
  if (dose?.amount.gt(0)) return { kind: 'container', container, holds: { kind: 'dose', dose } }
  if (counted && counted.count > 0)
    return { kind: 'container', container, holds: { kind: 'count', ...counted } }
  report(reading, 'value', text.place, `\`${text.text.trim()}\` is nothing that is in a ${container}`, cure)
  return undefined
}
