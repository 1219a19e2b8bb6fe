import type Fraction from 'fraction.js'
import type { Border } from '../../src/card/card.ts'
import type { Bond, Polygon } from '../../src/card/structure.ts'
import { formatLength } from '../../src/length/format.ts'
import { mm } from '../../src/length/length.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { least, most } from './pieces.ts'

type XY = { readonly x: Fraction; readonly y: Fraction }
const quarters: readonly (readonly [cos: number, sin: number])[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
]

/** Where a point of the sheet below lies in the frame of what is stuck on it: the bond's steps backwards. */
function seenFrom({ at, turn, over }: Bond, { x, y }: XY): XY {
  const [cos = 1, sin = 0] = quarters[(((turn / 90) % 4) + 4) % 4] ?? []
  const [u, v] = [x.sub(at.x), y.sub(at.y)]
  const back = { x: u.mul(cos).add(v.mul(sin)), y: v.mul(cos).sub(u.mul(sin)) }
  return over ? { ...back, x: back.x.neg() } : back
}

/** What is left round each layer of a card, as its bonds lay it, seen with the layer towards you. */
export function bordersOf({ card: { structure, layers } }: ProvenCard) {
  const outlineOf = (name: string): Polygon =>
    structure.plates.find((plate) => plate.name === name)?.outline ?? []
  return layers.flatMap(({ name, plates, on }) =>
    plates.flatMap((plate, i) => {
      const bond = structure.bonds.find((one) => one.plate === plate && one.onto === on[i])
      if (!bond || bond.turn % 90 !== 0) throw new Error(`${plate} is not stuck on ${on[i]}`)
      const ground = outlineOf(bond.onto).map((p) => seenFrom(bond, p)) as unknown as Polygon
      const own = outlineOf(plate)
      const border: Record<keyof Border, Fraction> = {
        left: least(own, 'x').sub(least(ground, 'x')),
        right: most(ground, 'x').sub(most(own, 'x')),
        bottom: least(own, 'y').sub(least(ground, 'y')),
        top: most(ground, 'y').sub(most(own, 'y')),
      }
      return { name, on: bond.onto, alone: plates.length === 1, border }
    }),
  )
}

/**
 * Layers that do not keep the borders that are written.
 *
 * @param wanted the exact border of a layer at an edge; undefined where the lesson leaves it to the card.
 */
export function troublesOfBorders(
  proven: ProvenCard,
  wanted: (layer: string, edge: keyof Border) => Fraction | undefined,
): string[] {
  const { unit, grid } = proven.card
  const say = (x: Fraction): string => formatLength(mm(x), unit)
  return bordersOf(proven).flatMap(({ name, on, alone, border }) =>
    (Object.entries(border) as [keyof Border, Fraction][]).flatMap(([edge, found]) => {
      const exact = wanted(name, edge)
      if (exact === undefined) return found.lt(0) ? [`${name} sticks out of ${on} at the ${edge}`] : []
      if (found.lt(exact)) return [`${name} on ${on} has ${say(found)} at the ${edge}, wanted ${say(exact)}`]
      return alone && found.sub(exact).gte(grid)
        ? [`${name} on ${on} has ${say(found)} at the ${edge}, a mark too much for ${say(exact)}`]
        : []
    }),
  )
}
