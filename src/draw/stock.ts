import type { Stock, Structure } from '../card/structure.ts'
import type { Hatch, Slant } from './hatch.ts'

/** How a stock is drawn: a light tint and a hatch, so that a grey print keeps stocks apart too. */
interface Look {
  readonly tint: string
  /** The same for faces away from the viewer, a step darker. */
  readonly away: string
  readonly hatch?: Hatch
  readonly opacity?: number
}

export const tints = {
  white: { tint: '#fffdf8', away: '#ebe6da' },
  sand: { tint: '#f4ecdd', away: '#e3d7be' },
  sea: { tint: '#dfe9ec', away: '#c9d8dd' },
  moss: { tint: '#e3eadb', away: '#cdd8c0' },
} as const
const strokes = { sand: '#d3c6a8', sea: '#b4c9d1', moss: '#bdcbad' } as const

const lined = (colour: string, turn: number): Hatch => ({
  tile: 1.8,
  turn,
  colour,
  width: 0.22,
  lines: [{ level: true, at: 0.9 }],
})
const crossed = (colour: string, turn: number): Hatch => ({
  tile: 2.2,
  turn,
  colour,
  width: 0.18,
  lines: [
    { level: true, at: 1.1 },
    { level: false, at: 1.1 },
  ],
})
const dotted = (colour: string): Hatch => ({
  tile: 2.4,
  turn: 0,
  colour,
  width: 0.6,
  dots: [
    [0.6, 0.6],
    [1.8, 1.8],
  ],
})

const looks: readonly Look[] = [
  { ...tints.sea, hatch: lined(strokes.sea, 45) },
  { ...tints.moss, hatch: dotted(strokes.moss) },
  { ...tints.sand, hatch: lined(strokes.sand, -45) },
  { ...tints.sea, hatch: crossed(strokes.sea, 0) },
  { ...tints.moss, hatch: lined(strokes.moss, 0) },
  { ...tints.sand, hatch: crossed(strokes.sand, 45) },
]
const film: Look = { tint: '#eef5f7', away: '#e0ebee', opacity: 0.6 }

/** Film is seen through, and white is white, whatever else a card is made of. Names as the trade uses them. */
const filmName = /\b(vellum|acetate|film|tracing|transparent|clear|glassine)\b/i
const whiteName = /\b(white|cream|ivory|writing)\b/i

/** The look of each stock of a card: the base is plain, the others take hatches in the order of their pieces. */
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
  /** What shows between the marks of the hatch; goes under text. */
  readonly tint: string
  readonly hatch?: Hatch
  /** How the face lies in the drawing, and its hatch with it. */
  readonly slant?: Slant
  readonly opacity?: number
  /** Film is seen through, and has glints. */
  readonly film: boolean
}

/** The paint of a stock; `away` is the side that looks away from the viewer. */
export type Palette = (stock: Stock, away?: boolean, slant?: Slant) => Paint

/** Gives paints for the stocks of a card. */
export function makePalette(structure: Pick<Structure, 'pieces'>): Palette {
  const looks: ReadonlyMap<string, Look> = looksOf(structure)
  return (stock, away = false, slant) => {
    const look: Look = looks.get(stock.name) ?? tints.sand
    const { hatch, opacity } = look
    return {
      tint: away ? look.away : look.tint,
      film: look === film,
      ...(hatch && { hatch }),
      ...(slant && { slant }),
      ...(opacity !== undefined && { opacity }),
    }
  }
}
