import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Figure } from '../draw/figure.ts'
import type { Finding } from '../length/finding.ts'
import type { LabelWord } from '../lesson/label-words.ts'
import type { FigureKind } from '../lesson/nodes.ts'

/** The room a figure may take, in mm at print size. */
export interface Room {
  readonly maxWidth: number
  readonly maxHeight: number
}

/** How a figure is drawn, besides its room. */
export interface DrawOptions {
  readonly key?: string
  /** Which numbers and names stand in it; without it, those that its step needs. */
  readonly labels?: readonly LabelWord[]
  /** The step that it stands in. */
  readonly step?: number
  /** No larger than this: mm on paper for one mm of the card. */
  readonly mostScale?: number
}

/** Draws a figure of the lesson's card, or says why there is none. */
export type Draw = (
  show: FigureKind,
  of: string | undefined,
  options: Room & DrawOptions,
) => Figure | { readonly findings: readonly Omit<Finding, 'place'>[] }

/** Rooms on the page: beside a step's text, across the page below it, and on the first page. */
export interface Rooms {
  readonly beside: Room
  readonly across: Room
  readonly cover: Room
}

/** Those of a whole sheet of paper. */
export const rooms = {
  beside: { maxWidth: 80, maxHeight: 50 },
  across: { maxWidth: 168, maxHeight: 62 },
  cover: { maxWidth: 96, maxHeight: 74 },
} as const satisfies Rooms

/** Sequences and cutting plans read from left to right: they are worth the whole width. */
const wide: ReadonlySet<FigureKind> = new Set<FigureKind>(['folding', 'sheet', 'envelope'])

/** A drawn figure, and whether it needs the whole width of the page. */
export interface Fitted {
  readonly figure: Figure
  readonly across: boolean
}

/**
 * Draws a figure for the room beside a step's text, or, when its parts would not be readable there, for the whole width.
 *
 * @returns findings when it cannot be drawn.
 */
export function fitFigure(
  draw: Draw,
  show: FigureKind,
  of: string | undefined,
  options: DrawOptions,
  space: Rooms = rooms,
): Fitted | { readonly findings: readonly Omit<Finding, 'place'>[] } {
  if (!wide.has(show)) {
    const beside = draw(show, of, { ...space.beside, ...options })
    if ('findings' in beside) return beside
    if (beside.width <= space.beside.maxWidth + 0.5) return { figure: beside, across: false }
  }
  const across = draw(show, of, { ...space.across, ...options })
  return 'findings' in across ? across : { figure: across, across: true }
}

/**
 * A figure with its caption. The group has the caption as its name; the drawing in it has its own text alternative,
 * so that a tagged PDF gets a figure with one: an element `figure` round it would become a second one, without.
 *
 * @param id unlike that of any other figure on the page.
 */
export function figureHast(
  { figure, across }: Fitted,
  caption: ElementContent[],
  show: FigureKind,
  id: string,
): Element {
  const label = `${id}-caption`
  const named = caption.length > 0
  return h(
    'div',
    {
      className: ['figure', `figure-${show}`, ...(across ? ['across'] : [])],
      ...(named && { role: 'group', ariaLabelledBy: [label] }),
    },
    ownIds(figure.svg, id),
    ...(named ? [h('p', { className: ['caption'], id: label }, caption)] : []),
  )
}

/** Figures of one page may come with the same ids: each gets its own, and so does whatever points to them. */
function ownIds(svg: Element, prefix: string): Element {
  const ids = new Set<string>()
  const collect = (node: Element): void => {
    if (typeof node.properties.id === 'string') ids.add(node.properties.id)
    for (const child of node.children) if (child.type === 'element') collect(child)
  }
  collect(svg)
  if ([...ids].every((name) => name.startsWith(`${prefix}-`))) return svg
  const fix = (name: string, value: unknown): unknown => {
    if (Array.isArray(value)) return value.map((item) => fix(name, item))
    if (typeof value !== 'string') return value
    if (name === 'id' || /^aria(-|L|D)/.test(name))
      return value
        .split(' ')
        .map((word) => (ids.has(word) ? `${prefix}-${word}` : word))
        .join(' ')
    return value
      .replace(/url\(#([^)]+)\)/g, (all, id) => (ids.has(id) ? `url(#${prefix}-${id})` : all))
      .replace(/^#(.+)$/, (all, id) =>
        /^(xlink:?)?href$/i.test(name) && ids.has(id) ? `#${prefix}-${id}` : all,
      )
  }
  const rename = (node: Element): Element => ({
    ...node,
    properties: Object.fromEntries(
      Object.entries(node.properties).map(([name, value]) => [name, fix(name, value)]),
    ) as Element['properties'],
    children: node.children.map((child) => (child.type === 'element' ? rename(child) : child)),
  })
  return rename(svg)
}
