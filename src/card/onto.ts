import { toMm } from '../length/length.ts'
import type { Bond } from './structure.ts'
import { turnOf } from './turn.ts'

/** Carries a point of a bonded plate, in mm, to the frame of what it is stuck on: turned over, turned, moved. */
export function ontoPanel({
  over,
  turn,
  at,
}: Pick<Bond, 'over' | 'turn' | 'at'>): (p: readonly [number, number]) => readonly [number, number] {
  const [ax, ay] = [toMm(at.x), toMm(at.y)]
  const [cos, sin] = turnOf(turn)
  return ([x, y]) => {
    const flipped = over ? -x : x
    return [ax + cos * flipped - sin * y, ay + sin * flipped + cos * y]
  }
}
