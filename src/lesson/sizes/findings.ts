import type { YamlBlock } from '../../card/yaml.ts'
import { type Finding, listOf } from '../../length/finding.ts'
import { formatSize } from '../../length/format.ts'
import { groupBy } from '../../length/group-by.ts'
import type { Size, Unit } from '../../length/length.ts'
import { mainCard } from '../figure-target.ts'
import type { FilledLesson, Lesson } from '../lesson.ts'
import { ruleDocs } from '../rules/rules.ts'
import { type Change, cureOf, nearestSize } from './cure.ts'
import { tooLarge } from './loose-pieces.ts'
import { otherSizes, type SizePrint, sizePrints, unitsOf } from './offered.ts'
import { cardErrors, changed, type Ruler, works } from './trial.ts'

/**
 * What is wrong with a lesson in the other sizes that it is offered in, and in the other unit, that is not wrong with
 * it in its own: each finding at the place of that size in the front matter, with its cure, and with a value that would
 * work there if there is one.
 *
 * @param own the lesson in its own size and unit.
 */
export function sizeFindings(lesson: Lesson, own: FilledLesson): Finding[] {
  const prints = sizePrints(lesson, own, otherSizes(own), unitsOf(own.frontMatter))
  return bySize(prints).flatMap((some) => findingsAt(lesson, own, some, prints))
}

/** The prints of each size. */
export const bySize = (prints: readonly SizePrint[]): SizePrint[][] => [
  ...groupBy(prints, ({ other }) => other).values(),
]

/**
 * What is wrong in one size and not in the lesson's own print.
 *
 * @param some the prints of that size.
 * @param all those of all sizes.
 */
export function findingsAt(
  lesson: Lesson,
  own: FilledLesson,
  some: readonly SizePrint[],
  all: readonly SizePrint[],
): Finding[] {
  const told = new Set(own.findings.map(keyOf))
  const aboutText = new Set(ruleDocs.map(({ name }) => name))
  const found = new Map<string, { finding: Finding; units: Unit[] }>()
  for (const { unit, print } of some)
    for (const finding of [...print.findings, ...tooLarge(print, own)]) {
      // What the words of a lesson lack, they lack in every size.
      if (told.has(keyOf(finding)) || aboutText.has(finding.rule)) continue
      const entry = found.get(keyOf(finding))
      if (!entry) found.set(keyOf(finding), { finding, units: [unit] })
      else if (!entry.units.includes(unit)) entry.units.push(unit)
    }
  const [first] = some
  const errors = [...found.values()].filter(({ finding }) => finding.severity === 'error')
  const cure = first && errors.length > 0 ? cureAt(lesson, own, some, all) : undefined
  return [...found.values()].map(({ finding, units }) => {
    const isCured = cure !== undefined && finding === errors[0]?.finding
    const suggestion = [saying(finding), ...(isCured ? [cure] : [])].filter((text) => text).join('; ')
    return {
      ...finding,
      message: `${where(first, units, some.length)}: ${inSentence(finding.message)}`,
      ...(suggestion !== '' && { suggestion }),
      ...(first?.other && { place: first.other.place }),
    }
  })
}

const keyOf = ({ rule, place }: Finding): string => `${rule} ${place?.line} ${place?.column}`

/** The cure of a finding. Another shut size to write down is none where the size is what was asked for. */
const saying = ({ rule, suggestion }: Finding): string | undefined =>
  rule === 'closed-size' ? undefined : suggestion

function where(first: SizePrint | undefined, units: readonly Unit[], of: number): string {
  const [unit] = units.length < of ? units : []
  const printed = unit && `printed in ${unit === 'in' ? 'inches' : 'millimetres'}`
  const at = first?.other && `at ${first.label}`
  const text = [at, printed].filter((part) => part !== undefined).join(', ') || 'in both units'
  return text[0]?.toUpperCase() + text.slice(1)
}

/** A message behind a colon begins small, unless with a name or a number. */
const inSentence = (message: string): string =>
  message.replace(/^[A-Z](?=[a-z]*[ ,])/, (letter) => letter.toLowerCase())

/** What would make the main card work in one size, as a sentence. */
function cureAt(
  lesson: Lesson,
  own: FilledLesson,
  some: readonly SizePrint[],
  all: readonly SizePrint[],
): string | undefined {
  const block = mainCard(lesson.cards)
  const card = mainCard(own.cards.map((proven) => proven.card))
  const [first] = some
  const rulers = some.map(({ unit, print }): Ruler => ({ unit, grid: print.grid }))
  const [ruler, ...more] = rulers
  if (!block || !card || !first || !ruler) return undefined
  const closed = first.other?.size ?? card.closed
  const errors = cardErrors(block, closed, rulers)
  if (errors.length === 0) return undefined
  const setting = { closed, elsewhere: card.names.lookup }
  const changes = cureOf(block, errors, setting, [ruler, ...more])
  if (changes.length > 0) return changesText(changes, worksElsewhere(block, changes, first, all, card.closed))
  const size = first.other && nearestSize(block, closed, [ruler, ...more])
  return size && `\`${writtenSize(size, ruler.unit)}\` is the nearest size that works as it is`
}

/** How a size is written in a lesson. */
const writtenSize = (size: Size, unit: Unit): string => formatSize(size, unit).replace('×', 'x')

/** Whether a changed card works in all sizes that it worked in before, too. */
function worksElsewhere(
  block: YamlBlock,
  changes: readonly Change[],
  { other }: SizePrint,
  all: readonly SizePrint[],
  own: Size,
): boolean {
  const after = changedBy(block, changes)
  return all
    .filter((print) => print.other !== other)
    .every(({ other, unit, print }) => {
      const [size, ruler] = [other?.size ?? own, { unit, grid: print.grid }]
      return works(after, size, [ruler]) || !works(block, size, [ruler])
    })
}

/** Each change is one of the block as it was after those before it. */
const changedBy = (block: YamlBlock, changes: readonly Change[]): YamlBlock =>
  changes.reduce((now, { edit }) => changed(now, [edit]), block)

function changesText(changes: readonly Change[], everywhere: boolean): string {
  const lines = changes.map(
    ({ key, owner, value, added }) =>
      `${added ? 'an added ' : ''}\`${key}: ${value}\`${owner === undefined ? '' : ` for \`${owner}\``}`,
  )
  const verb = lines.length > 1 ? 'work' : 'works'
  return `${listOf(lines)} ${verb} here in both units, ${everywhere ? 'and in the other sizes' : 'but not in every other size'}`
}
