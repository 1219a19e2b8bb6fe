import type { Look } from '../../engine/engine.ts'

/** What somebody points at on the page. */
export interface PlaceOnPage {
  readonly step?: number
  /** The how-manieth measure of so many that stand in the text of the step. */
  readonly measure?: { readonly index: number; readonly of: number }
  /** The how-manieth figure of the step. */
  readonly figure?: number
  /** The how-manieth card's table. */
  readonly card?: number
  /** What stands there. */
  readonly words?: string
}

/** Where that stands in the text of the lesson; undefined when it stands nowhere in it. */
export function placeInText(
  place: PlaceOnPage,
  { text, steps, cards }: Pick<Look, 'text' | 'steps' | 'cards'>,
): number | undefined {
  if (place.card !== undefined) return cards[place.card]?.from
  if (place.step === undefined) return place.words === undefined ? undefined : wordsIn(text, place.words)
  const span = steps.find(({ number }) => number === place.step)
  if (!span) return undefined
  const said = text.slice(span.from, span.to)
  return span.from + (placeInStep(place, said) ?? 0)
}

function placeInStep({ measure, figure, words }: PlaceOnPage, said: string): number | undefined {
  const figures = [...said.matchAll(/::figure\b/g)]
  if (figure !== undefined) return figures[figure]?.index
  if (measure) {
    const places = measuresIn(said)
    if (places.length === measure.of) return places[measure.index]
  }
  return words === undefined ? undefined : wordsIn(said, words)
}

/** Where measures stand in the text of a step: what is in braces, but not the settings of a directive. */
function measuresIn(said: string): number[] {
  const plain = said.replace(/::(figure|scan)\[[^\]]*\](\{[^}]*\})?/g, (all) => ' '.repeat(all.length))
  return [...plain.matchAll(/(?<![\\\]])\{[^{}]*\}/g)].map(({ index }) => index)
}

/** So many words tell a paragraph from the others. */
const enough = 4

/** Where some words begin. Only those before the first number are looked for: numbers stand as names in the text. */
function wordsIn(text: string, words: string): number | undefined {
  const [start = ''] = /^[^\d]*/.exec(words.trim()) ?? []
  const all = start.match(/[\p{L}’']+/gu)?.slice(0, enough) ?? []
  if (all.length === 0) return undefined
  const found = new RegExp(
    all.map((word) => word.replace(/[’']/g, "[’']")).join("[^\\p{L}’']{1,12}"),
    'iu',
  ).exec(text)
  return found?.index
}

/** The step, or the card, whose text a place is in. */
export interface Written {
  readonly step?: number
  readonly card?: number
}

/** What is being written where the cursor is. */
export function writtenAt({ steps, cards }: Pick<Look, 'steps' | 'cards'>, cursor: number): Written {
  const inside = ({ from, to }: { readonly from: number; readonly to: number }): boolean =>
    cursor >= from && cursor <= to
  const step = steps.findLast(inside)?.number
  if (step !== undefined) return { step }
  const card = cards.findIndex(inside)
  return card < 0 ? {} : { card }
}
