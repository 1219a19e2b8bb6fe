import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import { listOf } from '../../length/finding.ts'
import { formatSize } from '../../length/format.ts'
import { plus, same, type Unit, zero } from '../../length/length.ts'
import { sentence } from '../flat/words.ts'
import { flatLine, toMm } from '../plane.ts'
import { inSpace } from '../space.ts'

/** What a sighted reader takes from the view of the shut card. @param thick, times as the figure says them. */
export function closedWords(card: Card, closed: Closed, thick: string, times: string, unit: Unit): string {
  const seen = closed.order.slice(0, 3)
  const folded = foldedSides(card, closed)
  const atEdge = edgeOrder(closed)
  return [
    `${sentence(`the ${card.fold} card`)} shut, seen from its front: ${formatSize(closed.size, unit)}, width first, ${thick}.`,
    `In front ${seen.length === 1 ? 'is' : 'are'} ${listOf(seen)}.`,
    `The layers below show at the right and at the lower edge, drawn ${times}${atEdge.length > 1 ? `: ${listOf(atEdge)}, from front to back` : ''}.`,
    ...(folded.length > 0
      ? [`It is folded at the ${listOf(folded)} edge${folded.length > 1 ? 's' : ''}, drawn round.`]
      : []),
  ].join(' ')
}

/** The plates that end at the right or at the lower edge, from front to back. */
const edgeOrder = ({ plates, order, size }: Closed): string[] =>
  order.filter((name) => {
    const laid = plates.find(({ plate }) => plate === name)
    return laid && (same(plus(laid.left, laid.size.width), size.width) || same(laid.bottom, zero))
  })

/** The edges of the shut card that a folded crease lies on. */
function foldedSides({ structure }: Card, { plates, pose, size }: Closed): string[] {
  const faceUp = new Map(plates.map((laid) => [laid.plate, laid.faceUp]))
  const [width, height] = [toMm(size.width), toMm(size.height)]
  const creases = structure.hinges.flatMap(({ between: [p, q], line }) => {
    const place = pose.get(p)
    return place && faceUp.get(p) !== faceUp.get(q)
      ? [flatLine(line).map((spot) => inSpace(place, spot))]
      : []
  })
  const isOn = (axis: 0 | 1, at: number): boolean =>
    creases.some((ends) => ends.every((end) => Math.abs(end[axis] - at) < 1e-3))
  return [
    ...(isOn(0, 0) ? ['left'] : []),
    ...(isOn(0, width) ? ['right'] : []),
    ...(isOn(1, height) ? ['upper'] : []),
    ...(isOn(1, 0) ? ['lower'] : []),
  ]
}
