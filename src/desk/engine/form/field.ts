import type { Field } from '../form.ts'
import { partKeyHelp } from '../vocabulary/key-help.ts'
import { type CardBlock, pairSpan, spanOf, spotAt } from './card-block.ts'
import { at, isGroup, isList } from './plain.ts'
import type { Troubles } from './troubles.ts'
import { comesTo, type ValueOf } from './values.ts'
import { labelOf } from './words.ts'

/** What fields are made with. */
export interface Making {
  readonly card: CardBlock
  readonly troubles: Troubles
  readonly measure: ValueOf
}

/** What a field is beyond its place. */
export interface Wish extends Partial<Pick<Field, 'label' | 'usual' | 'choices' | 'suggestions' | 'help'>> {
  readonly kind: Field['kind']
  /** The name of its length among the measures. */
  readonly name?: string
}

/** A field of the form with what is written there. */
export function fieldAt({ card, troubles, measure }: Making, path: readonly string[], wish: Wish): Field {
  const { kind, name, usual, choices, suggestions } = wish
  const key = path.at(-1) ?? ''
  const plain = at(card.plain, path)
  const text = typeof plain === 'string' ? plain.trim() : ''
  const value = name === undefined ? undefined : measure(name)
  const span = whereIs(card, path)
  const help = wish.help ?? partKeyHelp(key)
  const held = value ?? usual
  const items =
    kind === 'panels' ? (isList(plain) ? plain.map(String) : text === '' ? [] : [text]) : undefined
  return {
    path,
    label: wish.label ?? labelOf(key),
    kind,
    text: items ? items.join(', ') : text,
    ...span,
    ...(items && { items }),
    ...comesTo(text, value),
    ...(text === '' && held !== undefined && { usual: held }),
    ...(choices && { choices }),
    ...(suggestions && suggestions.length > 0 && { suggestions }),
    ...(help !== undefined && { help }),
    trouble: troubles.take(span),
  }
}

/** From the key to the end of its value. */
export function whereIs(card: CardBlock, path: readonly string[]): { from: number; to: number } | object {
  const spot = spotAt(card, path)
  if (spot?.pair) {
    const { from, to } = pairSpan(card, spot.pair)
    return { from, to }
  }
  return spot?.node ? spanOf(card, spot.node) : {}
}

/** One field, or one for each item where a list is written. */
export function fieldsAt(making: Making, path: readonly string[], wish: Wish): Field[] {
  const plain = at(making.card.plain, path)
  if (!isList(plain)) return [fieldAt(making, path, wish)]
  const label = wish.label ?? labelOf(path.at(-1) ?? '')
  const { name: _, ...rest } = wish
  return plain.map((__, i) => fieldAt(making, [...path, String(i)], { ...rest, label: `${label}, ${i + 1}` }))
}

/** The keys of a group as they are written. */
export function keysAt({ card }: Making, path: readonly string[]): string[] {
  const plain = at(card.plain, path)
  return isGroup(plain) ? [...plain.keys()] : []
}
