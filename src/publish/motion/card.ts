import type { Card } from '../../card/card.ts'
import type { Piece, Plate, Stock, Structure } from '../../card/structure.ts'
import { glintLines } from '../../draw/film.ts'
import type { Hatch } from '../../draw/hatch.ts'
import { letteringOn, setLetters } from '../../draw/letters.ts'
import { type Flat, flatLine, flatLoop, openEdges, toMm } from '../../draw/plane.ts'
import { makePalette } from '../../draw/stock.ts'
import type { Proof } from '../../fold/pose.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import type { Vector } from '../../motion/rigid.ts'
import type {
  CardTold,
  CreaseTold,
  HatchTold,
  LetterTold,
  PlateTold,
  StockTold,
  StopTold,
} from '../../motion/told.ts'
import type { Wording } from '../../wording/wording.ts'
import { framesOf } from './frames.ts'
import { groupsOf, type Member } from './groups.ts'
import { creasesMeeting } from './meeting.ts'
import { actsTold, wordsTold } from './words.ts'

/** Glints are drawn as on a figure of half the card's size. */
const glintScale = 0.5

/** All that the page is told of a card; nothing when it does not fold. */
export function cardTold({ card, proof }: ProvenCard, wording: Wording): CardTold | undefined {
  const { structure } = card
  const making = proof.making()
  const corners = new Map(structure.plates.map((plate) => [plate.name, cornersOf(plate)]))
  // What shuts flat is as thick at its creases as what lies between.
  const isBox = proof.closed?.isFlat === false
  const frames = framesOf(proof, making, corners, (places) =>
    isBox ? creasesMeeting(structure, places) : places,
  )
  if (frames.length === 0) return undefined
  const { at, groups, members } = groupsOf(frames, corners)
  const shown = structure.plates.filter(({ name }) => members.has(name))
  const stocks = stocksOf(structure, shown)
  const opens = (at.at(-1) ?? 0) > 1
  return {
    name: card.name,
    words: wordsTold(wording),
    stocks: stocks.map((stock) => stockTold(stock, structure)),
    plates: shown.flatMap((plate) => {
      const [piece, member] = [pieceOf(structure, plate), members.get(plate.name)]
      return piece && member ? [plateTold(plate, piece, card, stocks, member, wording)] : []
    }),
    creases: creasesOf(structure, shown),
    at,
    groups,
    stops: stopsOf(structure, proof, making !== undefined, opens),
    acts: actsTold(structure, making, opens, wording),
  }
}

const cornersOf = ({ outline }: Plate): Vector[] => flatLoop(outline).map(([x, y]) => [x, y, 0])

const pieceOf = ({ pieces }: Structure, plate: Plate): Piece | undefined =>
  pieces.find(({ name }) => name === plate.piece)

const stocksOf = (structure: Structure, plates: readonly Plate[]): Stock[] => {
  const all = plates.flatMap((plate) => pieceOf(structure, plate)?.stock ?? [])
  return [...new Map(all.map((stock) => [stock.name, stock])).values()]
}

function plateTold(
  plate: Plate,
  { stock, kind }: Piece,
  card: Card,
  stocks: readonly Stock[],
  { group, held, joins }: Member,
  wording: Wording,
): PlateTold {
  const { structure } = card
  const outline = flatLoop(plate.outline)
  const creases = structure.hinges.filter(({ between }) => between.includes(plate.name))
  const holes = plate.holes.map(flatLoop)
  const [cuts = []] = openEdges([outline, ...creases.map(({ line }) => flatLine(line))])
  return {
    name: wording.name(plate.name),
    stock: stocks.findIndex(({ name }) => name === stock.name),
    caliper: toMm(stock.caliper),
    outline,
    holes,
    cuts: [...cuts, ...holes.flatMap((hole) => openEdges([hole])[0] ?? [])],
    base: kind === 'base',
    letters: lettersOn(plate, card),
    glints: makePalette(structure)(stock).film && isLargest(plate, structure) ? glintsOn(outline) : [],
    group,
    held,
    joins,
  }
}

const areaOf = (loop: readonly Flat[]): number =>
  Math.abs(
    loop.reduce((sum, [x, y], i) => {
      const [p, q] = loop[(i + 1) % loop.length] ?? [x, y]
      return sum + (x * q - p * y) / 2
    }, 0),
  )

/** Whether no plate of its piece is larger. */
const isLargest = (plate: Plate, { plates }: Structure): boolean =>
  plates.every(
    (other) =>
      other.piece !== plate.piece || areaOf(flatLoop(other.outline)) <= areaOf(flatLoop(plate.outline)),
  )

/** The glints of a figure, near the upper left corner. */
function glintsOn(outline: readonly Flat[]): [Flat, Flat][] {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const lines = glintLines(Math.max(...xs) - left, Math.max(...ys) - low, glintScale)
  return lines.map(([[x, y], [p, q]]) => [
    [x + left, y + low],
    [p + left, q + low],
  ])
}

/** As `faceLetters` sets them in a figure. */
function lettersOn(plate: Plate, card: Card): LetterTold[] {
  const corners = flatLoop(plate.outline)
  const left = Math.min(...corners.map(([x]) => x))
  const [low, high] = [Math.min(...corners.map(([, y]) => y)), Math.max(...corners.map(([, y]) => y))]
  const names = [...new Set([plate.piece, plate.name])]
  return names
    .flatMap((name) => letteringOn(card, name))
    .flatMap((lettering) => {
      const { size, letters } = setLetters(lettering, high - low)
      return letters.map(({ text, base: [x, y] }): LetterTold => ({ text, foot: [left + x, low + y], size }))
    })
}

const creasesOf = ({ hinges }: Structure, plates: readonly Plate[]): CreaseTold[] =>
  hinges.flatMap(({ between: [a, b], line, fold }): CreaseTold[] => {
    const [p, q] = [a, b].map((name) => plates.findIndex((plate) => plate.name === name))
    return p === undefined || q === undefined || p < 0 || q < 0
      ? []
      : [{ between: [p, q], line: flatLine(line), fold }]
  })

function stockTold(stock: Stock, structure: Structure): StockTold {
  const palette = makePalette(structure)
  const { tint, hatch, opacity = 1 } = palette(stock)
  return { tint, away: palette(stock, true).tint, opacity, hatch: hatch ? hatchTold(hatch) : null }
}

const hatchTold = ({ tile, turn, colour, width, lines = [], dots = [] }: Hatch): HatchTold => ({
  tile,
  turn,
  colour,
  width,
  lines,
  dots,
})

/** As the figures look at it; what lies on the table, from higher up. */
function stopsOf({ display }: Structure, { closed }: Proof, hasFlat: boolean, opens: boolean): StopTold[] {
  const lies = display.rests === 'flat'
  return [
    ...(hasFlat ? [{ at: 0, name: 'flat' as const, turn: 30, rise: lies ? 48 : 20 }] : []),
    { at: 1, name: 'shut' as const, turn: 36, rise: lies && closed?.isFlat !== false ? 32 : 20 },
    ...(opens ? [{ at: 2, name: 'standing' as const, turn: 36, rise: lies ? 26 : 19 }] : []),
  ]
}
