import type { Place } from '../../../length/finding.ts'
import type { Fold } from '../../structure.ts'
import type { Entry, Field, Fields } from '../../yaml.ts'

/** The way that the panels of a strip follow one another: its creases run the other way. */
export type Along = 'width' | 'height'

export const acrossOf = (along: Along): Along => (along === 'width' ? 'height' : 'width')

/** A panel in a strip as it is written. Without a length it is as long as where it stands first. */
export interface WrittenPanel {
  readonly name: string
  readonly place: Place
  readonly length?: Entry
}

/** A strip as it is written: panels from left to right, or upwards, with a crease between each and the next. */
export interface WrittenStrip {
  readonly name: string
  readonly place: Place
  readonly along: Along
  readonly panels: readonly WrittenPanel[]
  readonly folds: readonly Fold[]
  /** How long its creases are, if it says so. */
  readonly across?: Field
}

/**
 * A sheet as it is written. Strips that share panels lie beside each other, from top to bottom or from left to right,
 * with a slit between them wherever their panels differ; strips that run crosswise share the panel where they cross.
 */
export interface WrittenSheet {
  readonly name: string
  readonly place: Place
  readonly strips: readonly WrittenStrip[]
  /** How long the creases of its first strips are together, if it says so. */
  readonly across?: Field
  /** Where it says what it is made of. */
  readonly stock: Fields
}

/** What a finding calls the length of a crease. */
export const highOrWide = { width: 'high', height: 'wide' } as const satisfies Record<Along, string>

export const panelsOf = ({ strips }: WrittenSheet): WrittenPanel[] => strips.flatMap(({ panels }) => panels)

/** The names of all panels, each once, in the order of the file. */
export const panelNames = (sheets: readonly WrittenSheet[]): string[] => [
  ...new Set(sheets.flatMap(panelsOf).map(({ name }) => name)),
]

export const hasPanel = ({ panels }: WrittenStrip, name: string): boolean =>
  panels.some((panel) => panel.name === name)
