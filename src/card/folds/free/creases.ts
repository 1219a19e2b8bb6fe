import { same } from '../../../length/length.ts'
import { type Reading, report } from '../../reading.ts'
import { point } from '../../strip.ts'
import type { Hinge, Segment } from '../../structure.ts'
import type { PlacedStrip } from './bank-place.ts'
import { stretchOf } from './box.ts'
import { acrossOf } from './written.ts'

/** The creases of a strip, from its first panel on. */
export function creasesOf({ strip: { along, folds }, boxes }: PlacedStrip): Hinge[] {
  return boxes.slice(1).flatMap(([name, box], i): Hinge[] => {
    const [before, fold] = [boxes[i]?.[0], folds[i]]
    if (before === undefined || !fold) return []
    const [at, { from, to }] = [stretchOf(box, along).from, stretchOf(box, acrossOf(along))]
    const line =
      along === 'width'
        ? { from: point(at, from), to: point(at, to) }
        : { from: point(from, at), to: point(to, at) }
    return [{ between: [before, name], line, fold }]
  })
}

/** The creases of a sheet: where two strips have the same one in one line, it is one. */
export function creasesOfSheet(reading: Reading, placed: readonly PlacedStrip[]): Hinge[] | undefined {
  const hinges: Hinge[] = []
  let fine = true
  for (const one of placed)
    for (const hinge of creasesOf(one)) {
      const i = hinges.findIndex((known) => joined(known, hinge) !== undefined)
      const known = hinges[i]
      const line = known && joined(known, hinge)
      if (!known || !line) {
        hinges.push(hinge)
        continue
      }
      if (known.fold === hinge.fold) hinges[i] = { ...known, line }
      else {
        fine = false
        const names = hinge.between.map((name) => `\`${name}\``).join(' and ')
        report(
          reading,
          'unlike-creases',
          one.strip.place,
          `The crease between ${names} is a ${known.fold} in one strip and a ${hinge.fold} in \`${one.strip.name}\`, but it is one line`,
          `Write \`${known.fold}\` in both, or let them meet elsewhere in \`${one.strip.name}\``,
        )
      }
    }
  return fine ? hinges : undefined
}

/** One line out of two creases between the same panels that go on from one another. */
function joined(a: Hinge, b: Hinge): Segment | undefined {
  if (a.between.join('\n') !== b.between.join('\n')) return undefined
  const inLine = (['x', 'y'] as const).some((axis) =>
    [a.line.to, b.line.from, b.line.to].every((p) => same(p[axis], a.line.from[axis])),
  )
  const touch = (p: Segment['from'], q: Segment['from']): boolean => same(p.x, q.x) && same(p.y, q.y)
  if (!inLine) return undefined
  if (touch(a.line.to, b.line.from)) return { from: a.line.from, to: b.line.to }
  return touch(b.line.to, a.line.from) ? { from: b.line.from, to: a.line.to } : undefined
}
