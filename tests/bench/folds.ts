import { foldStyles } from '../../src/card/fold-styles.ts'
import { provenStarter, starterCard } from '../../src/workshop/starter-card.ts'
import { inTurn, type Ratio } from './ratio.ts'

/** The starter card of each fold, proven, against working out its sheets alone. */
export async function benchFolds(runs: number): Promise<Ratio[]> {
  const ratios: Ratio[] = []
  for (const style of foldStyles.values()) {
    const times = await inTurn(
      runs,
      () => provenStarter(style, 'mm'),
      () => starterCard(style, 'mm'),
    )
    ratios.push({ what: style.name, against: 'its sheets alone', ...times })
  }
  return ratios.toSorted((a, b) => b.ours - a.ours)
}
