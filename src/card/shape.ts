import { ExpressionError } from '../length/expression.ts'
import { onGrid } from '../length/grid.ts'
import { type Length, type Size, same, shorter } from '../length/length.ts'
import { readSize } from '../length/text.ts'
import type { Entry, Fields } from './yaml.ts'

/** Which way a size stands. */
export type Shape = 'portrait' | 'landscape' | 'square'

export function shapeOf({ width, height }: Size): Shape {
  if (same(width, height)) return 'square'
  return shorter(width, height) ? 'portrait' : 'landscape'
}

/** The same size standing or lying. */
export function turnedTo(size: Size, shape: 'portrait' | 'landscape'): Size {
  const { width, height } = size
  return shapeOf(size) === shape || same(width, height) ? size : { width: height, height: width }
}

/**
 * Which way the shut card of this print stands, before anything of it is worked out.
 *
 * @param wished another size than the block's own.
 * @returns undefined when the block does not say it plainly.
 */
export function shapeIn(fields: Fields, grid: Length, wished: Size | undefined): Shape | undefined {
  const size = wished ?? plainSize(fields.get('closed')?.value)
  const down = (x: Length): Length => onGrid(x, grid, 'down')
  return size && shapeOf({ width: down(size.width), height: down(size.height) })
}

/** A size that an entry says plainly: a standard one, or two lengths. One that is worked out from names is none. */
export function plainSize(entry: Entry | undefined): Size | undefined {
  if (entry?.kind !== 'text') return undefined
  try {
    return readSize(entry.text)
  } catch (error) {
    if (error instanceof ExpressionError) return undefined
    throw error
  }
}
