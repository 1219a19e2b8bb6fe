import type { Box } from '../fit/cutting/boxes.ts'
import { selectionsOf, waysToPart } from '../fit/cutting/selections.ts'
import { joined, pieceBox } from './choice.ts'
import type { Shape } from './problem.ts'
import { isTrimmed } from './row.ts'

/** A box, and what it takes to cut it: settings that are not used anyway count far more than cuts. */
interface Costed {
  readonly box: Box
  readonly cost: number
}

const settingCost = 1000
/** Ways of parting that are gone through, and boxes that are kept of each selection. */
const mostWays = 3_000
const mostBoxes = 10

/**
 * Puts the pieces of a sheet together so that it is cut with few settings, and with few cuts: of every selection of
 * them the boxes are kept that no other beats in width, height and cost at once.
 *
 * @param isUsual whether a size in marks is a setting that is used anyway.
 * @returns undefined when there are too many pieces to try it.
 */
export function arrange(
  { width, height, ways }: Shape,
  counts: readonly number[],
  isUsual: (marks: number) => boolean,
): Box | undefined {
  if (waysToPart(counts) > mostWays) return undefined
  const kinds = [...counts.keys()].filter((kind) => (counts[kind] ?? 0) > 0)
  const selections = selectionsOf(kinds.map((kind) => counts[kind] ?? 0))
  const fronts: Costed[][] = [[]]
  const pay = (marks: number, sheet: number): number =>
    marks === sheet ? 0 : 1 + (isUsual(marks) ? 0 : settingCost)
  /** What a box costs as one of a row: to cut it off, and to trim it to its own size. */
  const inRow = ({ box, cost }: Costed, lies: 'beside' | 'above', across: number): number => {
    const beside = lies === 'beside'
    const [along, over] = beside ? [box.width, box.height] : [box.height, box.width]
    const sameRow = box.made.of === 'parts' && box.made.lies === lies
    // A row the other way has its pieces cut to their sizes one by one.
    const trimmed = box.made.of === 'piece' || (sameRow && isTrimmed(box))
    return cost + (sameRow ? 0 : pay(along, -1)) + (trimmed ? pay(over, across) : 0)
  }
  for (let n = 1; n <= selections.whole; n++) {
    const front: Costed[] = []
    const offer = (box: Box, cost: number): void => {
      if (box.width > width || box.height > height) return
      const beats = (a: Costed, b: Costed): boolean =>
        a.box.width <= b.box.width && a.box.height <= b.box.height && a.cost <= b.cost
      const one = { box, cost }
      if (front.some((other) => beats(other, one))) return
      const kept = front.filter((other) => !beats(one, other))
      front.splice(0, front.length, ...kept, one)
    }
    const single = kinds[selections.single(n) ?? -1]
    for (const way of ways) if (way.kind === single) offer(pieceBox(way), 0)
    selections.parts(selections.digits(n), (part) => {
      if (part === 0 || part > n - part) return
      for (const first of fronts[part] ?? [])
        for (const second of fronts[n - part] ?? [])
          for (const lies of ['beside', 'above'] as const) {
            const box = joined(first.box, second.box, lies)
            const across = lies === 'beside' ? box.height : box.width
            offer(box, inRow(first, lies, across) + inRow(second, lies, across))
          }
    })
    front.sort((a, b) => a.cost - b.cost)
    fronts.push(thinned(front))
  }
  const onSheet = ({ box, cost }: Costed): number => {
    if (box.made.of === 'piece') return pay(box.width, width) + pay(box.height, height)
    if (!isTrimmed(box)) return cost
    return cost + (box.made.lies === 'beside' ? pay(box.height, height) : pay(box.width, width))
  }
  const whole = (fronts[selections.whole] ?? []).toSorted((a, b) => onSheet(a) - onSheet(b))
  return whole[0]?.box
}

/** The cheapest boxes, and always the narrowest and the lowest, so that what fits stays possible. */
function thinned(front: readonly Costed[]): Costed[] {
  if (front.length <= mostBoxes) return [...front]
  const step = front.length / mostBoxes
  const byWidth = front.toSorted((a, b) => a.box.width - b.box.width || a.cost - b.cost)
  const kept = Array.from({ length: mostBoxes }, (_, i) => byWidth[Math.floor(i * step)])
  return [...new Set([...front.slice(0, mostBoxes / 2), ...kept, byWidth.at(-1)])].flatMap((one) => one ?? [])
}
