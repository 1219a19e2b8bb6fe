import { groupBy } from '../../length/group-by.ts'
import { once } from '../../length/once.ts'
import { latin } from './latin.ts'
import type { Named } from './named.ts'
import { overlaps, type Sentence } from './sentence.ts'

/** A place in a sentence where something of a card is spoken of. */
export interface Mention {
  readonly named: Named
  /** From where to where in the words. */
  readonly start: number
  readonly end: number
  /** By a measure of it, by its whole name, or by the last word of it that no other name has ("the wall"). */
  readonly by: 'measure' | 'name' | 'last word'
}

/** Finds what sentences speak of. */
export type FindMentions = (sentence: Pick<Sentence, 'words' | 'measures'>) => Mention[]

interface Pattern {
  /** Made when it is looked for: most names of a card are in few of its sentences. */
  readonly word: () => RegExp
  /** How every form of the word begins, in lower case: where that is not, the word is not. */
  readonly start: string
  readonly named: readonly Named[]
  readonly by: 'name' | 'last word'
}

/**
 * Makes what finds mentions of these names: in any letter case, one or several of it, and with a hyphen where the name
 * has a space. Mentions come in the order of the words and do not overlap; the longest name wins. Names that several
 * cards have are all mentioned.
 */
export function mentionFinder(all: readonly Named[]): FindMentions {
  const patterns = patternsOf(all)
  return ({ words, measures }) => {
    const taken: { start: number; end: number }[] = measures.map(({ start, end }) => ({ start, end }))
    const mentions = measures.flatMap(({ start, end, paths }) =>
      ownersOf(paths, all).map((named): Mention => ({ named, start, end, by: 'measure' })),
    )
    const lower = words.toLowerCase()
    for (const { word, named, by } of patterns.filter((pattern) => lower.includes(pattern.start)))
      for (const [start, end] of placesOf(word(), words)) {
        if (taken.some((other) => overlaps(other, { start, end }))) continue
        taken.push({ start, end })
        mentions.push(...named.map((one): Mention => ({ named: one, start, end, by })))
      }
    return mentions.sort((a, b) => a.start - b.start)
  }
}

/** Where a pattern is found as a whole word. `matchAll` would make a new pattern for every text. */
function placesOf(word: RegExp, words: string): [start: number, end: number][] {
  const places: [number, number][] = []
  word.lastIndex = 0
  for (let found = word.exec(words); found; found = word.exec(words)) {
    const [start, end] = [found.index, found.index + found[0].length]
    if (isWhole(words, start, end)) places.push([start, end])
    else word.lastIndex = start + 1
  }
  return places
}

/** Whether no word goes on before or behind a place: in whichever script, which a pattern for Latin names does not ask for. */
const isWhole = (words: string, start: number, end: number): boolean =>
  !/[\p{L}\p{N}]$/u.test(words.slice(Math.max(0, start - 2), start)) &&
  !/^[\p{L}\p{N}]/u.test(words.slice(end, end + 2))

/** What measures are of: `backdrop` of `backdrop.border.left`, and of `box.backdrop.width` in the card `box`. */
function ownersOf(paths: readonly (readonly string[])[], all: readonly Named[]): Named[] {
  const owners = paths.flatMap(([first, second]) => {
    const own = all.filter(({ name }) => name === first)
    return own.length > 0 ? own : all.filter(({ card, name }) => card.name === first && name === second)
  })
  return [...new Set(owners)]
}

function patternsOf(all: readonly Named[]): Pattern[] {
  const byName = groupBy(all, ({ name }) => name.toLowerCase())
  // What has no name is not spoken of; it would be found everywhere, without end.
  byName.delete('')
  const several = [...byName.keys()].filter((name) => /\s/.test(name))
  const lastWords = groupBy(several, (name) => /\S+$/.exec(name)?.[0] ?? '')
  return [
    ...[...byName.keys()].flatMap((name): Pattern[] => {
      const [, thing = '', number] = /^(.*\S)\s+(\d)$/.exec(name) ?? []
      const nth = ordinals[Number(number) - 1]
      return nth === undefined
        ? []
        : [{ ...wordOf(`${nth} ${thing}`), named: byName.get(name) ?? [], by: 'name' }]
    }),
    ...[...byName]
      .sort(([a], [b]) => b.length - a.length)
      .map(([name, named]): Pattern => ({ ...wordOf(name), named, by: 'name' })),
    ...[...lastWords].flatMap(([last, [name = '', ...others]]): Pattern[] => {
      const isOther = others.length > 0 || byName.has(last) || last.length < 3
      return isOther ? [] : [{ ...wordOf(last), named: byName.get(name) ?? [], by: 'last word' }]
    }),
  ]
}

/** `nest 1` is the first nest. */
const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth']

/** A name as a whole word, one or several of it. */
function wordOf(name: string): Pick<Pattern, 'word' | 'start'> {
  // Dashes among the spaces go with them: by themselves they could be read in more ways than can be tried.
  const escaped = name.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&').replace(/\s[\s-]*/g, '[\\s-]+')
  const plural = /[^aeiou]y$/.test(name)
    ? `(?:${escaped.slice(0, -1)}ies|${escaped})`
    : /fe?$/.test(name)
      ? `(?:${escaped.replace(/fe?$/, 'ves')}|${escaped}s?)`
      : /(?:[sxz]|[cs]h|o)$/.test(name)
        ? `${escaped}(?:e?s)?`
        : `${escaped}s?`
  // A plural changes the last letter or two of a name.
  const start = /^\S*/.exec(name.slice(0, Math.max(1, name.length - 2)))?.[0] ?? ''
  // Asked for in the pattern too, as far as it can be at little cost: a long name would be read to its end within each word.
  const isLatin = /^[\0-\u024f]*$/.test(name)
  const letter = isLatin ? `[${latin}\\d]` : '[\\p{L}\\p{N}]'
  return {
    word: once(() => new RegExp(`(?<!${letter})${plural}(?!${letter})`, isLatin ? 'gi' : 'giu')),
    start: start.toLowerCase(),
  }
}
