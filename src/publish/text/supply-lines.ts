import type { Length, Unit } from '../../length/length.ts'
import type { Supplies, Supply } from '../../lesson/lesson.ts'
import { amountText, needTitles } from '../needs.ts'

/** A line for each group of supplies: `Tools to share: scissors, 1 between 2; …` */
export function supplyLines(supplies: Supplies, unit: Unit, grid: Length): string[] {
  const said = ({ item, amount }: Supply): string => {
    const much = amountText(amount, unit, grid)
    return much === '' ? item : `${item}, ${much}`
  }
  return (['each', 'shared', 'tutor'] as const)
    .filter((whose) => supplies[whose].length > 0)
    .map((whose) => `${needTitles[whose]}: ${supplies[whose].map(said).join('; ')}`)
}
