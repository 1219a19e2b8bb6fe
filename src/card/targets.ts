import { suggestWord } from '../length/finding.ts'
import { type Length, minus, type Size } from '../length/length.ts'
import { attempt, type Reading, report } from './reading.ts'
import type { Plate, Side } from './structure.ts'
import type { Entry } from './yaml.ts'

/** A plate that something can be put on: its rectangle in its piece's frame, and the side that is taken. */
export interface Target {
  readonly plate: string
  readonly left: Length
  readonly bottom: Length
  readonly size: Size
  readonly side: Side
}

/** The plates a name stands for; undefined when there is no such name. Asking may throw for a broken name. */
export type FindTargets = (name: string) => readonly Target[] | undefined

export function targetOf(plate: Plate, side: Side): Target {
  const xs = plate.outline.map((p) => p.x)
  const ys = plate.outline.map((p) => p.y)
  const least = (list: readonly Length[]) => list.reduce((a, b) => (b.lt(a) ? b : a))
  const most = (list: readonly Length[]) => list.reduce((a, b) => (b.gt(a) ? b : a))
  const [left, bottom] = [least(xs), least(ys)]
  return {
    plate: plate.name,
    left,
    bottom,
    size: { width: minus(most(xs), left), height: minus(most(ys), bottom) },
    side,
  }
}

/** The names in `on: floor` or `on: [left tab, right tab]`, with their entries. */
export function namesIn(entry: Entry | undefined): (Entry & { kind: 'text' })[] {
  const items = entry?.kind === 'list' ? entry.items : entry ? [entry] : []
  return items.filter((item) => item.kind === 'text')
}

/** The plates that `on` names; each unknown name is a finding. */
export function targetsOn(
  reading: Reading,
  on: Entry | undefined,
  find: FindTargets,
  known: () => readonly string[],
): Target[] {
  return namesIn(on).flatMap((name) => {
    // Undefined when looking it up went wrong, which has been reported; none when there is no such name.
    const found = attempt(reading, name, (word) => find(word.trim()) ?? [])
    if (found?.length === 0)
      report(
        reading,
        'unknown-name',
        name.place,
        `Unexpected name \`${name.text}\`, expected a panel, a layer or a span`,
        suggestWord(name.text, known()),
      )
    return found ?? []
  })
}
