import { foldStyles } from '../card/fold-styles.ts'
import { free } from '../card/folds/free.ts'
import type { FoldStyle } from '../card/style.ts'

/** A fold as the catalogue shows it. */
export interface CatalogueFold
  extends Pick<
    FoldStyle,
    'name' | 'summary' | 'remainder' | 'starter' | 'parameters' | 'counts' | 'choices' | 'panels'
  > {
  /** Parts that its card block lists, with what they are. */
  readonly parts: Readonly<Record<string, string>>
}

/** Where the odd mark of the ruler goes, as a sentence; none where a fold divides nothing. */
export const remainderWords = ({ remainder }: Pick<CatalogueFold, 'remainder'>): string[] =>
  remainder === undefined ? [] : [`What does not divide on the ruler goes to ${remainder}.`]

/** What the card block of a free fold lists. */
const freeParts = {
  panels: 'the panels of a strip in their order, each with its length',
  creases: 'the creases between them: valley or mountain',
  along: 'width: panels side by side; height: one above the other',
  width: 'how wide a sheet is whose panels lie one above the other',
  height: 'how high a sheet is whose panels lie side by side',
  strips: 'several strips of one sheet, with slits between them; they share the panels of one name',
  lengths: 'lengths with names of their own, to be used in the others',
  sheets: 'further sheets, each with panels and creases of its own',
  slits: 'slits within a panel',
  bonds: 'which panel is stuck on which, and where',
  glue: 'the same as bonds',
  shut: 'creases of the shut card that are known: flat, folded, or bent by so many degrees',
  stand: 'how the standing card is shown: which panel stays put, and how far creases are bent',
}

/** Every fold in the order of the catalogue; last the one for a card of one's own. */
export const catalogue: ReadonlyMap<string, CatalogueFold> = new Map(
  [
    ...[...foldStyles.values()].map((style): CatalogueFold => ({ ...style, parts: {} })),
    { ...free, parameters: {}, panels: {}, parts: freeParts },
  ].map((fold) => [fold.name, fold]),
)

/** What folds have in common for someone who looks for one. */
const kinds: Readonly<Record<string, readonly string[]>> = {
  'Opens like a book, a door or a map': [
    'side',
    'gate',
    'double gate',
    'z',
    'letter',
    'accordion',
    'joy',
    'pocket',
  ],
  'Rises as it opens': ['bridge', 'floating layer', 'box step', 'v-fold'],
  'Steps forward or turns, on slits': ['side step', 'centre step', 'shutter', 'swing'],
  'Stands propped up': ['easel', 'twist easel'],
  'Is deep, to look into': ['tunnel', 'shadow box', 'box card'],
  'Moves by hand': ['waterfall', 'slider', 'endless'],
  'Boxes and bands': ['exploding box', 'match box', 'belly band'],
  'A card of your own': [free.name],
}

/** A heading and the folds below it. */
export interface FoldGroup {
  readonly title: string
  readonly folds: readonly CatalogueFold[]
}

/** Folds under what they have in common; one that is not sorted yet stands before those of one's own. */
export function groupsOf(folds: readonly CatalogueFold[]): FoldGroup[] {
  const sorted = new Set(Object.values(kinds).flat())
  const groups = Object.entries(kinds).map(([title, names]) => ({
    title,
    folds: folds.filter(({ name }) => names.includes(name)),
  }))
  const others = { title: 'Other folds', folds: folds.filter(({ name }) => !sorted.has(name)) }
  return [...groups.slice(0, -1), others, ...groups.slice(-1)].filter((group) => group.folds.length > 0)
}
