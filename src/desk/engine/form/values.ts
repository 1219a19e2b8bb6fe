import type { Card } from '../../../card/card.ts'
import { ExpressionError } from '../../../length/expression.ts'
import type { Unit } from '../../../length/length.ts'
import { formatValue } from '../../../lesson/measure.ts'

/** What a name of the card comes to, as the print says it; undefined while the card has mistakes, or for no such name. */
export type ValueOf = (name: string) => string | undefined

export const valuesOf =
  (card: Card | undefined, unit: Unit): ValueOf =>
  (name) => {
    if (!card) return undefined
    try {
      return formatValue(card.names.lookup(name.split('.'), { start: 0, end: 0 }), unit)
    } catch (error) {
      if (error instanceof ExpressionError) return undefined
      throw error
    }
  }

const bare = (text: string): string => text.replace(/[x×]/g, '×').replace(/\s+/g, '').toLowerCase()

/** What a text comes to, unless that is what it says. */
export const comesTo = (text: string, value: string | undefined): { comes: string } | object =>
  text !== '' && value !== undefined && bare(text) !== bare(value) ? { comes: value } : {}
