import type { Span } from './engine.ts'

/** Something wrong, in words, with what would cure it. */
export interface Trouble {
  readonly message: string
  readonly suggestion?: string
  readonly severity: string
  /** Where it stands in the text. */
  readonly at?: number
}

/** A field of the card's form. Its text is as the teacher wrote it; empty when the usual value holds. */
export interface Field extends Partial<Span> {
  /** Keys from the block down: `['layers', 'backdrop', 'border', 'left']`. An item of a list is a number. */
  readonly path: readonly string[]
  readonly label: string
  /** `shape` is how a border is written: one length, two or four. */
  readonly kind: 'size' | 'length' | 'count' | 'angle' | 'choice' | 'words' | 'panels' | 'flag' | 'shape'
  readonly text: string
  /** The names of `panels` one by one. */
  readonly items?: readonly string[]
  /** What the text comes to where it does not say so itself: `5 3/8 in`. Unknown while the card has mistakes. */
  readonly comes?: string
  /** What holds when nothing is written, in words: `3/4 in`. */
  readonly usual?: string
  /** What may be chosen, for a choice and for panels. */
  readonly choices?: readonly { readonly value: string; readonly label: string }[]
  /** What is often written. */
  readonly suggestions?: readonly string[]
  readonly help?: string
  /** Findings at this field. */
  readonly trouble: readonly Trouble[]
}

/** What a group of fields is about. */
export type GroupKind =
  | 'card'
  | 'base'
  | 'box'
  | 'layer'
  | 'span'
  | 'window'
  | 'lettering'
  | 'piece'
  | 'envelope'
  | 'other'

/** Fields that belong together. */
export interface FieldGroup extends Partial<Span> {
  /** Unlike that of any other group: `layers.backdrop`. */
  readonly name: string
  readonly kind: GroupKind
  readonly title: string
  readonly path: readonly string[]
  readonly fields: readonly Field[]
  /** What the piece comes to: `5 3/8 × 5 in`. */
  readonly comes?: string
  /** A layer, span or piece may be taken out or renamed: its name stands at `from`. */
  readonly removable: boolean
  /** What is wrong with it that belongs to none of its fields. */
  readonly trouble: readonly Trouble[]
}

/** What may be added to a card. */
export type Addition = 'layer' | 'span' | 'window' | 'piece' | 'lettering' | 'envelope'

/** One length for all edges, one for the sides and one for the ends, or one for each edge. */
export type BorderShape = 'one' | 'two' | 'four'

/** The card block as fields. */
export interface CardForm {
  readonly card: string
  readonly fold: string
  /** Whether its fields can be changed: not while the block cannot be read as a whole. */
  readonly editable: boolean
  readonly groups: readonly FieldGroup[]
  /** What may be added, with a name that is free. An envelope needs none. */
  readonly additions: readonly { readonly what: Addition; readonly label: string; readonly name: string }[]
  /** Keys that only the text shows, such as the panels of a free card. */
  readonly onlyInText: readonly string[]
  /** What is wrong with the block that belongs to none of its groups. */
  readonly trouble: readonly Trouble[]
}

/** What the form asks for. */
export type FormChange =
  | { readonly kind: 'set'; readonly path: readonly string[]; readonly text: string }
  /** One name or several, such as the panels that a layer is on. */
  | { readonly kind: 'list'; readonly path: readonly string[]; readonly items: readonly string[] }
  /** Another way of writing a border. */
  | { readonly kind: 'shape'; readonly path: readonly string[]; readonly shape: BorderShape }
  | { readonly kind: 'clear'; readonly path: readonly string[] }
  | { readonly kind: 'add'; readonly what: Addition; readonly name: string }
  | { readonly kind: 'remove'; readonly path: readonly string[] }
