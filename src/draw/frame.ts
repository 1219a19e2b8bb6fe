import type { Element, ElementContent } from 'hast'
import { s } from 'hastscript'
import { boxOf } from './box.ts'
import type { Figure } from './figure.ts'
import { font } from './ink.ts'
import type { Mark } from './mark.ts'
import { num } from './num.ts'
import { scaleOf } from './scale.ts'

/** Stands for the figure's own prefix in ids until its content, and so the prefix, is known. */
export const idMark = 'fig~'

/** Clear room round everything drawn, in mm. */
export const rim = 0.6

/** What a figure is made of. */
export interface Sheet {
  readonly marks: readonly Mark[]
  readonly title: string
  /** What a sighted reader takes from it. */
  readonly alternative: string
  /** What the figure's ids begin with; without it that follows from the content. */
  readonly key?: string
}

/** The size of a drawing with its rim. */
export function extent(marks: readonly Mark[]): { width: number; height: number } {
  const box = boxOf(marks.map((m) => m.box))
  return { width: box.right - box.left + 2 * rim, height: box.bottom - box.top + 2 * rim }
}

/** Makes the SVG: real size, a title and a description, and ids that no other figure on the page has. */
export function frame(sheet: Sheet): Figure {
  const box = boxOf(sheet.marks.map((m) => m.box))
  const { width, height } = extent(sheet.marks)
  const content: ElementContent[] = [
    s('title', { id: `${idMark}t` }, sheet.title),
    s('desc', { id: `${idMark}d` }, sheet.alternative),
    ...sheet.marks.map((m) => m.node()),
  ]
  const svg = s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'figure',
      width: `${num(width)}mm`,
      height: `${num(height)}mm`,
      viewBox: [box.left - rim, box.top - rim, width, height].map((n) => num(n)).join(' '),
      // With another font than ours a text may be wider than planned: better beside the figure than cut off.
      overflow: 'visible',
      role: 'img',
      'aria-labelledby': `${idMark}t ${idMark}d`,
      fill: 'none',
      'font-family': font,
      'font-weight': '400',
    },
    content,
  )
  const prefix = sheet.key ?? `f${hash(JSON.stringify(svg))}`
  const scale = scaleOf(sheet.marks)
  return {
    svg: withPrefix(svg, `${prefix}-`),
    width,
    height,
    ...(scale !== undefined && { scale }),
    alternative: sheet.alternative,
  }
}

function withPrefix(element: Element, prefix: string): Element {
  const fix = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(fix)
    return typeof value === 'string' ? value.replaceAll(idMark, prefix) : value
  }
  return {
    ...element,
    properties: Object.fromEntries(
      Object.entries(element.properties).map(([k, v]) => [k, fix(v)]),
    ) as Element['properties'],
    children: element.children.map((c) => (c.type === 'element' ? withPrefix(c, prefix) : c)),
  }
}

/** FNV-1a with 32 bits, twice over with different starts: short, stable ids, no secret. */
function hash(text: string): string {
  let [a, b] = [0x811c9dc5, 0x1000193]
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    a = Math.imul(a ^ code, 0x01000193)
    b = Math.imul(b ^ code, 0x01000193)
  }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36)
}
