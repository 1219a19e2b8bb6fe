import type { Length } from '../../length/length.ts'
import { type Box, cornersOf, near } from '../box.ts'
import { colours, nameShare, weights } from '../ink.ts'
import { capHeight, label, textWidth } from '../label.ts'
import { area, line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { toMm } from '../plane.ts'
import { half, type Place, type SheetPlan } from './sheet-plan.ts'
import { turnMark, turnRoom } from './turn-mark.ts'

/** The cuts, each with its number on the line, as near to where it begins as no name and no other number is. */
export function cutMarks(
  plan: SheetPlan,
  names: readonly Mark[],
  place: Place,
  size: number,
  numbered = true,
): Mark[] {
  const taken = names.map(({ box }) => box)
  const lines = plan.cuts.map((cut) => {
    const at = (along: Length): Spot =>
      place(cut.across === 'width' ? [toMm(cut.at), toMm(along)] : [toMm(along), toMm(cut.at)])
    return [at(cut.from), at(cut.to)] as const
  })
  const numbers = lines.flatMap(([from, to], i) => {
    const own = wide(i + 1, size)
    const isFree = (one: Box): boolean => !taken.some((other) => near(one, other, 0.3))
    const plain = seats(from, to, own, half * size)
    // Where there is no room for the mark of the turn, the number stands without it.
    const marked = isTurned(plan, i)
      ? seats(from, to, own + turnRoom(size) / 2, half * size).find(isFree)
      : undefined
    const free = marked ?? plain.find(isFree) ?? plain[0]
    if (!free) return []
    taken.push(free)
    return numberIn(free, i + 1, size, marked !== undefined)
  })
  return [
    ...lines.map(([from, to]) => line(from, to, { class: 'cut', width: weights.edge, cap: 'round' })),
    ...(numbered ? numbers : []),
  ]
}

/** Whether a cut is made across the one before it, so that what is in hand is turned a quarter. */
const isTurned = ({ cuts }: SheetPlan, i: number): boolean => i > 0 && cuts[i - 1]?.across !== cuts[i]?.across

const wide = (number: number, size: number): number =>
  Math.max(half * size, textWidth(String(number), size * nameShare) / 2 + 0.5)

/** Boxes along a line from its beginning to its end, then beyond it: first where the cut begins, then behind it. */
function seats(from: Spot, to: Spot, w: number, h: number): Box[] {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1])
  const [dx, dy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long]
  const step = Math.abs(dx) * w + Math.abs(dy) * h
  const along: number[] = []
  for (let at = step + 0.6; at <= long - step - 0.6; at += step / 2) along.push(at)
  return [...along, long / 2, -step - 0.6, long + step + 0.6].map((at) => {
    const [x, y] = [from[0] + dx * at, from[1] + dy * at]
    return { left: x - w, right: x + w, top: y - h, bottom: y + h }
  })
}

function numberIn(box: Box, number: number, size: number, turned: boolean): Mark[] {
  const own = size * nameShare
  const { left, right, top, bottom } = box
  return [
    area([cornersOf(box)], {
      class: 'ground',
      fill: colours.paper,
      stroke: { width: weights.dimension, colour: colours.rust },
    }),
    ...(turned ? turnMark([right - turnRoom(size) / 2 - 0.3, (top + bottom) / 2], size) : []),
    label(
      String(number),
      [(left + right - (turned ? turnRoom(size) : 0)) / 2, (top + bottom + capHeight * own) / 2],
      {
        class: 'cut-number',
        size: own,
        colour: colours.rust,
        bold: true,
        anchor: 'middle',
      },
    ),
  ]
}
