import type { CardTold, Share, StopTold } from './told.ts'

/** The stop that a card is at; undefined on its way between two. */
export const stopAt = ({ stops }: Pick<CardTold, 'stops'>, moment: number): StopTold | undefined =>
  stops.find(({ at }) => Math.abs(at - moment) < 0.005)

/** Where a card is, as it is said: `half folded`. */
export function momentWords(card: Pick<CardTold, 'stops' | 'words'>, moment: number): string {
  const { words } = card
  const stop = stopAt(card, moment)
  if (stop) return words[stop.name]
  return (moment < 1 ? words.folded[shareAt(moment)] : words.open[shareAt(moment - 1)]) ?? ''
}

function shareAt(share: number): Share {
  if (share < 0.2) return 'little'
  if (share < 0.3) return 'quarter'
  if (share < 0.45) return 'less'
  if (share <= 0.55) return 'half'
  if (share < 0.7) return 'more'
  if (share <= 0.8) return 'most'
  return 'nearly'
}

/** What is being done at a moment. */
export function actWords(
  { acts, stops, words }: Pick<CardTold, 'acts' | 'stops' | 'words'>,
  moment: number,
): string {
  const [first, last] = [stops[0], stops.at(-1)]
  if (last && moment >= last.at - 1e-6) return last.name === 'standing' ? words.stands : words.isShut
  if (first?.name === 'shut' && moment <= first.at) return words.isShut
  return acts.find(({ from, to }) => moment >= from && moment < to)?.text ?? ''
}
