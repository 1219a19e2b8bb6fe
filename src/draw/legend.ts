import type { Fold } from '../card/structure.ts'
import { boxOf } from './box.ts'
import { dashes, weights } from './ink.ts'
import { capHeight, label, wrap } from './label.ts'
import { line, type Mark, type Stroke } from './mark.ts'
import type { Spot } from './num.ts'

export const crease = (fold: Fold, [from, to]: readonly [Spot, Spot], name = `crease ${fold}`): Mark =>
  line(from, to, {
    class: name,
    width: weights.crease,
    dash: dashesOn(fold, Math.hypot(to[0] - from[0], to[1] - from[1])),
  })

/** On a short crease the dashes are shorter, so that a gap or a dot is in its middle and nobody takes it for a cut. */
function dashesOn(fold: Fold, long: number): number[] {
  const [dash, ...between] = dashes[fold]
  const room = (long - between.reduce((sum, part) => sum + part, 0)) / 2
  return [Math.min(dash, Math.max(shortestDash, room)), ...between]
}

const shortestDash = 0.4

export const cutStroke = (name = 'cut'): Stroke => ({ class: name, width: weights.edge, cap: 'round' })

/** One line of a legend: a sample of the line it explains, and what it says; or a plain remark. */
export interface Entry {
  readonly sample?: Fold | 'cut'
  readonly text: string
}

const sampleWidth = 11.5

/** The legend below everything drawn so far, wrapped to `width` mm. */
export function legend(
  above: readonly Mark[],
  entries: readonly Entry[],
  size: number,
  width: number,
): Mark[] {
  const box = boxOf(above.map((m) => m.box))
  const marks: Mark[] = []
  let y = box.bottom + 2.2
  for (const { sample, text } of entries) {
    const inset = sample ? sampleWidth + 1.8 : 0
    const lines = wrap(text, width - inset, size)
    for (const [i, words] of lines.entries()) {
      const base = y + capHeight * size
      const level = base - (capHeight * size) / 2
      if (sample && i === 0) marks.push(sampleOf(sample, [box.left, level]))
      marks.push(label(words, [box.left + inset, base], { class: 'legend', size }))
      y = base + size * 0.56
    }
    y += 0.5
  }
  return marks
}

function sampleOf(sample: Fold | 'cut', [x, y]: Spot): Mark {
  const end: Spot = [x + sampleWidth, y]
  return sample === 'cut'
    ? line([x, y], end, cutStroke('sample cut'))
    : crease(sample, [[x, y], end], `sample ${sample}`)
}
