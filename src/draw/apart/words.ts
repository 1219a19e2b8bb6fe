import type { Card } from '../../card/card.ts'
import type { Wording } from '../../wording/wording.ts'
import { cardName, namesOf, sentence } from '../phrases.ts'
import type { Scene } from './scene.ts'

/** What a sighted reader takes from the pieces that are lifted apart. */
export function apartWords(
  card: Card,
  scene: Scene,
  order: readonly string[],
  of: string | undefined,
  wording: Wording,
): string {
  const { say, name } = wording
  const { structure } = card
  const onBack = (under: string, panel: string): string =>
    say('figures.back-of', { side: under === order[0] ? 'outside' : 'back', panel: name(panel) })
  const shown = order.filter((one) => scene.parts.all.some(({ piece }) => piece === one))
  const pieces = shown.map((one) => {
    const piece = structure.pieces.find((p) => p.name === one)
    const holds = scene.parts.holds.filter(({ part, under }) => part.piece === one && under.piece !== one)
    const onto = holds.map(({ bond, under }) =>
      bond.side === 'back' ? onBack(under.piece, bond.onto) : name(bond.onto),
    )
    return say('figures.lifted-piece', {
      number: order.indexOf(one) + 1,
      piece: name(one),
      stock: name(piece?.stock.name ?? ''),
      count: piece?.count ?? 1,
      held: onto.length > 0 ? 'yes' : 'no',
      panels: wording.list([...new Set(onto)]),
    })
  })
  const loose = structure.pieces.filter(({ kind }) => kind === 'loose').map((piece) => piece.name)
  const how = scene.isFlat ? (scene.isOver ? 'over' : 'flat') : 'bent'
  return [
    of
      ? say('figures.seen-piece-apart', { piece: sentence(name(of)), how })
      : say('figures.seen-apart', { card: cardName(card, wording), how }),
    `${pieces.join('; ')}.`,
    ...(loose.length > 0 && !of ? [say('figures.loose-not-shown', { pieces: namesOf(loose, wording) })] : []),
  ].join(' ')
}
