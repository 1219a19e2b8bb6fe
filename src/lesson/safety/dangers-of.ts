import { within } from '../../card/at.ts'
import type { Place } from '../../length/finding.ts'
import type { FilledLesson, Lesson } from '../lesson.ts'
import type { FindMentions } from '../prose/mentions.ts'
import { overlaps, type Sentence } from '../prose/sentence.ts'
import { dangersIn, type Reading } from './danger.ts'
import type { Hazard } from './hazard.ts'

/** What a lesson names that has a hazard, and where. */
export interface NamedDanger {
  readonly hazard: Hazard
  /** As the lesson has it. */
  readonly word: string
  readonly place: Place
}

/** What is looked at: a lesson and its words. */
export interface Looked {
  readonly lesson: Pick<Lesson, 'source' | 'cards'>
  readonly filled: Pick<FilledLesson, 'frontMatter' | 'wording' | 'supplies' | 'cards'>
  readonly sentences: readonly Sentence[]
  readonly mentions: FindMentions
}

/** The first naming of each hazard: in the supplies, in what the cards are made of, in the steps and call-outs. */
export function dangersOf(looked: Looked): NamedDanger[] {
  const all = [...inSupplies(looked), ...inStocks(looked), ...inSteps(looked)]
  return all.filter(({ hazard }, i) => all.findIndex((other) => other.hazard === hazard) === i)
}

const readingOf = ({ filled }: Looked, as: Reading['as']): Reading => ({
  as,
  locale: filled.wording.locale,
  children: filled.frontMatter.for === 'children',
})

function inSupplies(looked: Looked): NamedDanger[] {
  const { each, shared, tutor } = looked.filled.supplies
  return [...each, ...shared, ...tutor].flatMap(({ item, place }) =>
    dangersIn(item, readingOf(looked, 'item')).map(({ hazard, start, end }) => ({
      hazard,
      word: item.slice(start, end),
      place: partOf(place, item.length, start, end),
    })),
  )
}

/** A stock has no place of its own any more: it is looked for in the card blocks. */
function inStocks(looked: Looked): NamedDanger[] {
  const { source, cards: blocks } = looked.lesson
  const stocks = new Set(
    looked.filled.cards.flatMap(({ card: { structure, envelope } }) => [
      ...structure.pieces.map(({ stock }) => stock.name),
      ...(envelope ? [envelope.stock.name] : []),
    ]),
  )
  return [...stocks].flatMap((name) =>
    dangersIn(name, readingOf(looked, 'item')).flatMap(({ hazard, start, end }) => {
      const block = blocks.find(({ text }) => text.includes(name)) ?? blocks[0]
      if (!block) return []
      const word = name.slice(start, end)
      const at = source.text.indexOf(word, block.place.offset)
      const isThere = at >= 0 && at < (block.place.offset ?? 0) + block.text.length
      return [{ hazard, word, place: isThere ? source.place(at, at + word.length) : block.place }]
    }),
  )
}

/** Steps, and call-outs wherever they stand: they are followed too. A caution uses nothing. */
const isFollowed = ({ step, callout, kind }: Sentence): boolean =>
  kind !== 'heading' && callout !== 'caution' && (step !== undefined || callout !== undefined)

function inSteps(looked: Looked): NamedDanger[] {
  return looked.sentences.filter(isFollowed).flatMap((sentence) => {
    const { words, place } = sentence
    let taken: ReturnType<FindMentions> | undefined
    const isTaken = (start: number, end: number): boolean => {
      taken ??= looked.mentions(sentence)
      return taken.some((other) => overlaps(other, { start, end }))
    }
    return dangersIn(words, { ...readingOf(looked, 'step'), isTaken }).map(({ hazard, start, end }) => ({
      hazard,
      word: words.slice(start, end),
      place: place(start, end),
    }))
  })
}

/** The words within an item, if that stands in the file as it is. */
function partOf(place: Place, length: number, start: number, end: number): Place {
  const same = place.offset !== undefined && place.end !== undefined && place.end - place.offset === length
  return same ? within(place, start, end) : place
}
