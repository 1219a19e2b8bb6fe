import { type Size, toMm } from '../../../src/length/length.ts'
import type { Layout, Wanted } from '../../../src/workshop/fit/cutting/cut-from.ts'

interface Region {
  readonly x: number
  readonly y: number
  readonly right: number
  readonly top: number
}

/**
 * What is wrong with layouts, seen from the cuts and the placed pieces alone: the cuts are made one after the other on
 * whatever is in hand, each from edge to edge of it, and every placed piece must be one of the parts that are left.
 */
export function mistakesIn(
  layouts: readonly Layout[],
  wanted: readonly Wanted[],
  sheets: readonly Size[],
): string[] {
  const mistakes: string[] = []
  const need = new Map(wanted.map((w) => [w.name, w.count]))
  if (new Set(layouts.map(({ sheet }) => sheet)).size < layouts.length) mistakes.push('a sheet is cut twice')
  for (const { sheet, placed, cuts } of layouts) {
    const area = sheets[sheet]
    if (!area) return ['there is no such sheet']
    let parts: Region[] = [{ x: 0, y: 0, right: toMm(area.width), top: toMm(area.height) }]
    for (const cut of cuts) {
      const [at, from, to] = [toMm(cut.at), toMm(cut.from), toMm(cut.to)]
      const upright = cut.across === 'width'
      const part = parts.find((p) =>
        upright
          ? p.x < at && at < p.right && p.y === from && p.top === to
          : p.y < at && at < p.top && p.x === from && p.right === to,
      )
      if (!part) {
        mistakes.push(`the cut at ${at} does not go from edge to edge`)
        continue
      }
      const halves = upright
        ? [
            { ...part, right: at },
            { ...part, x: at },
          ]
        : [
            { ...part, top: at },
            { ...part, y: at },
          ]
      parts = [...parts.filter((p) => p !== part), ...halves]
    }
    for (const { name, x, y, width, height, turned } of placed) {
      const [left, low, right, top] = [x, y, x.add(width), y.add(height)].map(Number)
      const part = parts.find((p) => p.x === left && p.y === low && p.right === right && p.top === top)
      // Each part is one piece at most, so two pieces never lie on each other.
      if (part) parts = parts.filter((p) => p !== part)
      else mistakes.push(`${name} is not cut out`)
      const piece = wanted.find((w) => w.name === name)
      const [w, h] = turned ? [height, width] : [width, height]
      if (!piece?.size.width.equals(w) || !piece.size.height.equals(h))
        mistakes.push(`${name} has another size`)
      if (turned && !piece?.turns) mistakes.push(`${name} must not be turned`)
      need.set(name, (need.get(name) ?? 0) - 1)
    }
  }
  for (const [name, left] of need) if (left !== 0) mistakes.push(`${left} of ${name} left`)
  return mistakes
}
