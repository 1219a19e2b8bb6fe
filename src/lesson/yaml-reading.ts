import { type Reading, report } from '../card/reading.ts'
import { makeScope } from '../card/scope.ts'
import type { Entry } from '../card/yaml.ts'
import type { Finding } from '../length/finding.ts'
import { usualGrid } from '../length/grid.ts'
import { wordingOf } from '../wording/wording.ts'

/** What the readers of a YAML text outside of card blocks share: there are no names in it. */
export const readingOf = (findings: Finding[]): Reading => ({
  scope: makeScope(),
  findings,
  unit: 'in',
  grid: usualGrid.in,
  wording: wordingOf('en', 'in'),
  places: new Map(),
})

/** The texts of a list, or of a text alone; anything else is a finding. */
export function textsOf(
  reading: Reading,
  entry: Entry | undefined,
  wanted: string,
  cure: string,
): (Entry & { kind: 'text' })[] {
  if (entry === undefined || entry.kind === 'empty') return []
  const items = entry.kind === 'list' ? entry.items : [entry]
  return items.flatMap((item) => {
    if (item.kind === 'text') return [item]
    report(reading, 'value', item.place, wanted, cure)
    return []
  })
}
