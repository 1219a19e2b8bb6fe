import { fitInside } from '../../../length/grid.ts'
import { type Length, minus, part, plus, same, shorter, zero } from '../../../length/length.ts'
import { type Reading, report, say } from '../../reading.ts'
import { boxesOf, movedStrip, type PlacedStrip } from './bank-place.ts'
import { type Box, lengthOf, stretchOf } from './box.ts'
import { type Along, acrossOf, hasPanel, highOrWide, type WrittenStrip } from './written.ts'

/** A panel where strips meet: where it is in those that are to be placed, and where it is on the sheet. */
interface Crossing {
  readonly name: string
  readonly strip: WrittenStrip
  /** How many of them have it. */
  readonly count: number
  readonly mine: Box
  readonly there: Box
}

/** Brings strips to the panel where they cross others. One that is narrower than the panel lies in its middle. */
export function cross(
  reading: Reading,
  own: readonly PlacedStrip[],
  known: ReadonlyMap<string, Box>,
): PlacedStrip[] | undefined {
  const crossing = crossingOf(own, known)
  if (!crossing) return undefined
  const { strip, mine, there } = crossing
  const across = acrossOf(strip.along)
  const over = (way: Along): Length => minus(lengthOf(stretchOf(there, way)), lengthOf(stretchOf(mine, way)))
  const isLong = same(over(strip.along), zero)
  if (!isLong || shorter(over(across), zero)) {
    misfit(reading, crossing, isLong ? across : strip.along)
    return undefined
  }
  const from = (way: Along): Length => minus(stretchOf(there, way).from, stretchOf(mine, way).from)
  const aside = fitInside(part(over(across), 2), reading.grid)
  return own.map((one) => movedStrip(one, strip.along, from(strip.along), plus(from(across), aside)))
}

function crossingOf(own: readonly PlacedStrip[], known: ReadonlyMap<string, Box>): Crossing | undefined {
  const [found] = [...boxesOf(own)].flatMap(([name, mine]): Crossing[] => {
    const there = known.get(name)
    const [first, ...others] = own.filter((one) => hasPanel(one.strip, name))
    return there && first ? [{ name, strip: first.strip, count: others.length + 1, mine, there }] : []
  })
  return found
}

function misfit(reading: Reading, { name, strip, count, mine, there }: Crossing, way: Along): void {
  const word = highOrWide[acrossOf(way)]
  const [length, expected] = [mine, there].map((box) => say(reading, lengthOf(stretchOf(box, way))))
  const isLong = way === strip.along
  const written = isLong ? strip.panels.find((panel) => panel.name === name)?.length : strip.across?.value
  report(
    reading,
    'shared-panel',
    written?.place ?? strip.place,
    `\`${name}\` is ${expected} ${word}, but \`${strip.name}\`, which crosses it, is ${length} ${word} there`,
    isLong
      ? `Write \`${name}:\` without a length in \`${strip.name}\`, since it is known already`
      : `Make ${count > 1 ? 'all strips that cross it' : `\`${strip.name}\``} at most ${expected} ${word}${count > 1 ? ' together' : ''}`,
  )
}
