import { type Length, minus, plus, shorter } from '../../../length/length.ts'
import { lengthCell, type Reading, report, say } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import type { Measuring } from './lengths.ts'
import { aboveZero } from './panel-length.ts'
import { acrossOf, hasPanel, highOrWide, type WrittenSheet, type WrittenStrip } from './written.ts'

/** How long the creases of a sheet's first strips are together. The base is as high, or wide, as the shut card. */
export function wholeCell(
  reading: Reading,
  { name, strips, across }: WrittenSheet,
): Cell<Length> | undefined {
  const direction = acrossOf(strips[0]?.along ?? 'width')
  const path = `${name}.${direction}`
  if (across) return lengthCell(reading, path, across.value, '0', 'down')
  if (name !== 'base') return undefined
  return reading.scope.cell(path, () => {
    const value = reading.scope.lookup(['closed', direction], { start: 0, end: 0 })
    return value.kind === 'length' ? value.value : undefined
  })
}

/** How long the creases of a strip are: as written, what its neighbours leave, or the panel that it crosses. */
export function acrossCell(measuring: Measuring, strip: WrittenStrip): Cell<Length> {
  const { reading, sheet, banks, lengths } = measuring
  const direction = acrossOf(strip.along)
  const path = `${strip.name}.${direction}`
  const written = strip.across && lengthCell(reading, path, strip.across.value, '0', 'down')
  const place = (strip.across ?? sheet.across)?.value.place ?? strip.place
  const cell = reading.scope.cell(path, () => {
    const crossed = crossedBy(measuring, strip)
    const length = written
      ? written()
      : banks[0]?.includes(strip)
        ? restOf(measuring, banks[0], strip)
        : crossed === undefined
          ? unsaid(reading, strip)
          : lengths.extent(crossed, direction)
    return length && aboveZero(reading, length, `\`${strip.name}\``, highOrWide[strip.along], place)
  })
  if (sheet.strips.length > 1) reading.scope.define(path, () => ({ kind: 'length', value: cell() }))
  return cell
}

/** What is left of the sheet for the one strip that does not say. */
function restOf(
  { reading, lengths }: Measuring,
  bank: readonly WrittenStrip[],
  strip: WrittenStrip,
): Length | undefined {
  const others = bank.filter((other) => other !== strip)
  const { whole } = lengths
  if (!whole || others.some((other) => !other.across)) return unsaid(reading, strip)
  const taken = plus(...others.map(lengths.across))
  if (others.length === 0 || shorter(taken, whole())) return minus(whole(), taken)
  tooMuch(reading, others, taken, whole())
  return undefined
}

function unsaid(reading: Reading, { name, place, along }: WrittenStrip): undefined {
  report(
    reading,
    'missing-key',
    place,
    `\`${name}\` does not say how ${highOrWide[along]} it is`,
    `Add \`${acrossOf(along)}:\` with a length`,
  )
}

/** Strips that say how high they are, all of them, and are higher together than their sheet. */
export function checkSum({ reading, lengths }: Measuring, bank: readonly WrittenStrip[]): boolean {
  if (bank.length < 2 || !lengths.whole || bank.some(({ across }) => !across)) return true
  const [taken, whole] = [plus(...bank.map(lengths.across)), lengths.whole()]
  if (!shorter(whole, taken)) return true
  tooMuch(reading, bank, taken, whole)
  return false
}

function tooMuch(reading: Reading, strips: readonly WrittenStrip[], taken: Length, whole: Length): void {
  const last = strips.at(-1)
  if (!last) return
  const names = strips.map(({ name }) => `\`${name}\``).join(' and ')
  report(
    reading,
    'sticks-out',
    last.across?.value.place ?? last.place,
    `${names} ${strips.length === 1 ? 'is' : 'are'} ${say(reading, taken)} ${highOrWide[last.along]}, but the whole sheet is ${say(reading, whole)}`,
    `Make the strips at most ${say(reading, whole)} ${highOrWide[last.along]} together`,
  )
}

/** The panel of an earlier strip that this one crosses: strips of one sheet hang together. */
function crossedBy({ sheet: { strips }, banks }: Measuring, strip: WrittenStrip): string | undefined {
  const before = strips.slice(0, strips.indexOf(strip))
  const others = before.filter((other) => !banks.some((bank) => bank.includes(other) && bank.includes(strip)))
  return strip.panels.find(({ name }) => others.some((other) => hasPanel(other, name)))?.name
}
