import type { Bond } from '../card/structure.ts'
import { type Flat, flatOf } from './plane.ts'

/** Carries a point of a bonded plate to the frame of what it is stuck on: turned over, turned, moved. */
export function ontoPanel({ over, turn, at }: Bond): (p: Flat) => Flat {
  const [ax, ay] = flatOf(at)
  const [cos, sin] = ({ 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] } as const)[turn]
  return ([x, y]) => {
    const flipped = over ? -x : x
    return [ax + cos * flipped - sin * y, ay + sin * flipped + cos * y]
  }
}
