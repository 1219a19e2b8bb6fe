import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Stock, Structure } from '../card/structure.ts'
import { idMark } from './frame.ts'
import { num } from './num.ts'

/** How a stock is drawn: a light tint and a pattern, so that a grey print keeps stocks apart too. */
interface Look {
  readonly tint: string
  /** The same for faces away from the viewer, a step darker. */
  readonly away: string
  readonly pattern?: {
    readonly tile: number
    readonly turn: number
    readonly marks: (away: boolean) => Element[]
  }
  readonly opacity?: number
}

export const tints = {
  white: { tint: '#fffdf8', away: '#ebe6da' },
  sand: { tint: '#f4ecdd', away: '#e3d7be' },
  sea: { tint: '#dfe9ec', away: '#c9d8dd' },
  moss: { tint: '#e3eadb', away: '#cdd8c0' },
} as const
const strokes = { sand: '#d3c6a8', sea: '#b4c9d1', moss: '#bdcbad' } as const

const stroke = (colour: string, d: string, width = 0.22): Element =>
  s('path', { d, stroke: colour, 'stroke-width': num(width), fill: 'none' })
const dot = (colour: string, x: number, y: number): Element =>
  s('circle', { cx: num(x), cy: num(y), r: '0.3', fill: colour })
const lines = (colour: string) => () => [stroke(colour, 'M0 0.9H1.8')]

const looks: readonly Look[] = [
  { ...tints.sea, pattern: { tile: 1.8, turn: 45, marks: lines(strokes.sea) } },
  {
    ...tints.moss,
    pattern: { tile: 2.4, turn: 0, marks: () => [dot(strokes.moss, 0.6, 0.6), dot(strokes.moss, 1.8, 1.8)] },
  },
  { ...tints.sand, pattern: { tile: 1.8, turn: -45, marks: lines(strokes.sand) } },
  {
    ...tints.sea,
    pattern: { tile: 2.2, turn: 0, marks: () => [stroke(strokes.sea, 'M0 1.1H2.2M1.1 0V2.2', 0.18)] },
  },
  { ...tints.moss, pattern: { tile: 1.8, turn: 0, marks: lines(strokes.moss) } },
  {
    ...tints.sand,
    pattern: { tile: 2.2, turn: 45, marks: () => [stroke(strokes.sand, 'M0 1.1H2.2M1.1 0V2.2', 0.18)] },
  },
]
const film: Look = { tint: '#eef5f7', away: '#e0ebee', opacity: 0.6 }

/** Film is seen through, and white is white, whatever else a card is made of. Names as the trade uses them. */
const filmName = /\b(vellum|acetate|film|tracing|transparent|clear|glassine)\b/i
const whiteName = /\b(white|cream|ivory|writing)\b/i

/** The look of each stock of a card: the base is plain, the others take patterns in the order of their pieces. */
function looksOf({ pieces }: Pick<Structure, 'pieces'>): Map<string, Look> {
  const found = new Map<string, Look>()
  let next = 0
  for (const { stock, kind } of pieces) {
    if (found.has(stock.name)) continue
    if (filmName.test(stock.name)) found.set(stock.name, film)
    else if (whiteName.test(stock.name)) found.set(stock.name, tints.white)
    else if (kind === 'base') found.set(stock.name, tints.sand)
    else found.set(stock.name, looks[next++ % looks.length] ?? tints.sand)
  }
  return found
}

export interface Paint {
  /** The pattern, or the tint where there is none. */
  readonly fill: string
  readonly opacity?: number
  /** What shows between the marks of the pattern; goes under text. */
  readonly tint: string
  readonly patterned: boolean
  /** Film is seen through, and has glints. */
  readonly film: boolean
}

/** Linear part of the map from a face to the drawing: `matrix(a b c d 0 0)`. */
export type Slant = readonly [a: number, b: number, c: number, d: number]

/** Gives paints for stocks, and collects the patterns that were asked for. One for each figure. */
export interface Palette {
  paint(stock: Stock, away?: boolean, slant?: Slant): Paint
  defs(): Element[]
}

export function makePalette(structure: Pick<Structure, 'pieces'>): Palette {
  const looks: ReadonlyMap<string, Look> = looksOf(structure)
  const made = new Map<string, { id: string; node: Element }>()
  return {
    paint(stock, away = false, slant) {
      const look: Look = looks.get(stock.name) ?? tints.sand
      const tint = away ? look.away : look.tint
      const rest = { tint, film: look === film, ...(look.opacity !== undefined && { opacity: look.opacity }) }
      if (!look.pattern) return { ...rest, fill: tint, patterned: false }
      const matrix = slant ? `matrix(${slant.map((n) => num(n, 4)).join(' ')} 0 0) ` : ''
      const key = `${stock.name}|${away}|${matrix}`
      const pattern = made.get(key) ?? {
        id: `${idMark}p${made.size + 1}`,
        node: patternOf(look, away, matrix),
      }
      pattern.node.properties.id = pattern.id
      made.set(key, pattern)
      return { ...rest, fill: `url(#${pattern.id})`, patterned: true }
    },
    defs: () => [...made.values()].map((m) => m.node),
  }
}

function patternOf(look: Look, away: boolean, matrix: string): Element {
  const { tile, turn, marks } = look.pattern as NonNullable<Look['pattern']>
  const size = num(tile)
  const turned = turn === 0 ? '' : `rotate(${turn})`
  return s(
    'pattern',
    {
      width: size,
      height: size,
      patternUnits: 'userSpaceOnUse',
      ...((matrix || turned) && { patternTransform: `${matrix}${turned}`.trim() }),
    },
    s('rect', { width: size, height: size, fill: away ? look.away : look.tint }),
    ...marks(away),
  )
}
