import Fraction from 'fraction.js'
import type { CuttingPlan, Layout, OfferedSheet, WantedPiece } from '../../../src/workshop/cutting/cutting.ts'

/** A part of a sheet, in exact millimetres. */
interface Part {
  readonly left: Fraction
  readonly right: Fraction
  readonly bottom: Fraction
  readonly top: Fraction
}

/**
 * What is wrong with a plan, seen from the placed pieces and the cuts alone. A sheet is taken apart by its cuts in their
 * order: each must go from edge to edge of one part, leaves the part at the stop as wide as the stop is set, and takes
 * the knife's gap away from the other. In the end every placed piece must be one part, each part one piece at most, so
 * nothing lies on anything else; and of each piece there must be just as many as were wanted and are not short.
 */
export function mistakesIn(
  { plans, short }: CuttingPlan,
  pieces: readonly WantedPiece[],
  sheets: readonly OfferedSheet[],
  gap = new Fraction(0),
): string[] {
  const mistakes: string[] = []
  const need = new Map<string, number>()
  const count = (stock: string, lesson: string, piece: string, by: number): void => {
    const key = JSON.stringify([stock, lesson, piece])
    need.set(key, (need.get(key) ?? 0) + by)
  }
  for (const { stock, lesson, name, count: n } of pieces) count(stock, lesson, name, n)
  for (const { stock, lesson, piece, count: n } of short) count(stock, lesson, piece, -n)
  for (const { stock, sheet, used, lowerBound, layouts } of plans) {
    const total = layouts.reduce((sum, { times }) => sum + times, 0)
    if (total !== used) mistakes.push(`${used} sheets are told and ${total} cut`)
    if (lowerBound > used) mistakes.push(`the bound ${lowerBound} is above ${used}`)
    const alike = sheets.filter((one) => one.stock === stock && isLike(one, sheet))
    const limit = alike.reduce((sum, one) => sum + (one.limit ?? Number.POSITIVE_INFINITY), 0)
    if (used > limit) mistakes.push(`${used} sheets are used and ${limit} are to be had`)
    for (const layout of layouts) {
      if (!(Number.isInteger(layout.times) && layout.times > 0)) mistakes.push('a layout is not used')
      mistakes.push(...mistakesOn(layout, sheet, gap))
      for (const { piece, lesson, turned, width, height } of layout.placed) {
        count(stock, lesson, piece, -layout.times)
        const wanted = pieces.find((p) => p.stock === stock && p.lesson === lesson && p.name === piece)
        if (!wanted) {
          mistakes.push(`nobody wants ${piece}`)
          continue
        }
        const [w, h] = turned ? [height, width] : [width, height]
        if (!w.equals(wanted.size.width) || !h.equals(wanted.size.height))
          mistakes.push(`${piece} has another size`)
        if (turned && (!wanted.turns || sheet.upright)) mistakes.push(`${piece} must not be turned`)
        const runs = turned ? (wanted.grain === 'width' ? 'height' : 'width') : wanted.grain
        if (wanted.grain && sheet.grain && runs !== sheet.grain)
          mistakes.push(`the fibres of ${piece} run across`)
      }
    }
  }
  for (const [key, left] of need) if (left !== 0) mistakes.push(`${left} of ${key} left`)
  return mistakes
}

const isLike = (a: OfferedSheet, b: OfferedSheet): boolean =>
  a.size.width.equals(b.size.width) && a.size.height.equals(b.size.height) && a.grain === b.grain

/** What is wrong with one sheet. */
function mistakesOn({ placed, cuts }: Layout, { size, trim = {} }: OfferedSheet, gap: Fraction): string[] {
  const mistakes: string[] = []
  const [width, height] = [new Fraction(size.width), new Fraction(size.height)]
  let parts: Part[] = [{ left: new Fraction(0), right: width, bottom: new Fraction(0), top: height }]
  for (const { across, at, from, to, against, set } of cuts) {
    const upright = across === 'width'
    const part = parts.find((p) =>
      upright
        ? p.left.lt(at) && p.right.gt(at) && p.bottom.equals(from) && p.top.equals(to)
        : p.bottom.lt(at) && p.top.gt(at) && p.left.equals(from) && p.right.equals(to),
    )
    if (!part) {
      mistakes.push(`the cut at ${at.toFraction()} does not go from edge to edge`)
      continue
    }
    const [low, high] = upright ? [part.left, part.right] : [part.bottom, part.top]
    const lower = against === 'left' || against === 'bottom'
    if (upright !== (against === 'left' || against === 'right')) mistakes.push(`held against the ${against}`)
    if (!(lower ? at.sub(low) : high.sub(at)).equals(set)) mistakes.push(`set to ${set.toFraction()}`)
    const [first, second] = lower ? [at, at.add(gap)] : [at.sub(gap), at]
    const halves = upright
      ? [
          { ...part, right: first },
          { ...part, left: second },
        ]
      : [
          { ...part, top: first },
          { ...part, bottom: second },
        ]
    // The knife may run off the edge, and then nothing is left beyond.
    parts = [
      ...parts.filter((p) => p !== part),
      ...halves.filter((p) => p.left.lt(p.right) && p.bottom.lt(p.top)),
    ]
  }
  for (const { piece, x, y, width: w, height: h } of placed) {
    const [right, top] = [x.add(w), y.add(h)]
    const part = parts.find(
      (p) => p.left.equals(x) && p.bottom.equals(y) && p.right.equals(right) && p.top.equals(top),
    )
    if (part) parts = parts.filter((p) => p !== part)
    else mistakes.push(`${piece} is not cut out`)
    const inside =
      x.gte(trim.left ?? 0) &&
      y.gte(trim.bottom ?? 0) &&
      right.lte(width.sub(trim.right ?? 0)) &&
      top.lte(height.sub(trim.top ?? 0))
    if (!inside) mistakes.push(`${piece} has an edge that should be trimmed`)
  }
  return mistakes
}
