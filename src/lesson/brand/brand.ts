import type { Place } from '../../length/finding.ts'
import type { Colour } from './colour.ts'

/** Something that is written of a workshop, and where. */
export interface Told<T> {
  readonly value: T
  readonly place: Place
}

/** What a workshop puts on everything it prints, as far as one file says it. */
export interface BrandWish {
  /** A picture, from the folder of the file that names it. */
  readonly logo?: Told<string>
  /** What the workshop is called: what the logo says to those who do not see it. */
  readonly name?: Told<string>
  /** For the numbers of steps and what else stands out; read easily on white. */
  readonly accent?: Told<Colour>
  /** For what is said beside, such as captions and links; read easily on white. */
  readonly second?: Told<Colour>
  /** A line in the foot of every page. */
  readonly footer?: Told<string>
}
