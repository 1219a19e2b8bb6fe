import type { Element } from 'hast'

/** A drawn figure: an `svg` element whose `title` and `desc` say what it shows, and its size in print. */
export interface Figure {
  readonly svg: Element
  /** Size on the page in mm; `width` and `height` of the SVG say the same. */
  readonly width: number
  readonly height: number
  /** What a sighted reader takes from it: sizes, positions, what goes where. */
  readonly alternative: string
}
