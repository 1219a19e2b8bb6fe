import { zero } from '../../length/length.ts'
import type { Bond, Point } from '../structure.ts'

/** One plate of the mechanism glued on the face of another, with its piece's lower left corner at `at`. */
export const glued = (plate: string, onto: string, at: Point, more: Partial<Bond> = {}): Bond => ({
  plate,
  onto,
  side: 'face',
  over: false,
  turn: 0,
  at,
  height: zero,
  ...more,
})
