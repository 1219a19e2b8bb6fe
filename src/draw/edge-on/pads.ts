import type { Card } from '../../card/card.ts'
import type { Stock } from '../../card/structure.ts'
import { groupBy } from '../../length/group-by.ts'
import type { Spot } from '../num.ts'
import { toMm } from '../plane.ts'
import { type DrawnBar, heightAt, type Scales } from './bars.ts'
import type { Target } from './names.ts'
import type { Cut, CutPad } from './section.ts'

/** Something that is drawn as a block between layers. */
export interface Block {
  /** z upwards, in mm on paper. */
  readonly outline: readonly Spot[]
  readonly target: Target
}

export interface LetterBlock extends Block {
  readonly pad: CutPad
  readonly stock: Stock | undefined
}

/** How long a pad of foam is drawn, in mm on paper: a foam layer rests on a few of them. */
const foamLong = 4

const block = (from: number, to: number, low: number, high: number): Block => ({
  outline: [
    [from, low],
    [to, low],
    [to, high],
    [from, high],
  ],
  target: { from, to, z: () => (low + high) / 2 },
})

/** Letters where they lie on their plate. */
export function lettersOf(
  { pads }: Cut,
  bars: readonly DrawnBar[],
  card: Card,
  scales: Scales,
): LetterBlock[] {
  return pads.flatMap((pad): LetterBlock[] => {
    const [from, to] = [pad.from * scales.along, pad.to * scales.along]
    const bar = bars.find(({ plate, middle }) => plate === pad.pad.onto && (middle.at(-1)?.[0] ?? 0) > from)
    if (!bar) return []
    const way = pad.inFront ? 1 : -1
    const low = heightAt(bar, (from + to) / 2) + (way * bar.thick) / 2
    const high = low + way * toMm(pad.pad.height) * scales.thick
    const stock = card.lettering.find(({ name }) => name === pad.pad.name)?.stock
    return [{ ...block(from, to, Math.min(low, high), Math.max(low, high)), pad, stock }]
  })
}

/** Pads of foam where a plate is held away from the one that it is stuck on. */
export function foamOf(
  { columns }: Cut,
  bars: readonly DrawnBar[],
  { structure }: Card,
  scales: Scales,
): Block[] {
  return structure.bonds.flatMap(({ plate, onto, height }) => {
    if (toMm(height) === 0) return []
    const shared = columns.flatMap(({ from, to, sheets }) => {
      const [at, under] = [plate, onto].map((name) => sheets.findIndex((sheet) => sheet.plate === name))
      if (at === undefined || under === undefined || at < 0 || under < 0) return []
      // The foam is next to the plate that it carries, whatever else lies between.
      const next = sheets[at < under ? at + 1 : at - 1]?.plate ?? onto
      return [{ from: from * scales.along, to: to * scales.along, next }]
    })
    return [...groupBy(shared, ({ next }) => next)].flatMap(([next, own]) =>
      joined(own.map(({ from, to }) => [from, to])).flatMap(([from, to]) =>
        padsIn(from, to).flatMap(([a, b]): Block[] => {
          const x = (a + b) / 2
          const [p, q] = [plate, next].map((name) =>
            bars.find((bar) => bar.plate === name && (bar.middle.at(-1)?.[0] ?? 0) > x),
          )
          if (!p || !q) return []
          const [low, high] = heightAt(p, x) < heightAt(q, x) ? [p, q] : [q, p]
          return [block(a, b, heightAt(low, x) + low.thick / 2, heightAt(high, x) - high.thick / 2)]
        }),
      ),
    )
  })
}

/** Foam is drawn near both ends of what it holds. */
function padsIn(from: number, to: number): [number, number][] {
  const inset = Math.min(1, (to - from) / 6)
  const [a, b] = [from + inset, to - inset]
  return b - a < 3 * foamLong
    ? [[a, b]]
    : [
        [a, a + foamLong],
        [b - foamLong, b],
      ]
}

/** Stretches that follow on one another, as one. */
function joined(stretches: readonly (readonly [number, number])[]): [number, number][] {
  const all: [number, number][] = []
  for (const [from, to] of stretches) {
    const last = all.at(-1)
    if (last && from - last[1] < 0.01) last[1] = to
    else all.push([from, to])
  }
  return all
}
