import type { Finding } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import { wordingOf } from '../../wording/wording.ts'
import type { Need, Quantity } from '../needs.ts'
import { quantityText } from '../quantity-text.ts'
import { fits } from './buying.ts'
import type { ClassFile } from './class-file.ts'
import { type Sold, soldText } from './sold.ts'

/** What of the supplies in a class file does not go with what its lessons use up. */
export const supplyFindings = (
  { supplies }: Pick<ClassFile, 'supplies'>,
  needs: readonly Need[],
  unit: Unit,
): Finding[] => {
  const english = wordingOf('en-GB', unit)
  return [...supplies].flatMap(([item, { place, sold }]): Finding[] => {
    const own = needs.filter((need) => need.item === item)
    if (own.length === 0) return [notNeeded(item, place, needs)]
    return own
      .filter(({ need }) => sold && need.kind !== 'text' && !fits(need, sold))
      .map(({ need }) => ({
        rule: 'other-measure',
        severity: 'error',
        message: `\`${item}\` is used up as ${quantityText(need, english)} in all, and sold as a ${sold && soldText(sold, english)}: one cannot be counted in the other`,
        suggestion: cure(need, sold),
        place,
      }))
  })
}

/** Both must be said in the same: by the measure of the lesson, as a shop sells it. */
function cure(need: Quantity, sold: Sold | undefined): string {
  const doses = sold?.kind === 'container' && sold.holds.kind === 'dose'
  if (need.kind === 'dose' && doses)
    return `Say both in grams, or both in millilitres: here or in the lesson, ${need.dose.unit === 'g' ? '`bottle: 100 g`' : '`bottle: 120 ml`'}`
  if (need.kind === 'dose') return `Say what a bottle holds, such as \`bottle: 100 ${need.dose.unit}\``
  if (need.kind === 'length') return 'Say how long a roll is, such as `roll: 10 m`'
  if (need.kind === 'area') return 'Say how large a sheet is, such as `sheet: 8 x 12 in`'
  if (need.kind === 'count' && need.of !== undefined)
    return `Say how many ${need.of} there are in a bottle, such as \`bottle: 300 ${need.of}\``
  return 'Say how many are in a pack, such as `pack: 100`'
}

/** A supply that the class file sells and no lesson uses is probably misspelt. */
const notNeeded = (item: string, place: Finding['place'], needs: readonly Need[]): Finding => ({
  rule: 'not-needed',
  severity: 'warning',
  message: `No lesson of this class uses up \`${item}\``,
  suggestion:
    needs.length > 0
      ? `Write it as in the lesson: ${needs.map((need) => `\`${need.item}\``).join(', ')}`
      : 'Take it out',
  ...(place && { place }),
})
