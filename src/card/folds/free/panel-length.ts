import type { Place } from '../../../length/finding.ts'
import { type Length, minus, plus, shorter, zero } from '../../../length/length.ts'
import { lengthCell, type Reading, report, say } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import type { Measuring } from './lengths.ts'
import { hasPanel, type WrittenPanel, type WrittenStrip } from './written.ts'

/**
 * How long a panel is in a strip. On the ruler it goes down: a panel that is a half or a third of something must fit
 * inside it, and what is left over is given to another one by name. A panel that an earlier strip has needs no length: it
 * ends in one line with that.
 */
export function panelCell(measuring: Measuring, strip: WrittenStrip, panel: WrittenPanel): Cell<Length> {
  const { reading, sheet } = measuring
  const { name, place, length } = panel
  const path = sheet.strips.length > 1 ? `${strip.name}.${name}` : `${name}.${strip.along}`
  const written = length && lengthCell(reading, path, length, '0', 'down')
  const cell = reading.scope.cell(path, () => {
    const own = written ? written() : elsewhere(measuring, strip, name)
    if (own) return aboveZero(reading, own, `\`${name}\``, 'long', length?.place ?? place)
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

/** The length of a panel that an earlier strip has; undefined when none has. */
function elsewhere(
  { sheet: { strips }, lengths }: Measuring,
  strip: WrittenStrip,
  name: string,
): Length | undefined {
  const before = strips.slice(0, strips.indexOf(strip)).filter((other) => hasPanel(other, name))
  const beside = before.find((other) => other.along === strip.along)
  if (!beside) return before.length > 0 ? lengths.extent(name, strip.along) : undefined
  const first = strip.panels.find((panel) => hasPanel(beside, panel.name))?.name ?? name
  /** From where the first panel that both have begins, to where this one does. */
  const way = (one: WrittenStrip): Length => {
    const names = one.panels.map((panel) => panel.name)
    const between = names.slice(names.indexOf(first), names.indexOf(name))
    return plus(...between.map((panel) => lengths.panel(one, panel)))
  }
  return plus(minus(way(beside), way(strip)), lengths.panel(beside, name))
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
