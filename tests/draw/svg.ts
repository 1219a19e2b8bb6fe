import type { Element, ElementContent } from 'hast'
import widths from '../data/commissioner.json' with { type: 'json' }

export type Spot = readonly [x: number, y: number]
export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** All elements below a node, in the order in which they are drawn. */
export const elements = (node: Element): Element[] =>
  node.children.flatMap((child) => (child.type === 'element' ? [child, ...elements(child)] : []))

export const text = (node: ElementContent): string =>
  node.type === 'text' ? node.value : node.type === 'element' ? node.children.map(text).join('') : ''

export const has = (node: Element, name: string): boolean => {
  const own = node.properties.className
  return Array.isArray(own) && own.includes(name)
}
export const byClass = (svg: Element, name: string): Element[] => elements(svg).filter((e) => has(e, name))
export const attribute = (node: Element, name: string): string => String(node.properties[name] ?? '')
export const number = (node: Element, name: string): number => Number(attribute(node, name))

/** Width of a text in mm from the measured font, by each of its characters; a real fraction as it was measured whole. */
function widthOf(node: Element): number {
  const size = number(node, 'fontSize') / widths.per
  const weight = attribute(node, 'fontWeight') === '600' ? 1 : 0
  const table = widths.widths as unknown as Record<string, [number, number]>
  const fractions = widths.fractions as unknown as Record<string, [number, number]>
  return node.children.reduce((sum, child) => {
    if (child.type === 'element' && has(child, 'frac')) {
      const whole = fractions[text(child)]
      if (!whole) throw new Error(`The fraction \`${text(child)}\` was not measured`)
      return sum + whole[weight] * size
    }
    return [...text(child)].reduce((all, char) => {
      const one = table[char]
      if (!one) throw new Error(`The character \`${char}\` was not measured`)
      return all + one[weight] * size
    }, sum)
  }, 0)
}

/** The ink of a text: from the top of its tallest letters to the foot of its deepest. */
export function textBox(node: Element): Box {
  const [x, y, size] = [number(node, 'x'), number(node, 'y'), number(node, 'fontSize')]
  const width = widthOf(node)
  const anchor = attribute(node, 'textAnchor') || 'start'
  const start = anchor === 'middle' ? -width / 2 : anchor === 'end' ? -width : 0
  const up = (widths.ink.ascender / widths.per) * size
  const foot = /[gjpqyQJ,;()]/.test(text(node)) ? widths.ink.descender : widths.ink.figureFoot
  const down = (foot / widths.per) * size
  if (attribute(node, 'transform').startsWith('rotate(-90'))
    return { left: x - up, right: x + down, top: y - start - width, bottom: y - start }
  return { left: x + start, right: x + start + width, top: y - up, bottom: y + down }
}

/** Straight strokes with half their width: lines, and the edges of stroked paths. */
export function strokes(svg: Element): { from: Spot; to: Spot; half: number }[] {
  return elements(svg).flatMap((node) => {
    const half = number(node, 'strokeWidth') / 2
    if (node.tagName === 'line')
      return [
        {
          from: [number(node, 'x1'), number(node, 'y1')],
          to: [number(node, 'x2'), number(node, 'y2')],
          half,
        },
      ] as const
    if (node.tagName !== 'path' || !node.properties.stroke || attribute(node, 'd').includes('H')) return []
    return loopsOf(node).flatMap((loop) =>
      loop.map((from, i) => ({ from, to: loop[(i + 1) % loop.length] ?? from, half })),
    )
  })
}

/** The corners of a path of straight loops. */
export const loopsOf = (path: Element): Spot[][] =>
  attribute(path, 'd')
    .split('Z')
    .filter((part) => part !== '')
    .map((part) =>
      part
        .slice(1)
        .split('L')
        .map((pair) => pair.split(' ').map(Number) as unknown as Spot),
    )
