import type { Element } from 'hast'
import { type Box, elements, has, strokes, text, textBox } from './svg.ts'

/** Whether a straight line runs through a box: some point of it, taken finely, is inside. */
function runsThrough(
  box: Box,
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  half: number,
) {
  const apart =
    Math.max(x1, x2) < box.left - half ||
    Math.min(x1, x2) > box.right + half ||
    Math.max(y1, y2) < box.top - half ||
    Math.min(y1, y2) > box.bottom + half
  if (apart) return false
  const steps = Math.ceil(Math.hypot(x2 - x1, y2 - y1) / 0.1) + 1
  for (let i = 0; i <= steps; i++) {
    const [x, y] = [x1 + ((x2 - x1) * i) / steps, y1 + ((y2 - y1) * i) / steps]
    if (x > box.left - half && x < box.right + half && y > box.top - half && y < box.bottom + half)
      return true
  }
  return false
}

/**
 * Texts of a figure that touch one another, a line, or the edge of the figure: none, if all is well. Letters on a face
 * are part of the picture and no labels.
 */
export function collisions(svg: Element): string[] {
  const labels = elements(svg)
    .filter((e) => e.tagName === 'text' && !has(e, 'letter'))
    .map((e) => ({ words: text(e), box: textBox(e) }))
  const lines = strokes(svg)
  const [x = 0, y = 0, width = 0, height = 0] = String(svg.properties.viewBox).split(' ').map(Number)
  return labels.flatMap(({ words, box }, i) => [
    ...labels
      .slice(i + 1)
      .filter(
        ({ box: b }) => box.left < b.right && b.left < box.right && box.top < b.bottom && b.top < box.bottom,
      )
      .map((other) => `"${words}" touches "${other.words}"`),
    ...lines
      .filter((l) => runsThrough(box, l.from, l.to, l.half))
      .map((l) => `"${words}" touches the line from ${l.from} to ${l.to}`),
    ...(box.left < x || box.right > x + width || box.top < y || box.bottom > y + height
      ? [`"${words}" runs out of the figure`]
      : []),
  ])
}
