import type { CardTold } from './told.ts'

/** Where a card is, as it is said: `half folded`. */
export function momentWords({ stops }: Pick<CardTold, 'stops'>, moment: number): string {
  const stop = stops.find(({ at }) => Math.abs(at - moment) < 0.005)
  if (stop) return stop.name
  return moment < 1 ? `${shareWords(moment)} folded` : `${shareWords(moment - 1)} open`
}

function shareWords(share: number): string {
  if (share < 0.2) return 'a little'
  if (share < 0.3) return 'a quarter'
  if (share < 0.45) return 'less than half'
  if (share <= 0.55) return 'half'
  if (share < 0.7) return 'more than half'
  if (share <= 0.8) return 'three quarters'
  return 'nearly all'
}

/** What is being done at a moment. */
export function actWords({ acts, stops }: Pick<CardTold, 'acts' | 'stops'>, moment: number): string {
  const [first, last] = [stops[0], stops.at(-1)]
  if (last && moment >= last.at - 1e-6) return last.name === 'standing' ? 'It stands.' : 'It is shut.'
  if (first?.name === 'shut' && moment <= first.at) return 'It is shut.'
  return acts.find(({ from, to }) => moment >= from && moment < to)?.text ?? ''
}
