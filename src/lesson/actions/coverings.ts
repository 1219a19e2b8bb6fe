import type { Card } from '../../card/card.ts'
import { ontoPanel } from '../../card/onto.ts'
import type { Bond, Plate, Structure } from '../../card/structure.ts'
import { toMm } from '../../length/length.ts'

/** One thing comes to lie over another: who sticks it first no longer gets at the other. */
export interface Covering {
  readonly under: string
  readonly over: string
}

/**
 * Which layers must be stuck before which layers and spans, by the names of the pieces: on one side of one panel, where
 * they overlap, in the order of the card block; and all layers on the panels that a span bridges, on the side that it
 * shuts in. A layer on a layer is no such pair: it may be stuck on it beforehand.
 */
export function coveringsOf({ structure, layers }: Card): Covering[] {
  const layered = new Set(layers.flatMap(({ plates }) => plates))
  const pieceOf = new Map(structure.plates.map(({ name, piece }) => [name, piece]))
  const kinds = new Map(structure.pieces.map(({ name, kind }) => [name, kind]))
  const spans = structure.bonds.filter(({ plate }) => kinds.get(pieceOf.get(plate) ?? '') === 'span')
  const laid = structure.bonds.filter(({ plate }) => layered.has(plate))
  const stuck = [...laid, ...spans]
  const pairs = laid.flatMap((under) =>
    [
      ...stuck.slice(stuck.indexOf(under) + 1).filter((over) => overlap(structure, under, over)),
      ...spans.filter((span) => isBridged(structure, under, span, spans)),
    ].map((over) => [under.plate, over.plate] as const),
  )
  const named = pairs.map(([under, over]) => ({
    under: pieceOf.get(under) ?? '',
    over: pieceOf.get(over) ?? '',
  }))
  return named.filter(
    ({ under, over }, i) =>
      under !== over && named.findIndex((pair) => pair.under === under && pair.over === over) === i,
  )
}

function overlap({ plates }: Structure, a: Bond, b: Bond): boolean {
  if (a.onto !== b.onto || a.side !== b.side) return false
  const [one, other] = [a, b].map((bond) =>
    boxOf(
      bond,
      plates.find(({ name }) => name === bond.plate),
    ),
  )
  if (!one || !other) return false
  const least = 0.01 // millimetres: neighbours that touch do not overlap
  return [0, 1].every(
    (i) =>
      Math.min(one.most[i] ?? 0, other.most[i] ?? 0) - Math.max(one.least[i] ?? 0, other.least[i] ?? 0) >
      least,
  )
}

/** What a plate covers of the one that it is stuck on, as a box. */
function boxOf(bond: Bond, plate: Plate | undefined): { least: number[]; most: number[] } | undefined {
  if (!plate) return undefined
  const onto = ontoPanel(bond)
  const points = plate.outline.map(({ x, y }) => onto([toMm(x), toMm(y)]))
  const along = (i: number): number[] => points.map((point) => point[i] ?? 0)
  return {
    least: [Math.min(...along(0)), Math.min(...along(1))],
    most: [Math.max(...along(0)), Math.max(...along(1))],
  }
}

/** Whether a layer lies on a panel between those that a span is stuck on. */
function isBridged(structure: Structure, layer: Bond, span: Bond, spans: readonly Bond[]): boolean {
  const other = spans.find(({ plate, onto }) => plate === span.plate && onto !== span.onto)
  if (!other || layer.side !== span.side) return false
  return between(structure, span.onto, other.onto).includes(layer.onto)
}

/** The panels that one passes from one to the other over the creases, without those two. */
function between({ hinges }: Structure, from: string, to: string): string[] {
  const ways = [[from]]
  const seen = new Set([from])
  for (const way of ways) {
    const last = way.at(-1) ?? from
    if (last === to) return way.slice(1, -1)
    for (const { between: pair } of hinges.filter((hinge) => hinge.between.includes(last)))
      for (const next of pair.filter((plate) => !seen.has(plate))) {
        seen.add(next)
        ways.push([...way, next])
      }
  }
  return []
}
