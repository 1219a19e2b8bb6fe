import { type Length, minus, plus, zero } from '../../../length/length.ts'
import { type Reading, report } from '../../reading.ts'
import { type Box, boxOf, meets, movedBox, round, type Stretch } from './box.ts'
import type { Bank, Lengths } from './lengths.ts'
import { type Along, hasPanel, type WrittenStrip } from './written.ts'

/** A strip with the rectangles that its panels have on the sheet, in order. */
export interface PlacedStrip {
  readonly strip: WrittenStrip
  readonly boxes: readonly (readonly [panel: string, box: Box])[]
}

/** The strip moved along a direction, and across it. */
export const movedStrip = (
  { strip, boxes }: PlacedStrip,
  along: Along,
  by: Length,
  across: Length,
): PlacedStrip => ({
  strip,
  boxes: boxes.map(([name, box]) => [name, movedBox(box, along, by, across)]),
})

/** The rectangle round each panel. Where a strip crosses others, those say how large the panel is. */
export function boxesOf(placed: readonly PlacedStrip[]): Map<string, Box> {
  const all = new Map<string, { along: Along; box: Box }>()
  for (const { strip, boxes } of placed)
    for (const [name, box] of boxes) {
      const before = all.get(name)
      if (!before) all.set(name, { along: strip.along, box })
      else if (before.along === strip.along) all.set(name, { ...before, box: round([before.box, box]) })
    }
  return new Map([...all].map(([name, { box }]) => [name, box]))
}

/**
 * Lays strips beside each other: the first one on top, or on the left. A panel that two neighbours share begins or ends
 * in one line in both; what is last in both ends there.
 */
export function placeBank(reading: Reading, bank: Bank, lengths: Lengths): PlacedStrip[] | undefined {
  const runs: Map<string, Stretch>[] = []
  for (const [i, strip] of bank.entries()) {
    const own = runOf(strip, lengths)
    const before = bank[i - 1]
    const by = before ? shiftOf(strip, own, before, runs[i - 1] ?? own) : zero
    if (!by && before) {
      const [one, other] = [before.name, strip.name]
      report(
        reading,
        'no-shared-panel',
        strip.place,
        `\`${other}\` shares no panel with \`${one}\`, which lies beside it`,
        `List the strips as they lie on the sheet, from ${strip.along === 'width' ? 'top to bottom' : 'left to right'}`,
      )
      return undefined
    }
    const move = by ?? zero
    runs.push(
      new Map([...own].map(([name, { from, to }]) => [name, { from: plus(from, move), to: plus(to, move) }])),
    )
  }
  const placed = bank.map((strip, i): PlacedStrip => {
    const run = runs[i] ?? new Map<string, Stretch>()
    // Upright creases: what is listed first lies on top, so it is the later ones that it stands on.
    const under = strip.along === 'width' ? bank.slice(i + 1) : bank.slice(0, i)
    const from = plus(...under.map(lengths.across))
    const across = { from, to: plus(from, lengths.across(strip)) }
    return { strip, boxes: [...run].map(([name, own]) => [name, boxOf(strip.along, own, across)]) }
  })
  return placed
}

/** Where each panel of a strip begins and ends, from the start of the strip. */
function runOf(strip: WrittenStrip, lengths: Lengths): Map<string, Stretch> {
  let end = zero
  return new Map(
    strip.panels.map(({ name }) => {
      const from = end
      end = plus(end, lengths.panel(strip, name))
      return [name, { from, to: end }]
    }),
  )
}

/** How far a strip starts behind zero, so that the panels that it shares with its neighbour meet. */
function shiftOf(
  strip: WrittenStrip,
  own: ReadonlyMap<string, Stretch>,
  neighbour: WrittenStrip,
  other: ReadonlyMap<string, Stretch>,
): Length | undefined {
  const shared = strip.panels.flatMap(({ name }) => {
    const [mine, theirs] = [own.get(name), other.get(name)]
    return mine && theirs && hasPanel(neighbour, name) ? [{ name, mine, theirs }] : []
  })
  const [first] = shared
  if (!first) return undefined
  const [starts, ends] = [minus(first.theirs.from, first.mine.from), minus(first.theirs.to, first.mine.to)]
  const isLast = [strip, neighbour].every(({ panels }) => panels.at(-1)?.name === first.name)
  const isFirst = [strip, neighbour].every(({ panels }) => panels[0]?.name === first.name)
  const tried = isLast && !isFirst ? [ends, starts] : [starts, ends]
  const fits = (by: Length): boolean =>
    shared.every(({ mine, theirs }) => meets({ from: plus(mine.from, by), to: plus(mine.to, by) }, theirs))
  return tried.find(fits) ?? tried[0]
}
