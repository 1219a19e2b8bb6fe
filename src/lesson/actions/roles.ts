import type { Mention } from '../prose/mentions.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Action, Thing } from './action.ts'
import type { Word } from './words.ts'

/** What a stretch of a sentence says of the things in it. */
export type Roles = Pick<Action, 'objects' | 'onto' | 'says' | 'noun'>

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))

const targets = set(
  'on onto to in into inside over across against behind under underneath upon around round between through',
)
const prepositions = set(
  'on onto to in into inside over across against behind under underneath upon around round between through from with along at beside above below than as by out off beyond towards toward away along near without until within for like so while till flush',
)
const pronouns = set('it them one ones each both these those this that another two three four')
const several = set('everything all pieces parts layers papers rest others remaining shapes')
const glues = set('tape glue adhesive pads dots squares foam paste pva')
const ofItself = set(
  'half end ends edge edges side sides lap tab tabs flap flaps part parts corner corners foot',
)
const small = set(
  'the a an its their your and or then down up again now flat together back firmly first last other same right left only just too place long short upper lower free whole folded',
)
/** Before `of` they are no things: a sheet of film. */
const measuresOut = set('sheet piece pieces strip strips pair square length sheets squares set')

/** Names that are words for any part of a card as well, so that `the front` need not be the piece `front`. */
const places = set(
  'front back top bottom side sides edge edges middle inside outside left right end ends corner half centre center fold floor',
)
const determiners = set('the a an each every both one this that these those its your another')
/** What a measure may ask of a piece that something is done to. */
const asked = set('size count')
const scores = set('scores valleys mountains uprights levels slants')

/**
 * What a verb is done to, and what that is put on.
 *
 * @param words from the verb, which is left out, to the next one.
 * @param mentions of the sentence.
 */
export function rolesIn(
  words: readonly Word[],
  mentions: readonly Mention[],
  sentence: Pick<Sentence, 'words' | 'measures'>,
): Roles {
  const objects: Thing[] = []
  const onto: Thing[] = []
  const others: string[] = []
  let preposition: string | undefined
  for (const [i, word] of words.entries()) {
    const before = words[i - 1]
    if (word.kind === 'plain' && isPreposition(word, before)) {
      if (word.text !== 'of') preposition = word.text
      else if (preposition === undefined && !(before && measuresOut.has(before.text))) preposition = 'of'
      continue
    }
    const here = isSaid(word) ? mentions.filter(({ start, end }) => start < word.end && word.start < end) : []
    if (here.length === 0) {
      if (preposition === undefined && word.kind === 'plain') others.push(word.text)
      continue
    }
    if (preposition !== undefined && opensAnother(words, i)) preposition = undefined
    const role = preposition === undefined ? objects : targets.has(preposition) ? onto : undefined
    for (const mention of here) {
      const isMeasure = mention.by === 'measure'
      const counts = isMeasure
        ? isAsked(mention, sentence, role === objects)
        : isThing(mention, before, sentence)
      const things = isMeasure ? objects : role
      if (counts) things?.push({ named: mention.named, sure: isSure(mention, before) })
    }
  }
  const noun = others.at(-1)
  return {
    objects: once(objects),
    onto: once(onto),
    says: objects.length > 0 ? 'name' : saysOf(others),
    ...(noun !== undefined && { noun }),
  }
}

const isSaid = ({ kind }: Word): boolean => kind === 'name' || kind === 'measure'

const once = (things: readonly Thing[]): Thing[] =>
  things.flatMap(({ named }, i) =>
    things.findIndex((other) => other.named === named) < i
      ? []
      : [{ named, sure: things.some((other) => other.named === named && other.sure) }],
  )

function isPreposition({ text }: Word, before: Word | undefined): boolean {
  if (text === 'in' && before?.kind === 'number') return false
  return text === 'of' || prepositions.has(text)
}

/** `… on the deck, and the funnel on the cabin`: the funnel is not what the other thing is put on. */
function opensAnother(words: readonly Word[], at: number): boolean {
  let before = at - 1
  while (['the', 'a', 'an', 'one', 'other', 'each'].includes(words[before]?.text ?? '')) before--
  let after = at + 1
  while (words[after]?.kind === 'name') after++
  return (
    words[before]?.text === 'and' && ['on', 'onto', 'to', 'over', 'across'].includes(words[after]?.text ?? '')
  )
}

/** `the backdrop's edge` is not the backdrop, and `back` without an article is no panel. */
function isThing(
  { named, end }: Mention,
  before: Word | undefined,
  { words }: Pick<Sentence, 'words'>,
): boolean {
  const isBare = before === undefined || (before.kind === 'plain' && !determiners.has(before.text))
  if (isBare && places.has(named.name.toLowerCase())) return false
  return !/^['’]s?(?![\p{L}\p{N}])/u.test(words.slice(end))
}

/** A distance that is taken from a piece does not make anything be done to it; its size, its count and its scores do. */
function isAsked({ start }: Mention, { measures }: Pick<Sentence, 'measures'>, isObject: boolean): boolean {
  const paths = measures.find((one) => one.start === start)?.paths ?? []
  const parts = paths.length === 1 ? (paths[0] ?? []) : []
  return parts.some((part) => part === 'size' || (asked.has(part) && isObject) || scores.has(part))
}

function isSure({ named: { name, kind }, by }: Mention, before: Word | undefined): boolean {
  if (by === 'measure') return true
  if (by !== 'name' || kind !== 'piece' || places.has(name.toLowerCase())) return false
  return (
    /[\s\d]/.test(name) || before === undefined || before.kind !== 'plain' || determiners.has(before.text)
  )
}

function saysOf(others: readonly string[]): Roles['says'] {
  if (others.some((word) => glues.has(word))) return 'glue'
  if (others.some((word) => several.has(word))) return 'several'
  const isSmall = (word: string): boolean => small.has(word) || word.endsWith('ly')
  if (others.every(isSmall)) return 'nothing'
  const isMeant = (word: string): boolean => isSmall(word) || pronouns.has(word) || ofItself.has(word)
  return others.some((word) => word === 'it' || word === 'them') || others.every(isMeant)
    ? 'pronoun'
    : 'other'
}
