import type { Place } from '../../../length/finding.ts'
import { type Length, shorter, zero } from '../../../length/length.ts'
import { lengthCell, type Reading, report, say } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import type { Measuring } from './lengths.ts'
import { hasPanel, type WrittenPanel, type WrittenStrip } from './written.ts'

/** How long a panel is in a strip: as written, or as long as in the strip that has it first. */
export function panelCell(
  { reading, sheet: { strips }, lengths }: Measuring,
  strip: WrittenStrip,
  { name, place, length }: WrittenPanel,
): Cell<Length> {
  const path = strips.length > 1 ? `${strip.name}.${name}` : `${name}.${strip.along}`
  const written = length && lengthCell(reading, path, length, '0', 'nearest')
  const cell = reading.scope.cell(path, () => {
    if (written) return aboveZero(reading, written(), `\`${name}\``, 'long', length.place)
    const before = strips.slice(0, strips.indexOf(strip)).filter((other) => hasPanel(other, name))
    const alike = before.find((other) => other.along === strip.along)
    if (alike) return lengths.panel(alike, name)
    if (before.length > 0) return lengths.extent(name, strip.along)
    report(
      reading,
      'missing-key',
      place,
      `\`${name}\` has no length`,
      `Write one, such as \`${name}: 1 1/2 in\` or \`${name}: 40 mm\``,
    )
    return undefined
  })
  reading.scope.define(path, () => ({ kind: 'length', value: cell() }))
  return cell
}

export function aboveZero(
  reading: Reading,
  length: Length,
  what: string,
  word: string,
  place: Place,
): Length | undefined {
  if (shorter(zero, length)) return length
  report(
    reading,
    'impossible-size',
    place,
    `${what} is ${say(reading, length)} ${word}`,
    'Give every panel a length above zero',
  )
  return undefined
}
