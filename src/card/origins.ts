import type { Place } from '../length/finding.ts'
import type { Rounding } from '../length/grid.ts'
import type { Length } from '../length/length.ts'

/** Where a named length of a card comes from. */
export interface Origin {
  /** Written in the lesson, usual where the lesson does not say, `auto` by what lies in the creases, or wished of this print. */
  readonly from: 'written' | 'usual' | 'auto' | 'wished'
  /** As it stands there: an expression over other names, the name of a standard sheet, or a word. */
  readonly text: string
  /** Where it is written. */
  readonly place?: Place
  /** Before it was put on the ruler. */
  readonly exact: Length
  /** Which way it was put on the ruler. */
  readonly round: Rounding | 'exact'
}

/** The lengths of a card that are worked out from others by what is written, by their names. */
export type Origins = ReadonlyMap<string, Origin>

/** Values that named lengths have whatever is written, before they are put on the ruler: for asking what follows from them. */
export type Held = ReadonlyMap<string, Length>
