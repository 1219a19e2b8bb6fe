import { foldStyles } from '../../../card/fold-styles.ts'
import { turningNames } from '../../../card/panel-names.ts'
import { type Entry, type Fields, readYaml } from '../../../card/yaml.ts'
import type { Completion } from '../complete.ts'
import type { KeptLesson } from '../kept-lesson.ts'
import type { Site } from '../site/site.ts'
import { keysAt, namedGroups, valueAt, type Word } from '../vocabulary/card-words.ts'
import { measureCompletions } from './measures.ts'
import { namesOfCard } from './names.ts'
import { sizeWords } from './sizes.ts'
import { stocksOf } from './stocks.ts'

/** What may be written in a card block. */
export function cardCompletions(
  site: Extract<Site, { kind: 'card' }>,
  { lesson, filled }: KeptLesson,
): Completion[] {
  const { fields } = readYaml(site.block).top.value
  const fold = textOf(fields.get('fold')?.value)
  const from = site.from
  const at = from + site.word.length
  if (site.at === 'key') {
    const there = fieldsAt(fields, site.path)
    return (keysAt(site.path, fold) ?? [])
      .filter(({ word }) => !there?.has(word) || word === site.word)
      .map((word) => completion(word, from, 'key', `${word.word}: `))
  }
  const { kind, words } = valueAt(site.path, fold)
  const card = filled.cards.find((one) => one.card.name === site.block.name)?.card
  const written = words.map((word) => completion(word, from, kind === 'fold' ? 'fold' : 'word'))
  const names = card ? measureCompletions(site.word, at, namesOfCard(card, filled.unit)) : []
  switch (kind) {
    case 'size':
      return [...sizeWords(from, filled.unit), ...names]
    case 'length':
      return [...written, ...names]
    case 'panels':
      return placesIn(fields, fold, site.path[1], card?.structure.plates.map(({ name }) => name) ?? []).map(
        (one) => ({
          ...one,
          from,
        }),
      )
    case 'piece':
      return placesIn(fields, fold, site.path[1], []).map((one) => ({ ...one, from }))
    case 'stock':
      return stocksOf(lesson).map((word) => completion({ word }, from, 'stock'))
    default:
      return written
  }
}

function completion({ word, help }: Word, from: number, kind: Completion['kind'], insert = word): Completion {
  return { insert, from, label: word, ...(help !== undefined && { info: help }), kind }
}

/** Panels of the fold, and what is stuck on: what something else can be on. */
function placesIn(
  fields: Fields,
  fold: string | undefined,
  own: string | undefined,
  plates: readonly string[],
): Omit<Completion, 'from'>[] {
  const style = foldStyles.get(fold ?? '')
  const panels = style ? Object.keys(style.panels) : []
  const parts = namedGroups
    .filter((group) => group !== 'lettering' && group !== 'apertures')
    .flatMap((group) => [...(fieldsAt(fields, [group])?.keys() ?? [])])
  const others = style ? [...turningNames(style, style.panels).keys()] : []
  // A fold that counts its panels has others than the usual ones: those of the card as it is built.
  const built = plates.filter((name) => !parts.includes(name) && !name.includes(' on '))
  const names = new Set([...(built.length > 0 ? built : panels), ...others])
  return [
    ...[...names].map((word) => ({ insert: word, label: word, detail: 'panel', kind: 'panel' as const })),
    ...parts
      .filter((word) => word !== own && !names.has(word))
      .map((word) => ({ insert: word, label: word, detail: 'piece', kind: 'piece' as const })),
  ]
}

const textOf = (entry: Entry | undefined): string | undefined =>
  entry?.kind === 'text' ? entry.text.trim() : undefined

/** The mapping at a path, if there is one. */
function fieldsAt(fields: Fields, path: readonly string[]): Fields | undefined {
  let here: Fields | undefined = fields
  for (const key of path) {
    const value: Entry | undefined = here?.get(key)?.value
    here = value?.kind === 'map' ? value.fields : undefined
  }
  return here
}
