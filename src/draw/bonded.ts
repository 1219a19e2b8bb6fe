import type { Bond } from '../card/structure.ts'
import { turnOf } from '../card/turn.ts'
import { type Flat, flatOf } from './plane.ts'

/** Carries a point of a bonded plate to the frame of what it is stuck on: turned over, turned, moved. */
export function ontoPanel({ over, turn, at }: Bond): (p: Flat) => Flat {
  const [ax, ay] = flatOf(at)
  const [cos, sin] = turnOf(turn)
  return ([x, y]) => {
    const flipped = over ? -x : x
    return [ax + cos * flipped - sin * y, ay + sin * flipped + cos * y]
  }
}
