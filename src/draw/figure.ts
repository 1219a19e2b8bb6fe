import type { Element } from 'hast'
import type { Finding } from '../length/finding.ts'

/** A drawn figure: an `svg` element whose `title` and `desc` say what it shows, and its size in print. */
export interface Figure {
  readonly svg: Element
  /** Size on the page in mm; `width` and `height` of the SVG say the same. */
  readonly width: number
  readonly height: number
  /** How large the card is in it: mm on paper for one mm of the card. Some figures have no one scale. */
  readonly scale?: number
  /** What a sighted reader takes from it: sizes, positions, what goes where. */
  readonly alternative: string
}

/** What is wrong with a figure that cannot be drawn; its place is that of the directive, which this stage does not know. */
export type FigureFinding = Omit<Finding, 'place'>
