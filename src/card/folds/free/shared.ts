import { minus, mm, same } from '../../../length/length.ts'
import { type Reading, report, say } from '../../reading.ts'
import type { PlacedStrip } from './bank-place.ts'
import { type Box, overlap, round, stretchOf } from './box.ts'
import { type Along, acrossOf, type WrittenStrip } from './written.ts'

/** A panel as one strip has it. */
interface Part {
  readonly strip: WrittenStrip
  readonly box: Box
}

/** Whether panels that several strips share are one plate, and no two panels lie on each other. */
export function checkSheet(reading: Reading, placed: readonly PlacedStrip[]): boolean {
  const before = reading.findings.length
  const parts = new Map<string, Part[]>()
  for (const { strip, boxes } of placed)
    for (const [name, box] of boxes) parts.set(name, [...(parts.get(name) ?? []), { strip, box }])
  for (const [name, own] of parts) checkShared(reading, name, own)
  if (reading.findings.length === before) checkApart(reading, [...parts])
  return reading.findings.length === before
}

function checkShared(reading: Reading, name: string, parts: readonly Part[]): void {
  const [first, ...others] = parts
  if (!first) return
  const beside = others.filter(({ strip }) => strip.along === first.strip.along)
  const ends = (part: Part) => stretchOf(part.box, part.strip.along)
  const inLine = (which: 'from' | 'to') => beside.every((part) => same(ends(part)[which], ends(first)[which]))
  const odd = beside.find((part) => !same(ends(part).from, ends(first).from)) ?? beside[0]
  if (odd && !inLine('from') && !inLine('to')) elsewhere(reading, name, first, odd)
  const gap = beside.find((part, i) => !touches(part.box, (beside[i - 1] ?? first).box, part.strip.along))
  if (gap)
    report(
      reading,
      'shared-panel',
      placeIn(gap.strip, name),
      `Another strip lies between the parts of \`${name}\`, and does not have it`,
      `Name \`${name}\` in the strip between too, or give its parts different names`,
    )
  // Where strips cross, the panel reaches as far in their direction as the first ones make it.
  const box = round([first, ...beside].map((part) => part.box))
  const crossing = others.find((part) => {
    const [own, there] = [ends(part), stretchOf(box, part.strip.along)]
    return part.strip.along !== first.strip.along && !(same(own.from, there.from) && same(own.to, there.to))
  })
  if (crossing) elsewhere(reading, name, { ...first, box }, crossing)
}

function elsewhere(reading: Reading, name: string, first: Part, other: Part): void {
  const { along } = other.strip
  const [one, two] = [first, other].map(({ strip, box }) => {
    const { from, to } = stretchOf(box, along)
    return `from ${say(reading, from)} to ${say(reading, to)} in \`${strip.name}\``
  })
  const panel = other.strip.panels.find((own) => own.name === name)
  const off = minus(stretchOf(other.box, along).from, stretchOf(first.box, along).from)
  report(
    reading,
    'shared-panel',
    placeIn(other.strip, name),
    `\`${name}\` reaches ${one}, but ${two}`,
    panel?.length && first.strip.along === along
      ? `Write \`${name}:\` without a length in \`${other.strip.name}\`, and it ends where it does in \`${first.strip.name}\``
      : `Make the panels before it ${say(reading, mm(off.abs()))} ${off.gt(0) ? 'shorter' : 'longer'} in \`${other.strip.name}\``,
  )
}

const placeIn = ({ panels, place }: WrittenStrip, name: string) =>
  panels.find((panel) => panel.name === name)?.place ?? place

/** Whether the parts of a panel in two strips lie against each other. */
function touches(a: Box, b: Box, along: Along): boolean {
  const [p, q] = [stretchOf(a, acrossOf(along)), stretchOf(b, acrossOf(along))]
  return same(p.to, q.from) || same(q.to, p.from)
}

function checkApart(reading: Reading, parts: readonly (readonly [string, readonly Part[]])[]): void {
  for (const [i, [name, own]] of parts.entries())
    for (const [other, theirs] of parts.slice(i + 1)) {
      const clash = theirs.find((part) => own.some(({ box }) => overlap(box, part.box)))
      if (clash)
        report(
          reading,
          'overlap',
          placeIn(clash.strip, other),
          `\`${name}\` and \`${other}\` lie on each other on the flat sheet, so they cannot be cut from one`,
          'Make one of them shorter, or describe one of them under `sheets:` and stick it on',
        )
    }
}
