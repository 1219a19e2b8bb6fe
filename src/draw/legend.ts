import type { Fold } from '../card/structure.ts'
import { boxOf } from './box.ts'
import { dashes, weights } from './ink.ts'
import { capHeight, label, wrap } from './label.ts'
import { line, type Mark, type Stroke } from './mark.ts'

export const creaseStroke = (fold: Fold, name = `crease ${fold}`): Stroke => ({
  class: name,
  width: weights.crease,
  dash: dashes[fold],
})
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
      if (sample && i === 0)
        marks.push(
          line(
            [box.left, level],
            [box.left + sampleWidth, level],
            sample === 'cut' ? cutStroke('sample cut') : creaseStroke(sample, `sample ${sample}`),
          ),
        )
      marks.push(label(words, [box.left + inset, base], { class: 'legend', size }))
      y = base + size * 0.56
    }
    y += 0.5
  }
  return marks
}
