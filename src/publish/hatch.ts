import type { Element, ElementContent } from 'hast'
import { s } from 'hastscript'
import { num } from '../draw/num.ts'
import { attributes, type Pattern, type Pen, readPattern } from './pattern.ts'
import { apply, crossings, holding, inverse, type Loop, readLoops, rows, type Spot } from './plane.ts'

/**
 * A drawing with its patterns drawn out as lines and dots.
 *
 * Chromium prints a shape that is filled with an SVG pattern as a picture of the whole page with a few dots to the
 * millimetre: hatching gets blurred, and the PDF large and slow. Lines stay lines. Patterns of a kind that is not
 * understood here are left as they are.
 */
export function drawnOut(svg: Element): Element {
  const patterns = new Map<string, Pattern>()
  visit(svg, (node) => {
    const pattern = node.tagName === 'pattern' ? readPattern(node) : undefined
    if (pattern) patterns.set(String(node.properties.id), pattern)
  })
  if (patterns.size === 0) return svg
  const redraw = (node: Element): Element[] => {
    const [, id = ''] = /^url\(#(.+)\)$/.exec(String(node.properties.fill ?? '')) ?? []
    const pattern = patterns.get(id)
    const loops = pattern && node.tagName === 'path' ? readLoops(String(node.properties.d)) : undefined
    if (pattern && loops) return filled(node, pattern, loops)
    const children = node.children.flatMap((child): ElementContent[] =>
      child.type === 'element' ? redraw(child) : [child],
    )
    return [{ ...node, children }]
  }
  const [redrawn = svg] = redraw(svg)
  return withoutUnused(redrawn, patterns)
}

/** The shape in its plain tint, then the marks that fall on it, then its edge. */
function filled(
  node: Element,
  { tile, matrix, tint, lines, dots }: Pattern,
  loops: readonly Loop[],
): Element[] {
  const { fill: _, fillOpacity, stroke, strokeWidth, strokeLinejoin, ...rest } = attributes(node)
  const back = inverse(matrix)
  const own = loops.map((loop) => loop.map((spot) => apply(back, spot)))
  // An upright line is a level one of the shape with its axes swapped.
  const turned = own.map((loop) => loop.map(([x, y]): Spot => [y, x]))
  const byPen = new Map<string, { pen: Pen; d: string; round: boolean }>()
  const add = (pen: Pen, round: boolean, d: string): void => {
    const key = `${pen.stroke}|${pen.width}|${round}`
    byPen.set(key, { pen, round, d: (byPen.get(key)?.d ?? '') + d })
  }
  for (const { level, at, pen } of lines) {
    const seen = level ? own : turned
    for (const row of rows(seen, tile, at))
      for (const [from, to] of crossings(seen, row))
        add(
          pen,
          false,
          level ? `M${two(from)} ${two(row)}H${two(to)}` : `M${two(row)} ${two(from)}V${two(to)}`,
        )
  }
  for (const { at, pen } of dots) {
    const columns = rows(turned, tile, at[0])
    for (const y of rows(own, tile, at[1]))
      for (const x of holding(own, columns, y, pen.width / 2)) add(pen, true, `M${two(x)} ${two(y)}h0`)
  }
  const marks = [...byPen.values()].map(({ pen, d, round }) =>
    s('path', {
      d,
      stroke: pen.stroke,
      'stroke-width': num(pen.width),
      ...(round && { 'stroke-linecap': 'round' }),
    }),
  )
  const plain = s('path', { ...rest, fill: tint })
  const inked =
    marks.length > 0
      ? [s('g', { transform: `matrix(${matrix.map((n) => num(n, 4)).join(' ')} 0 0)` }, ...marks)]
      : []
  const edge =
    stroke === undefined
      ? []
      : [
          s('path', {
            ...rest,
            fill: 'none',
            stroke,
            'stroke-width': strokeWidth,
            'stroke-linejoin': strokeLinejoin,
          }),
        ]
  return [
    ...(fillOpacity === undefined ? [plain, ...inked] : [s('g', { opacity: fillOpacity }, plain, ...inked)]),
    ...edge,
  ]
}

const two = (value: number): string => num(value, 2)

function visit(node: Element, see: (node: Element) => void): void {
  see(node)
  for (const child of node.children) if (child.type === 'element') visit(child, see)
}

/** Without the patterns that nothing points to any more, and without `defs` that have nothing in them. */
function withoutUnused(svg: Element, patterns: ReadonlyMap<string, Pattern>): Element {
  let text = ''
  visit(svg, (node) => {
    text += ` ${Object.values(node.properties).join(' ')}`
  })
  const prune = (node: Element): Element => ({
    ...node,
    children: node.children.flatMap((child): ElementContent[] => {
      if (child.type !== 'element') return [child]
      const { id } = child.properties
      if (child.tagName === 'pattern' && patterns.has(String(id)) && !text.includes(`url(#${id})`)) return []
      const pruned = prune(child)
      return pruned.tagName === 'defs' && pruned.children.length === 0 ? [] : [pruned]
    }),
  })
  return prune(svg)
}
