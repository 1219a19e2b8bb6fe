import type { Span } from './engine.ts'

/** A field of the card's form. Its text is as the teacher wrote it; empty when the usual value holds. */
export interface Field extends Partial<Span> {
  /** Keys from the block down: `['layers', 'backdrop', 'border']`. */
  readonly path: readonly string[]
  readonly label: string
  readonly kind: 'size' | 'length' | 'count' | 'angle' | 'choice' | 'words' | 'panels' | 'flag'
  readonly text: string
  /** What holds when nothing is written, in words: `3/4 in`. */
  readonly usual?: string
  /** What may be chosen, for a choice and for panels. */
  readonly choices?: readonly { readonly value: string; readonly label: string }[]
  readonly help?: string
  /** Findings at this field. */
  readonly trouble: readonly { readonly message: string; readonly suggestion?: string; readonly severity: string }[]
}

/** Fields that belong together. */
export interface FieldGroup {
  readonly name: string
  readonly title: string
  readonly path: readonly string[]
  readonly fields: readonly Field[]
  /** A layer, span or piece may be taken out or renamed. */
  readonly removable: boolean
}

/** The card block as fields. */
export interface CardForm {
  readonly card: string
  readonly fold: string
  readonly groups: readonly FieldGroup[]
  /** What may be added: a layer, a span, a window, a loose piece, lettering, an envelope. */
  readonly additions: readonly { readonly what: string; readonly label: string }[]
}

/** What the form asks for. */
export type FormChange =
  | { readonly kind: 'set'; readonly path: readonly string[]; readonly text: string }
  | { readonly kind: 'clear'; readonly path: readonly string[] }
  | { readonly kind: 'add'; readonly what: string; readonly name: string }
  | { readonly kind: 'remove'; readonly path: readonly string[] }
