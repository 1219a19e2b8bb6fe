import type { Card } from '../../card/card.ts'
import { listOf } from '../../length/finding.ts'
import { sentence } from '../flat/words.ts'
import type { Scene } from './scene.ts'

/** What a sighted reader takes from the pieces that are lifted apart. */
export function apartWords(
  card: Card,
  scene: Scene,
  order: readonly string[],
  of: string | undefined,
): string {
  const { structure } = card
  const backOf = (name: string): string => (name === order[0] ? 'the outside of ' : 'the back of ')
  const shown = order.filter((name) => scene.parts.all.some(({ piece }) => piece === name))
  const said = shown.map((name) => {
    const piece = structure.pieces.find((p) => p.name === name)
    const holds = scene.parts.holds.filter(({ part, under }) => part.piece === name && under.piece !== name)
    const onto = [
      ...new Set(
        holds.map(({ bond, under }) => `${bond.side === 'back' ? backOf(under.piece) : ''}${bond.onto}`),
      ),
    ]
    const count = piece && piece.count > 1 ? `, ${piece.count} of them` : ''
    return `${order.indexOf(name) + 1} ${name}, ${piece?.stock.name ?? ''}${count}${onto.length > 0 ? `, on ${listOf(onto)}` : ''}`
  })
  const loose = structure.pieces.filter(({ kind }) => kind === 'loose').map(({ name }) => name)
  const how = scene.isFlat
    ? `unfolded on the table${scene.isOver ? ' with the outside up' : ''}`
    : 'bent as it is when they are stuck on'
  return [
    `${of ? `${sentence(of)}, with what it goes on and what it carries` : `The pieces of the ${card.fold} card`}, lifted off one another, in the order in which they are put together; the card is ${how}.`,
    `${said.join('; ')}.`,
    ...(loose.length > 0 && !of
      ? [`Not shown, because the card does not say where they go: ${listOf(loose)}.`]
      : []),
  ].join(' ')
}
