import { type Reading, report } from '../../reading.ts'
import type { Bank } from './lengths.ts'
import { hasPanel, type WrittenSheet, type WrittenStrip } from './written.ts'

const share = (a: WrittenStrip, b: WrittenStrip): boolean => a.panels.some(({ name }) => hasPanel(b, name))

/** The strips of a sheet in groups that lie beside each other. Strips that hang on no other one are a finding. */
export function banksOf(reading: Reading, { name, strips }: WrittenSheet): Bank[] {
  const banks = groupsOf(strips, (a, b) => a.along === b.along && share(a, b))
  const [first, ...apart] = groupsOf(strips, share)
  for (const [strip] of apart)
    if (first && strip)
      report(
        reading,
        'no-shared-panel',
        strip.place,
        `\`${strip.name}\` shares no panel with the other strips of \`${name}\`, so they are not of one sheet`,
        `Name one of their panels in \`${strip.name}\` too, or describe it under \`sheets:\``,
      )
  return apart.length === 0 ? banks : []
}

/** Groups of things that hang together, in the order of their first ones. */
export function groupsOf<T>(all: readonly T[], joined: (a: T, b: T) => boolean): T[][] {
  const left = new Set(all)
  return all.flatMap((start) => {
    if (!left.delete(start)) return []
    const group = [start]
    for (const one of group)
      for (const other of left) if (joined(one, other) && left.delete(other)) group.push(other)
    return [group.sort((a, b) => all.indexOf(a) - all.indexOf(b))]
  })
}
