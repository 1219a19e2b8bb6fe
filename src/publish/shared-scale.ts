import type { Element } from 'hast'
import { visit } from 'unist-util-visit'
import type { FigureKind } from '../lesson/nodes.ts'
import type { Fitted } from './figure.ts'

/** A figure of a run, and how it is drawn again at no larger a scale. */
export interface InRun {
  readonly drawn: Fitted
  readonly again: (mostScale: number) => Fitted | undefined
}

/**
 * Kinds of figures that a reader compares: what is laid flat, and what stands or is shut. Others are measured by nobody.
 */
const families: Partial<Record<FigureKind, string>> = {
  flat: 'plan',
  place: 'plan',
  standing: 'view',
  closed: 'view',
}

/** The family of a kind of figure; none for those that have no scale to share. */
export const familyOf = (show: FigureKind): string | undefined => families[show]

/** As small as this a figure may become, in shares of its own scale. */
const smallest = 0.5

/** Scales this near are the same for any eye and any ruler. */
const same = 1.001

/**
 * The figures of a run at one scale, the smallest among them, so that what is twice as long is drawn twice as long.
 *
 * A figure that would be less than half as large as alone, or whose words would no longer all have room, keeps its own
 * scale: to be read comes before to be compared. Those that are left share a scale among themselves.
 *
 * @returns the figures in their order.
 */
export function atOneScale(run: readonly InRun[]): Fitted[] {
  const drawn = run.map((one) => one.drawn)
  const own = (i: number): number => run[i]?.drawn.figure.scale ?? 0
  let left = run
    .map((_, i) => i)
    .filter((i) => own(i) > 0)
    .sort((a, b) => own(a) - own(b))
  while (left.length > 1) {
    const together = joined(run, left)
    for (const [i, fitted] of together) drawn[i] = fitted
    // The smallest of them has its scale now, with others or alone.
    left = left.slice(1).filter((i) => !together.has(i))
  }
  return drawn
}

/** Those of the figures that can be drawn as small as the smallest of them, which may get smaller on the way. */
function joined(run: readonly InRun[], of: readonly number[]): Map<number, Fitted> {
  const own = (i: number): number => run[i]?.drawn.figure.scale ?? Number.POSITIVE_INFINITY
  let scale = Math.min(...of.map(own))
  for (;;) {
    const together = new Map<number, Fitted>()
    let least = scale
    for (const i of of) {
      const one = run[i]
      if (!one || scale < own(i) * smallest) continue
      const fitted = own(i) <= scale * same ? one.drawn : one.again(scale)
      const reached = fitted?.figure.scale
      if (!fitted || reached === undefined || reached > scale * same) continue
      if (!saysAll(fitted.figure.svg, one.drawn.figure.svg)) continue
      together.set(i, fitted)
      least = Math.min(least, reached)
    }
    // A row of words that breaks in another place can want a little more room: then all follow that one.
    if (least >= scale / same) return together
    scale = least
  }
}

/** Whether a drawing has every word of another one. */
function saysAll(svg: Element, other: Element): boolean {
  const words = wordsIn(svg)
  for (const word of wordsIn(other)) {
    const at = words.indexOf(word)
    if (at < 0) return false
    words.splice(at, 1)
  }
  return true
}

function wordsIn(svg: Element): string[] {
  const words: string[] = []
  visit(svg, 'element', (node) => {
    if (node.tagName !== 'text') return
    let text = ''
    visit(node, 'text', ({ value }) => {
      text += value
    })
    words.push(...text.split(/[ \n]+/))
  })
  return words
}
