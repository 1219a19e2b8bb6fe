import type { Course } from './course.ts'
import { cornersAt, eyeAt, type Look, seenBox } from './eye.ts'
import type { Vector } from './rigid.ts'
import type { CardTold, StopTold } from './told.ts'

/** What is in the middle of the picture, and how much of the world must be seen across and up, in mm. */
export interface Framing {
  readonly middle: Vector
  readonly width: number
  readonly height: number
}

/** So many moments, and over how many of them the picture glides. */
const [moments, glide] = [160, 14]

/** The look that is usual at a moment: that of the stops, and in between part of the way. */
export function usualLook(stops: readonly StopTold[], moment: number): Look {
  const next = stops.findIndex(({ at }) => at >= moment)
  const [b, a] = [
    stops[next < 0 ? stops.length - 1 : next],
    stops[Math.max(0, (next < 0 ? stops.length : next) - 1)],
  ]
  if (!a || !b) return { turn: 36, rise: 19 }
  const share = b.at > a.at ? (moment - a.at) / (b.at - a.at) : 1
  // Slow near the stops.
  const eased = share * share * (3 - 2 * share)
  return { turn: a.turn + (b.turn - a.turn) * eased, rise: a.rise + (b.rise - a.rise) * eased }
}

/** Where the picture looks to from moment to moment: all of the card is in it, and it moves calmly. */
export function framingOf(card: CardTold, course: Course): (moment: number) => Framing {
  const span = course.last - course.first
  const seen = Array.from({ length: moments + 1 }, (_, i) => {
    const moment = course.first + (span * i) / moments
    const eye = eyeAt(usualLook(card.stops, moment))
    const spots = cornersAt(card.plates, course.placesAt(moment), (plate) => isThere(card, plate, moment))
    return { ...seenBox(eye, spots), eye, spots }
  })
  const middles = smooth(seen.map(({ middle }) => middle))
  const boxes = seen.map(({ eye, spots }, i) => {
    const middle = middles[i] ?? [0, 0, 0]
    // Twice what is farthest from the middle of the picture.
    const from = (axis: Vector): number =>
      2 *
      Math.max(
        ...spots.map((p) =>
          Math.abs(p.reduce((sum, n, k) => sum + (n - (middle[k] ?? 0)) * (axis[k] ?? 0), 0)),
        ),
      )
    return [from(eye.right), from(eye.up)] as const
  })
  const widest = smooth(boxes.map((_, i) => largest(boxes, i)))
  return (moment) => {
    const at = span > 0 ? ((moment - course.first) / span) * moments : 0
    const [i, share] = [Math.min(moments - 1, Math.max(0, Math.floor(at))), 0]
    const part = Math.min(1, Math.max(share, at - i))
    const mix = (list: readonly (readonly number[])[], k: number): number =>
      (list[i]?.[k] ?? 0) * (1 - part) + (list[i + 1]?.[k] ?? 0) * part
    return {
      middle: [mix(middles, 0), mix(middles, 1), mix(middles, 2)],
      width: mix(widest, 0),
      height: mix(widest, 1),
    }
  }
}

export const isThere = ({ plates }: CardTold, plate: number, moment: number): boolean =>
  (plates[plate]?.joins ?? 0) <= moment

const around = <T>(list: readonly T[], i: number): T[] => list.slice(Math.max(0, i - glide), i + glide + 1)

const largest = (list: readonly (readonly [number, number])[], i: number): readonly [number, number] => {
  const near = around(list, i)
  return [Math.max(...near.map(([x]) => x)), Math.max(...near.map(([, y]) => y))]
}

/** The mean of what is near; at the ends the list goes on as it ends. */
function smooth<V extends readonly number[]>(list: readonly V[]): V[] {
  return list.map((value, i) => {
    const near = Array.from(
      { length: 2 * glide + 1 },
      (_, k) => list[Math.min(list.length - 1, Math.max(0, i + k - glide))] ?? value,
    )
    return value.map((_, k) => near.reduce((sum, v) => sum + (v[k] ?? 0), 0) / near.length) as unknown as V
  })
}
