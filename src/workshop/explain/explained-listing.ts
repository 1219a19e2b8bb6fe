import { listOf } from '../../length/finding.ts'
import { formatGrid, formatLength } from '../../length/format.ts'
import { minus, same, type Unit, zero } from '../../length/length.ts'
import type { FilledLesson, Lesson, ProvenCard } from '../../lesson/lesson.ts'
import { type Listing, measure, type Section, words } from '../listing.ts'
import { explainCard } from './explain.ts'
import type { Explained } from './explained.ts'
import type { Follow } from './follows.ts'
import { differenceText, shareOf } from './formula.ts'

/** Every number of a lesson's cards, with where it comes from, as tables: one for the card and one for each part of it. */
export function explainedListing(lesson: Pick<Lesson, 'cards'>, filled: FilledLesson): Listing {
  const several = filled.cards.length > 1
  const grid = formatGrid(filled.grid)
  return {
    title: filled.frontMatter.title,
    intro: `Where every number comes from. A formula is added up as it stands, from numbers on the ruler. \`off\` is how much the ruler of ${grid} adds or takes, against the same card with nothing rounded. \`follows\` is what changes a number when the card is printed at another size, standing or lying as it does: \`width × 2\` grows twice as fast as the shut card's width, \`both\` are width and height, \`ruler\` is what does not divide on the ruler, and \`fixed\` never changes.`,
    sections: filled.cards.flatMap((proven) =>
      sectionsOf(explainCard(lesson, proven), proven, grid).map((section) => ({
        ...section,
        heading: several ? `${section.heading} (${proven.card.name})` : section.heading,
      })),
    ),
  }
}

function sectionsOf(explained: readonly Explained[], { card }: ProvenCard, grid: string): Section[] {
  const columns = [
    words('number'),
    measure('measure'),
    measure('off'),
    words('follows'),
    words('where it comes from'),
  ]
  const headingOf = headings(card)
  const all = [...new Set(explained.map(({ owner }) => headingOf(owner)))]
  return all.flatMap((heading) => {
    const own = explained.filter(({ owner }) => headingOf(owner) === heading)
    const rows = withoutRepeats(own.filter(isWorthARow)).map((one) => rowOf(one, card.unit, grid))
    return rows.length > 0 ? [{ heading, columns, rows }] : []
  })
}

/** The card, its panels, and each thing that is cut or made besides. */
function headings({ structure, lettering }: ProvenCard['card']): (owner: string) => string {
  const own = new Set([
    'envelope',
    ...structure.pieces.map(({ name }) => name),
    ...lettering.map(({ name }) => name),
  ])
  const panels = new Set(structure.plates.map(({ name }) => name).filter((name) => !own.has(name)))
  return (owner) => {
    if (owner === 'card' || owner === 'closed') return 'The card'
    return panels.has(owner) ? 'Panels' : `${owner[0]?.toUpperCase()}${owner.slice(1)}`
  }
}

/** What nobody asked for and comes to nothing is not told. */
const isWorthARow = ({ source, value }: Explained): boolean =>
  !(source.kind === 'parameter' && source.from === 'usual' && same(value, zero))

/** Borders that are written once for several edges are told once. */
function withoutRepeats(explained: readonly Explained[]): Explained[] {
  const borders = explained.filter(({ name }) => /\.border\.\w+$/.test(name))
  const keyOf = ({ value, source, rounding }: Explained): string =>
    JSON.stringify([value.toFraction(), rounding, source.kind === 'parameter' && [source.text, source.place]])
  return explained.flatMap((one) => {
    if (!borders.includes(one)) return [one]
    const alike = borders.filter((other) => keyOf(other) === keyOf(one))
    if (alike[0] !== one) return []
    const edges = alike.map(({ name }) => name.slice(name.lastIndexOf('.') + 1))
    const stem = one.name.slice(0, one.name.lastIndexOf('.'))
    return [{ ...one, name: edges.length === 4 ? stem : `${stem}.${edges.join(', ')}` }]
  })
}

function rowOf(one: Explained, unit: Unit, grid: string): string[] {
  const { name, value, exact, follows } = one
  return [
    name,
    formatLength(value, unit),
    exact ? differenceText(minus(value, exact), unit) : '',
    follows ? followsText(follows) : '',
    [sourceText(one), roundingText(one, grid)].filter((text) => text !== '').join('; '),
  ]
}

function followsText(follows: readonly Follow[]): string {
  if (follows.length === 0) return 'fixed'
  if (follows.length > 1 && follows.every(({ share }) => !share || share.equals(1)))
    return followsAll(follows)
  return follows
    .map(({ of, share }) => (share && !share.equals(1) ? `${of} × ${shareOf(share)}` : of))
    .join(', ')
}

/** Both sides in one word: a list of all three leaves no room for what a number comes from. */
function followsAll(follows: readonly Follow[]): string {
  const names = follows.map(({ of }) => of)
  const isBoth = names.includes('width') && names.includes('height')
  return [
    ...(isBoth ? ['both'] : []),
    ...names.filter((of) => !(isBoth && (of === 'width' || of === 'height'))),
  ].join(', ')
}

function sourceText({ name, source }: Explained): string {
  switch (source.kind) {
    case 'formula':
      return source.text
    case 'folding':
      return 'found by folding the card: how thick it lies when it is shut'
    case 'standing':
      return 'found by standing the card up'
    case 'lengths':
      return source.names.length > 0 ? `worked out from ${listOf(source.names)}` : 'read off the card'
    case 'parameter':
      return parameterText(name, source)
  }
}

function parameterText(
  name: string,
  { from, text, place }: Explained['source'] & { kind: 'parameter' },
): string {
  if (from === 'wished') return 'asked for in this print'
  const written = place ? `written in line ${place.line}: \`${text}\`` : `\`${text}\``
  if (from === 'auto') return `${written}, so that the card shuts over it`
  if (from === 'written') return written
  return `usual${name.includes('.') ? '' : ' for this fold'}: \`${text}\``
}

function roundingText({ rounding }: Explained, grid: string): string {
  switch (rounding) {
    case 'down':
      return `down to the next mark of ${grid}`
    case 'up':
      return `up to the next mark of ${grid}`
    case 'nearest':
      return `to the nearest mark of ${grid}`
    case 'rest':
      return 'and what the ruler leaves over'
    case 'none':
      return ''
  }
}
