import { mustCover } from '../../length/grid.ts'
import { type Length, larger, minus, plus, shorter, zero } from '../../length/length.ts'
import type { Card, Layer } from '../card.ts'
import { type Reading, report, say } from '../reading.ts'
import type { Between, InCrease } from './between.ts'
import { closingCreases, type Edge, leastSetback } from './creases.ts'

/**
 * Warns of each layer that is nearer to a crease than what folds around it is thick: it will buckle when the card
 * shuts. No error, since nothing is the wrong size: paper gives, and a card that springs open a little may be meant.
 *
 * @param inCrease what lies in the creases of the shut card; without it only the least that a hand can keep counts.
 */
export function checkSetbacks(reading: Reading, card: Card, inCrease: InCrease | undefined): void {
  for (const layer of card.layers)
    for (const [i, panel] of layer.on.entries()) {
      const ground = groundOf(card, panel)
      const plate = layer.plates[i]
      if (!ground || !plate) continue
      for (const { crease, edge } of closingCreases(
        card.structure,
        ground.panel,
        ground.side ?? layer.side,
      )) {
        const below = ground.below(edge)
        const around = thickest(inCrease?.(crease) ?? [], plate, card.layers)
        // Above another layer, that one keeps the least.
        const least = ground.side ? zero : leastSetback
        const needed = mustCover(minus(larger(least, around), below), reading.grid)
        if (shorter(layer.border[edge], needed))
          tell(reading, layer, edge, { crease: crease.fold, panel: ground.panel, below, around, needed })
      }
    }
}

/** The panel of the mechanism under a layer, through the layers that it is on, and what their borders add up to. */
interface Ground {
  readonly panel: string
  /** Which side of it those layers are on; undefined when there are none. */
  readonly side?: Layer['side']
  readonly below: (edge: Edge) => Length
}

function groundOf(card: Card, plate: string): Ground | undefined {
  const { plates, pieces } = card.structure
  const piece = plates.find(({ name }) => name === plate)?.piece
  if (pieces.some(({ name, kind }) => name === piece && kind === 'base'))
    return { panel: plate, below: () => zero }
  const layer = card.layers.find((l) => l.plates.includes(plate))
  const under = layer && groundOf(card, layer.on[layer.plates.indexOf(plate)] ?? '')
  if (!under) return undefined
  const below = (edge: Edge) => plus(under.below(edge), layer.border[edge])
  return { panel: under.panel, side: under.side ?? layer.side, below }
}

/**
 * The thickest place in a crease that is nearer to it than it is thick, and that a layer is to blame for: one that
 * begins there, or any there when none does, as where a letter begins.
 */
function thickest(places: readonly Between[], plate: string, layers: readonly Layer[]): Length {
  const beginsAt = (name: string, { plates, distance }: Between): boolean =>
    plates.includes(name) &&
    !places.some((other) => other.plates.includes(name) && shorter(other.distance, distance))
  const all = layers.flatMap(({ plates }) => plates)
  return places
    .filter((place) => place.plates.includes(plate) && shorter(place.distance, place.thickness))
    .filter((place) => beginsAt(plate, place) || !all.some((name) => beginsAt(name, place)))
    .reduce((most, { thickness }) => larger(most, thickness), zero)
}

interface Told {
  readonly crease: string
  readonly panel: string
  readonly below: Length
  readonly around: Length
  readonly needed: Length
}

function tell(
  reading: Reading,
  layer: Layer,
  edge: Edge,
  { crease, panel, below, around, needed }: Told,
): void {
  const away = plus(below, layer.border[edge])
  const thick = shorter(leastSetback, around)
    ? `, and what folds around it is ${say(reading, around)} thick`
    : ''
  report(
    reading,
    'setback',
    reading.places.get(layer.name) ?? { line: 1, column: 1 },
    `The ${edge} edge of \`${layer.name}\` is ${say(reading, away)} from a ${crease} crease of \`${panel}\`${thick}, so it will buckle when the card shuts`,
    `Leave a border of at least ${say(reading, needed)} at its ${edge} edge, or write \`auto\` for it`,
    'warning',
  )
}
