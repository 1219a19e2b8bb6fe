import type { Length } from '../../length/length.ts'
import type { Supplies, Supply } from '../../lesson/lesson.ts'
import type { Wording } from '../../wording/wording.ts'
import { amountText, needTitle } from '../needs.ts'

/** A line for each group of supplies: `Tools to share: scissors, 1 between 2; …` */
export function supplyLines(supplies: Supplies, wording: Wording, grid: Length): string[] {
  const said = ({ item, amount }: Supply): string =>
    [item, amountText(amount, wording, grid)].filter((words) => words !== '').join(', ')
  return (['each', 'shared', 'tutor'] as const)
    .filter((whose) => supplies[whose].length > 0)
    .map((whose) =>
      wording.say('text.item', {
        name: needTitle(whose, wording),
        text: supplies[whose].map(said).join('; '),
      }),
    )
}
