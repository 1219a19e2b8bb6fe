import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import { plus, same, zero } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import { cardName, namesOf } from '../phrases.ts'
import { flatLine, toMm } from '../plane.ts'
import { inSpace } from '../space.ts'

/** What a sighted reader takes from the view of the shut card. @param thick, times as the figure says them. */
export function closedWords(
  card: Card,
  closed: Closed,
  thick: string,
  times: number,
  wording: Wording,
): string {
  const { say, list } = wording
  const seen = closed.order.slice(0, 3)
  const folded = foldedSides(card, closed)
  const atEdge = edgeOrder(closed)
  return [
    say('figures.seen-shut', { card: cardName(card, wording), size: wording.size(closed.size), thick }),
    say('figures.in-front', { count: seen.length, panels: namesOf(seen, wording) }),
    say('figures.layers-show', {
      times,
      ordered: atEdge.length > 1 ? 'yes' : 'no',
      panels: namesOf(atEdge, wording),
    }),
    ...(folded.length > 0
      ? [
          say('figures.folded-at', {
            count: folded.length,
            edges: list(folded.map((edge) => say('figures.edge-of-card', { edge }))),
          }),
        ]
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
