import type { Wording } from '../../wording/wording.ts'
import { eachSection, supplySection } from '../kit-listing.ts'
import { type Listing, type Section, withoutEmptyColumns } from '../listing.ts'
import type { ClassKit } from './class-kit.ts'
import { costSections } from './cost-sections.ts'
import { buySections } from './shopping-sections.ts'
import { spareSection, tableSections } from './table-sections.ts'
import { weightSection } from './weight-section.ts'

/**
 * The lists of a class as tables: each kit of each lesson, what lies on the tables, with the tutor and with the spare
 * kits, what to buy, what it costs and what to charge, and what it weighs.
 */
export function classKitListing(kit: ClassKit): Listing {
  const { wording, people, spare, lessons } = kit
  const { say } = wording
  const several = lessons.length > 1
  const sections: Section[] = [
    ...lessons.map(({ taught, kit: { each, lesson, wording: own } }) => ({
      ...eachSection(
        each,
        several ? say('class.in-each-kit-of', { lesson }) : say('kit.in-each-kit'),
        wording.in(own.unit),
      ),
      ...choiceNote(taught.taken, wording),
    })),
    ...tableSections(kit),
    supplySection(
      kit.tables.length > 0 ? say('class.for-all-tables') : say('kit.on-the-tables'),
      kit.forAll,
      wording,
    ),
    supplySection(say('kit.for-the-tutor'), kit.tutor, wording),
    ...spareSection(kit),
    ...buySections(kit),
    ...costSections(kit),
    ...weightSection(kit),
  ]
  return {
    title: say('kit.title', { title: kit.title }),
    intro: say('class.for-people', { people, spare }),
    sections: sections.filter(({ rows }) => rows.length > 0).map(withoutEmptyColumns),
  }
}

/** `dark blue card: 9 kits have dark blue card, 7 kits have dark green card.` */
function choiceNote(
  taken: ClassKit['lessons'][number]['taught']['taken'],
  { say, name }: Wording,
): Pick<Section, 'note'> {
  if (taken.size === 0) return {}
  const said = [...taken].map(([stock, takes]) =>
    say('class.choice', {
      stock: name(stock),
      takes: takes
        .map((take) => say('class.kits-have', { kits: take.kits, stock: name(take.stock) }))
        .join(', '),
    }),
  )
  return { note: `${said.join('; ')}.` }
}
