import type { Place } from '../../length/finding.ts'

/** A table that people sit at. */
export interface SeatTable {
  readonly name: string
  /** How many fit; undefined for as many as there are. */
  readonly seats?: number
  readonly place: Place
}
