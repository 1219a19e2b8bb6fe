import type { Length } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import { toMm } from '../plane.ts'
import type { Stop } from '../running.ts'
import type { FlatParts } from './parts.ts'

/** The stops of one edge of a flat piece; what meets at one mark stands once, and as a score if one of them is. */
export function stopsAlong(
  parts: FlatParts,
  along: 'width' | 'height',
  scale: number,
  wording: Wording,
): Stop[] {
  const stops = new Map<number, Stop>()
  const add = (length: Length, inside: number, matters: boolean) => {
    const at = toMm(length) * scale
    const key = Math.round(at * 1e6)
    const before = stops.get(key)
    stops.set(key, {
      at,
      text: wording.bare(length),
      inside: Math.min(inside * scale, before?.inside ?? Number.POSITIVE_INFINITY),
      matters: matters || before?.matters === true,
    })
  }
  for (const { at, from, along: own } of parts.scores) if (own === along) add(at, toMm(from), true)
  for (const { at, inside, along: own, slant } of parts.inner)
    if (own === along) add(at, inside, slant ?? parts.creases.length === 0)
  return [...stops.values()].sort((a, b) => a.at - b.at)
}
