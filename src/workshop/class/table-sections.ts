import type { Wording } from '../../wording/wording.ts'
import { ruleText } from '../kit-rule.ts'
import { measure, type Section, words } from '../listing.ts'
import { quantityText } from '../quantity-text.ts'
import type { ClassKit } from './class-kit.ts'
import { tableWords } from './table-words.ts'

/** What lies on each table. */
export const tableSections = ({ tables, wording, lessons }: ClassKit): Section[] =>
  tables.map(({ name, people, kits, shared }) => {
    const { say } = wording
    const table = tableWords(name, wording)
    return {
      heading: say('class.on-table', { table, people, named: isCalledTable(table) ? 'yes' : 'no' }),
      columns: [words(say('kit.item')), measure(say('kit.how-much')), words(say('kit.rule'))],
      rows: [
        ...kits.map(({ lesson, count }) => [
          kitsWords(lesson, lessons.length > 1, wording),
          String(count),
          '',
        ]),
        ...shared.map(({ item, amount, rule }) => [
          item,
          quantityText(amount, wording),
          ruleText(rule, wording),
        ]),
      ],
    }
  })

/** Whether the name of a table says that it is one. */
const isCalledTable = (name: string): boolean => /^(?:table|tisch|mesa)\b/i.test(name)

/** The spare kits stay with the tutor, where tables are said. */
export const spareSection = ({ tables, lessons, spare, wording }: ClassKit): Section[] =>
  tables.length === 0 || spare === 0
    ? []
    : [
        {
          heading: wording.say('class.spare-with-tutor'),
          columns: [words(wording.say('kit.item')), measure(wording.say('kit.how-much'))],
          rows: lessons.map(({ taught, kit }) => [
            kitsWords(kit.lesson, lessons.length > 1, wording),
            String(taught.kits - taught.people),
          ]),
        },
      ]

const kitsWords = (lesson: string, several: boolean, { say }: Wording): string =>
  several ? say('class.kits-of', { lesson }) : say('class.kits')
