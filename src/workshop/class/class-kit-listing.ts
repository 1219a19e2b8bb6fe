import type { Unit } from '../../length/length.ts'
import { eachSection, supplySection } from '../kit-listing.ts'
import { type Listing, type Section, withoutEmptyColumns } from '../listing.ts'
import type { Purchase } from './buying.ts'
import type { ClassKit } from './class-kit.ts'
import { costSections } from './cost-sections.ts'
import { buySections } from './shopping-sections.ts'
import { soldText } from './sold.ts'
import { spareSection, tableSections } from './table-sections.ts'
import { weightSection } from './weight-section.ts'

/**
 * The lists of a class as tables: each kit of each lesson, what lies on the tables, with the tutor and with the spare
 * kits, what to buy, what it costs and what to charge, and what it weighs.
 */
export function classKitListing(kit: ClassKit): Listing {
  const { unit, people, spare, lessons } = kit
  const several = lessons.length > 1
  const sections: Section[] = [
    ...lessons.map(({ taught, kit: one }) => ({
      ...eachSection(one, several ? `In each kit of “${one.lesson}”` : 'In each kit'),
      ...choiceNote(taught.taken),
    })),
    ...tableSections(kit),
    supplySection(kit.tables.length > 0 ? 'For all tables together' : 'On the tables', kit.forAll, unit),
    supplySection('For the tutor', kit.tutor, unit),
    ...spareSection(kit),
    ...buySections(kit),
    ...costSections(kit),
    ...weightSection(kit),
  ]
  return {
    title: `Kit list: ${kit.title}`,
    intro: `For ${people} ${people === 1 ? 'person' : 'people'}${spare > 0 ? ` and ${spare} spare ${spare === 1 ? 'kit' : 'kits'}` : ''}.`,
    sections: sections.filter(({ rows }) => rows.length > 0).map(withoutEmptyColumns),
  }
}

/** `dark blue card: 9 dark blue card, 7 dark green card` */
function choiceNote(taken: ClassKit['lessons'][number]['taught']['taken']): Pick<Section, 'note'> {
  if (taken.size === 0) return {}
  const said = [...taken].map(
    ([stock, takes]) =>
      `${stock}: ${takes.map((take) => `${take.kits} ${take.kits === 1 ? 'kit has' : 'kits have'} ${take.stock}`).join(', ')}`,
  )
  return { note: `${said.join('; ')}.` }
}

/** `roll of 10 m`, or nothing for what is bought one by one. */
export const soldAs = ({ sold }: Pick<Purchase, 'sold'>, unit: Unit): string =>
  sold ? soldText(sold, unit) : ''
