import type { Spot } from '../num.ts'
import { type DrawnBar, heightAt } from './bars.ts'
import type { End, Joint } from './bends.ts'

/** How long a sheet slopes where it goes from one height to another at a crease that lies flat, in mm on paper. */
const [gentle, steep] = [7, 0.8]

/**
 * Bars that meet at a crease that lies flat, with their ends at one height: the lower one rises to the other, or, where
 * something lies on it, the higher one comes down.
 */
export function eased(bars: readonly DrawnBar[], joints: readonly Joint[]): DrawnBar[] {
  const all = [...bars]
  for (const { ends, folded } of joints) {
    if (folded) continue
    const [p, q] = ends
    const [zp, zq] = [endOf(all, p), endOf(all, q)]
    if (Math.abs(zp - zq) < 1e-6) continue
    const [low, high] = zp < zq ? [p, q] : [q, p]
    const tries = [
      { end: low, run: gentle, to: endOf(all, high) },
      { end: high, run: gentle, to: endOf(all, low) },
      { end: low, run: steep, to: endOf(all, high) },
    ]
    const best = tries.find((one) => isFree(all, one)) ?? tries[2]
    const bar = best && all[best.end.bar]
    if (best && bar) all[best.end.bar] = { ...bar, middle: sloped(bar, best) }
  }
  return all
}

/** Where panels meet at a crease that lies flat, once they are at one height. */
export const flatCreases = (
  bars: readonly DrawnBar[],
  joints: readonly Joint[],
): { at: Spot; thick: number }[] =>
  joints.flatMap(({ ends: [end], folded }) => {
    const bar = bars[end.bar]
    const at = bar?.middle.at(end.side < 0 ? 0 : -1)
    return bar && at && !folded ? [{ at, thick: bar.thick }] : []
  })

interface Slope {
  readonly end: End
  readonly run: number
  readonly to: number
}

const endOf = (bars: readonly DrawnBar[], { bar, side }: End): number =>
  bars[bar]?.middle.at(side < 0 ? 0 : -1)?.[1] ?? 0

const lengthOf = ({ middle }: DrawnBar): number => (middle.at(-1)?.[0] ?? 0) - (middle[0]?.[0] ?? 0)

function sloped(bar: DrawnBar, { end, run, to }: Slope): Spot[] {
  const x = bar.middle.at(end.side < 0 ? 0 : -1)?.[0] ?? 0
  const from = x - end.side * Math.min(run, lengthOf(bar) * 0.8)
  const kept = bar.middle.filter(([u]) => (from - u) * end.side > 1e-6)
  const bent: Spot[] = [
    [from, heightAt(bar, from)],
    [x, to],
  ]
  return end.side > 0 ? [...kept, ...bent] : [...bent.reverse(), ...kept]
}

/** Whether nothing else lies between the bar as it is and as it would slope. */
function isFree(bars: readonly DrawnBar[], slope: Slope): boolean {
  const bar = bars[slope.end.bar]
  if (!bar) return false
  const after = { ...bar, middle: sloped(bar, slope) }
  const x = bar.middle.at(slope.end.side < 0 ? 0 : -1)?.[0] ?? 0
  const run = Math.min(slope.run, lengthOf(bar) * 0.8)
  const spots = Array.from({ length: 21 }, (_, i) => x - (slope.end.side * run * i) / 20)
  return bars.every((other, i) => {
    if (i === slope.end.bar) return true
    const [from, to] = [other.middle[0]?.[0] ?? 0, other.middle.at(-1)?.[0] ?? 0]
    return spots.every((u) => {
      if (u <= from || u >= to) return true
      const z = heightAt(other, u)
      const [a, b] = [heightAt(bar, u), heightAt(after, u)]
      const gap = (other.thick + bar.thick) / 2 - 1e-6
      return z > a === z > b && Math.abs(z - b) >= gap
    })
  })
}
