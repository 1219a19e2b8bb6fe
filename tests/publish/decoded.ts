import jsqr from 'jsqr'
import type { Pixels } from './pdf-pixels.ts'

type Decode = typeof jsqr.default

/** What a code in a picture says, read by a library that did not make it; undefined when it finds none. */
export const decoded = ({ data, width, height }: Pixels): string | undefined =>
  // Its types say that it is within, and it is not.
  (jsqr as unknown as Decode)(data, width, height)?.data
