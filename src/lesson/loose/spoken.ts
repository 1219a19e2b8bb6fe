import type { Card } from '../../card/card.ts'
import { type FindMentions, mentionFinder } from '../prose/mentions.ts'
import type { Named } from '../prose/named.ts'
import { overlaps, type Sentence } from '../prose/sentence.ts'

/** What a sentence speaks of at one place: all the owners of names that the words may mean. */
export interface Spoken {
  readonly card: Card
  readonly owners: readonly string[]
  readonly start: number
  readonly end: number
}

/** Finds what a sentence speaks of, in the order of its words. */
export type FindSpoken = (sentence: Pick<Sentence, 'words' | 'measures'>) => Spoken[]

/** What the shut card itself is called. */
const shutCard =
  /\b(?:(?:shut|closed|folded|finished|whole) card|(?:this|the|a|our|your|your own|gate|bridge|easel|z) card(?! (?:stock|paper|sheet))|card(?: \w+)? (?:is|measures|comes out|ends up)|(?:shut|closed|folded)(?= (?:it|size|this|the))|(?:shut|closes|folds) to)\b/gi

/**
 * Finds pieces, panels and lettering by their names, as `mentionFinder` does, and besides: lengths with a name of their
 * own ("the legs"), the last word that several names share ("both doors"), and the shut card.
 */
export function spokenFinder(cards: readonly Card[], named: readonly Named[]): FindSpoken {
  const others = cards.flatMap((card) =>
    ownersOf(card, named).map((name): Named => ({ name, kind: 'panel', card })),
  )
  const all = [...named, ...others]
  const byName: FindMentions = mentionFinder(all)
  const shared = sharedWords(all)
  const letters = cards.flatMap((card) => lettersOf(card, named))
  const [main] = cards
  return (sentence) => {
    const found: Spoken[] = byName(sentence).map(({ named: { name, card }, start, end }) => ({
      card,
      owners: [name],
      start,
      end,
    }))
    const isFree = (start: number, end: number): boolean =>
      !found.some((one) => overlaps(one, { start, end }))
    for (const { word, names, card } of [...shared, ...letters])
      for (const { index: start, 0: said } of sentence.words.matchAll(word))
        if (isFree(start, start + said.length))
          found.push({ card, owners: names, start, end: start + said.length })
    if (main)
      for (const { index: start, 0: said } of sentence.words.matchAll(shutCard))
        if (isFree(start, start + said.length))
          found.push({ card: main, owners: ['closed', 'card'], start, end: start + said.length })
    return found.sort((a, b) => a.start - b.start)
  }
}

/** Lettering is spoken of by its letters. */
function lettersOf(card: Card, named: readonly Named[]): { word: RegExp; names: string[]; card: Card }[] {
  const names = named.filter((one) => one.card === card && one.kind === 'lettering').map(({ name }) => name)
  return names.length > 0 ? [{ word: /(?<!\p{L})letters?(?!\p{L})/giu, names, card }] : []
}

/** First words of names that are no piece, panel or lettering: `leg`, `stop`. A name that begins with a dot has none. */
function ownersOf(card: Card, named: readonly Named[]): string[] {
  const known = new Set(named.filter((one) => one.card === card).map(({ name }) => name))
  const owners = new Set(card.names.paths().map((path) => path.split('.')[0] ?? ''))
  const others = ['', 'closed', 'card', 'part']
  return [...owners].filter((owner) => !known.has(owner) && !others.includes(owner))
}

/** `door` of `left door` and `right door`, unless something is named `door` itself. */
function sharedWords(all: readonly Named[]): { word: RegExp; names: string[]; card: Card }[] {
  const groups = new Map<string, { names: Set<string>; card: Card }>()
  for (const { name, card } of all) {
    const last = /\s(\S+)$/.exec(name)?.[1]?.toLowerCase()
    if (last === undefined || last.length < 3) continue
    const group = groups.get(last) ?? { names: new Set<string>(), card }
    group.names.add(name)
    groups.set(last, group)
  }
  return [...groups]
    .filter(([last, { names }]) => names.size > 1 && all.every(({ name }) => name.toLowerCase() !== last))
    .map(([last, { names, card }]) => ({
      word: new RegExp(
        `(?<![\\p{L}\\p{N}])${last.replace(/[^\p{L}\p{N}]/gu, '\\$&')}s?(?![\\p{L}\\p{N}])`,
        'giu',
      ),
      names: [...names],
      card,
    }))
}
