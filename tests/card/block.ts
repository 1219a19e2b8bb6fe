import type { Card } from '../../src/card/card.ts'
import { type CardWishes, checkCard } from '../../src/card/check.ts'
import { evaluate, type Value } from '../../src/length/evaluate.ts'
import { formatLength, formatLengths, formatNumber, formatSize } from '../../src/length/format.ts'
import { usualGrid } from '../../src/length/grid.ts'
import type { Unit } from '../../src/length/length.ts'
import { parseMeasure } from '../../src/length/parse.ts'
import { readSize } from '../../src/length/text.ts'

/** Checks a card block that stands alone, from line 1. */
export function check(
  text: string,
  {
    unit = 'in',
    closed,
    ...rest
  }: { unit?: Unit; closed?: string } & Partial<Omit<CardWishes, 'closed'>> = {},
) {
  const wishes: CardWishes = {
    unit,
    grid: usualGrid[unit],
    ...rest,
    ...(closed && { closed: readSize(closed) }),
  }
  return checkCard({ name: 'card', text, place: { line: 1, column: 1, offset: 0 } }, wishes)
}

/** A card that must check clean. */
export function cardOf(text: string, options: Parameters<typeof check>[1] = {}): Card {
  const { card, findings } = check(text, options)
  if (!card)
    throw new Error(findings.map((f) => `${f.place?.line}:${f.place?.column} ${f.message}`).join('\n'))
  return card
}

/** A measure of a card as it would be printed. */
export function measure(card: Card, text: string): string {
  const value: Value = evaluate(parseMeasure(text).expression, card.names.lookup)
  switch (value.kind) {
    case 'length':
      return formatLength(value.value, card.unit)
    case 'size':
      return formatSize(value.value, card.unit)
    case 'lengths':
      return formatLengths(value.value, card.unit)
    case 'number':
      return formatNumber(value.value, 'in')
    case 'text':
      return value.value
  }
}
