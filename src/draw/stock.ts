import type { Stock, Structure } from '../card/structure.ts'
import type { Hatch, Slant } from './hatch.ts'

/** How a stock is drawn: a light tint and a hatch, so that a grey print keeps stocks apart too. */
interface Look {
  readonly tint: string
  /** The same for faces away from the viewer, a step darker. */
  readonly away: string
  readonly hatch?: Hatch
  readonly opacity?: number
  readonly film?: boolean
}

/**
 * Tints are so light that every text keeps 4.5:1 on them, also on the side that looks away. The marks of their hatches
 * are as dark as a line of the accent colour allows, which keeps 3:1 on them.
 */
export const tints = {
  white: { tint: '#fffdf8', away: '#f0ece2' },
  sand: { tint: '#f4ecdd', away: '#ebe1cc' },
  sea: { tint: '#dfe9ec', away: '#d5e3e8' },
  moss: { tint: '#e3eadb', away: '#d9e4ce' },
} as const
const strokes = { white: '#d3ccbd', sand: '#d1c3a2', sea: '#b0c8d1', moss: '#b9caa7' } as const

type Marks = Omit<Hatch, 'colour'>

const lined = (turn: number, tile = 1.8, width = 0.26): Marks => ({
  tile,
  turn,
  width,
  lines: [{ level: true, at: tile / 2 }],
})
const paired = (turn: number): Marks => ({
  tile: 3,
  turn,
  width: 0.26,
  lines: [
    { level: true, at: 1.1 },
    { level: true, at: 1.9 },
  ],
})
const crossed = (turn: number): Marks => ({
  tile: 2.3,
  turn,
  width: 0.22,
  lines: [
    { level: true, at: 1.15 },
    { level: false, at: 1.15 },
  ],
})
const dotted = (tile: number, width: number): Marks => ({
  tile,
  turn: 0,
  width,
  dots: [
    [tile / 4, tile / 4],
    [(tile * 3) / 4, (tile * 3) / 4],
  ],
})
/** Dots so close that they make lines. */
const beaded = (turn: number): Marks => ({
  tile: 2.4,
  turn,
  width: 0.42,
  dots: [
    [0.4, 1.2],
    [1.2, 1.2],
    [2, 1.2],
  ],
})

type Tint = keyof typeof tints

/** Told apart without colour: no two look alike however one is shifted over the other. */
const patterns: readonly (readonly [Tint, Marks])[] = [
  ['sea', lined(45)],
  ['moss', dotted(2.4, 0.65)],
  ['sand', lined(-45)],
  ['sea', crossed(0)],
  ['moss', lined(0)],
  ['sand', crossed(45)],
  ['sea', lined(90)],
  ['moss', paired(45)],
  ['sand', beaded(0)],
  ['sea', dotted(4.4, 1.3)],
  ['moss', lined(-45, 3.6, 0.9)],
  ['sand', paired(0)],
]

const hatched = (tint: Tint, marks: Marks): Look => ({
  ...tints[tint],
  hatch: { ...marks, colour: strokes[tint] },
})

/** The looks of stocks that are neither white nor film, as many as a card needs. */
function lookAt(n: number): Look {
  const [tint, marks] = patterns[n % patterns.length] ?? ['sea', lined(45)]
  const round = Math.floor(n / patterns.length)
  // After a dozen the patterns come again, in another tint.
  const order = ['sea', 'moss', 'sand', 'white'] as const
  return hatched(order[(order.indexOf(tint) + round) % order.length] ?? tint, marks)
}

const filmTint = { tint: '#eef5f7', away: '#e3edf0', opacity: 0.6 } as const
const film = (marks?: Marks): Look => ({
  ...filmTint,
  film: true,
  ...(marks && { hatch: { ...marks, colour: '#bfd0d7' } }),
})
const films: readonly Look[] = [film(), film(lined(0, 3.4)), film(lined(90, 3.4))]
const whites: readonly Look[] = [
  tints.white,
  hatched('white', dotted(3.4, 0.5)),
  hatched('white', lined(0, 3.2, 0.2)),
]

/** Film is seen through, and white is white, whatever else a card is made of. Names as the trade of each language uses them. */
const filmName =
  /\b(?:vellum|acetate|film|tracing|transparente?|clear|glassine|acetato|vegetal|calque|rhodo[iï]d)\b|acétate|folie\b|azetat|acetat\b|transparentpapier|pergament/i
const whiteName =
  /\b(?:white|cream|ivory|writing|blanc|blanche|ivoire|blanc[ao]|crema|marfil)\b|crème|wei(?:ß|ss)|creme|elfenbein/i

/**
 * The look of each stock of a card. White, the base and film are plain, as long as there is one of each; all others take
 * hatches in the order of their pieces. No two are alike.
 */
function looksOf({ pieces }: Pick<Structure, 'pieces'>): Map<string, Look> {
  const found = new Map<string, Look>()
  const left = { white: [...whites], base: [tints.sand as Look], film: [...films] }
  let next = 0
  for (const { stock, kind } of pieces) {
    if (found.has(stock.name)) continue
    const own = filmName.test(stock.name)
      ? left.film
      : whiteName.test(stock.name)
        ? left.white
        : kind === 'base'
          ? left.base
          : []
    const look = own.shift() ?? lookAt(next++)
    found.set(
      stock.name,
      filmName.test(stock.name) && !look.film ? { ...look, ...filmTint, film: true } : look,
    )
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
      film: look.film ?? false,
      ...(hatch && { hatch }),
      ...(slant && { slant }),
      ...(opacity !== undefined && { opacity }),
    }
  }
}
