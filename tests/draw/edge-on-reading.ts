import type { Element } from 'hast'
import type { Closed } from '../../src/fold/pose.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { drawn, textsOf } from './figures.ts'
import { byClass, elements, has, loopsOf, number, type Spot, text } from './svg.ts'

/** A drawn section, read back from its SVG. Lengths in mm on paper; y downwards. */
export interface Section {
  readonly svg: Element
  readonly alternative: string
  /** Outlines of the sheets: all panels of a piece that creases join are one. */
  readonly sheets: readonly (readonly Spot[])[]
  readonly caption: string
  /** How many times as thick as they are the layers are said to be. */
  readonly times: number
  readonly along: 'width' | 'height'
  /** Where along the other way the card is cut, in mm, if the words say so; else it is the same everywhere. */
  readonly at: number
  /** mm on paper for one mm along the card. */
  readonly scale: number
}

const inch = 25.4

export function sectionOf(card: ProvenCard, of?: string): Section {
  const { svg, alternative } = drawn('edge', card, of)
  const closed = card.proof.closed as Closed
  const sheets = byClass(svg, 'sheet').flatMap(loopsOf)
  const along = alternative.includes('from its right edge') ? 'height' : 'width'
  const [long, other] = along === 'width' ? (['width', 'height'] as const) : (['height', 'width'] as const)
  // The dimension of the whole card is the longest level line of its kind.
  const wide = Math.max(
    ...byClass(svg, 'dimension').map((line) => Math.abs(number(line, 'x1') - number(line, 'x2'))),
  )
  const said = /cut (?:about )?([\d ./]+) (in|mm) (?:above the lower|from the left) edge/.exec(alternative)
  const at = said ? numberOf(said[1] ?? '') * (said[2] === 'in' ? inch : 1) : closed.size[other].valueOf() / 2
  const caption = textsOf(svg, 'legend').join(' ')
  return {
    svg,
    alternative,
    sheets,
    caption,
    times: Number(/drawn (\d+) times as thick/.exec(caption)?.[1] ?? 1),
    along,
    at,
    scale: wide / closed.size[long].valueOf(),
  }
}

/** `1 9/16` as a number. */
const numberOf = (text: string): number =>
  text
    .trim()
    .split(' ')
    .reduce((sum, part) => {
      const [above = 0, below = 1] = part.split('/').map(Number)
      return sum + above / below
    }, 0)

/** Where an upright line through the drawing runs through sheets, from top to bottom. */
export function scan(sheets: readonly (readonly Spot[])[], x: number) {
  return sheets
    .flatMap((loop, sheet) => {
      const ys = loop
        .flatMap(([x1, y1], i) => {
          const [x2, y2] = loop[(i + 1) % loop.length] ?? [x1, y1]
          return x1 > x === x2 > x ? [] : [y1 + ((x - x1) / (x2 - x1)) * (y2 - y1)]
        })
        .sort((a, b) => a - b)
      return ys.flatMap((top, i) => (i % 2 === 0 ? [{ sheet, top, bottom: ys[i + 1] ?? top }] : []))
    })
    .sort((a, b) => a.top - b.top)
}

/** The sheets that lie at a place of the shut card, from front to back, and how thick it is there, in mm. */
export function pileAt({ map }: Closed, x: number, y: number) {
  const cell = map.find(({ outline }) =>
    outline.every(([x1, y1], i) => {
      const [x2, y2] = outline[(i + 1) % outline.length] ?? [x1, y1]
      return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1) >= -1e-9
    }),
  )
  return {
    thickness: cell?.thickness.valueOf() ?? 0,
    sheets: (cell?.sheets ?? []).map(({ plate, caliper }) => ({ plate, caliper: caliper.valueOf() })),
  }
}

/** Where creases are cut: along the card, in mm. */
export function creasesIn({ card, proof }: ProvenCard, { along, at }: Section) {
  const closed = proof.closed as Closed
  return card.structure.hinges.flatMap(({ between, line }) => {
    const place = closed.pose.get(between[0])
    const [a, b] = [line.from, line.to].map((p): Spot => {
      const [x, y] = [p.x.valueOf(), p.y.valueOf()]
      const [u, v] = ([0, 1] as const).map(
        (k) => (place?.origin[k] ?? 0) + (place?.right[k] ?? 0) * x + (place?.up[k] ?? 0) * y,
      )
      return along === 'width' ? [u ?? 0, v ?? 0] : [v ?? 0, u ?? 0]
    }) as [Spot, Spot]
    if (a[1] > at === b[1] > at) return []
    const faceUp = between.map((name) => closed.plates.find(({ plate }) => plate === name)?.faceUp)
    const u = a[0] + ((at - a[1]) / (b[1] - a[1])) * (b[0] - a[0])
    return [{ between, u, folded: faceUp[0] !== faceUp[1] }]
  })
}

/** Whether two lines cross, each with its ends well on both sides of the other. */
export function cross([a, b]: readonly [Spot, Spot], [c, d]: readonly [Spot, Spot]): boolean {
  const off = (p: Spot, q: Spot, r: Spot): number =>
    ((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])) /
    (Math.hypot(q[0] - p[0], q[1] - p[1]) || 1)
  const apart = (p: Spot, q: Spot, r: Spot, s: Spot): boolean =>
    off(p, q, r) * off(p, q, s) < 0 && Math.min(Math.abs(off(p, q, r)), Math.abs(off(p, q, s))) > 0.02
  return apart(a, b, c, d) && apart(c, d, a, b)
}

/**
 * Names, and the dots that their lines end in, as they follow on one another in the drawing: lines with their dots, then
 * the name.
 */
export function pointed(svg: Element): { words: string; dots: Spot[] }[] {
  const names: { words: string; dots: Spot[] }[] = []
  let dots: Spot[] = []
  for (const node of elements(svg)) {
    if (has(node, 'dot')) dots.push([number(node, 'cx'), number(node, 'cy')])
    if (!has(node, 'name')) continue
    names.push({ words: text(node).replaceAll(/[\u202f\u00a0]/g, ' '), dots })
    dots = []
  }
  return names
}
