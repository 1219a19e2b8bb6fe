import type { Card } from '../../card/card.ts'
import { type CardWishes, checkCard } from '../../card/check.ts'
import type { Held } from '../../card/origins.ts'
import { shapeOf } from '../../card/shape.ts'
import type { YamlBlock } from '../../card/yaml.ts'
import { type Length, mm } from '../../length/length.ts'
import { type Values, valuesOf } from './numbers.ts'

/**
 * A ruler so fine that nothing is rounded: it has a mark at every 1/512 in and 1/100 mm, and at halves, thirds and so on
 * up to thirteenths of them. Its marks on a card can still be counted without loss.
 */
const finest: Length = mm(1).div(2n ** 9n * 3n ** 3n * 5n ** 4n * 7n * 11n * 13n * 17n * 19n) as Length

/** The lengths of a card as they come out when some are given; undefined when no card can be made of those. */
export type Work = (given: Held) => Values | undefined

/** A card block with what its print is evaluated with, and the card that came of it. */
export interface Printed {
  readonly block: YamlBlock
  readonly card: Card
  /** Of the shut card, before it went on the ruler. */
  readonly thickness: Length
}

/** Works a printed card out again, on the ruler of the print or with nothing rounded. */
export function workFor({ block, card, thickness }: Printed, rounded: boolean): Work {
  // What folding the card found is held: neither thickness nor what lies in the creases is looked for again.
  const found: Held = new Map([
    ['card.thickness', thickness],
    ...[...card.origins].flatMap(([name, { from, exact }]) =>
      from === 'auto' ? [[name, exact] as const] : [],
    ),
  ])
  const sides = ['width', 'height'].map((side) => card.origins.get(`closed.${side}`))
  const [width, height] = sides.map((side) => (side?.from === 'wished' ? side.exact : undefined))
  const wishes: CardWishes = {
    unit: card.unit,
    grid: rounded ? card.grid : finest,
    shape: shapeOf(card.closed),
    ...(width && height && { closed: { width, height } }),
  }
  return (given) => {
    const held = new Map([...found, ...given])
    const again = checkCard(block, { ...wishes, held, thickness: () => held.get('card.thickness') })
    return again.card && withThickness(valuesOf(again.card), held)
  }
}

/** Asked for by name the thickness is on the ruler; what follows from it does so from the very thickness. */
function withThickness(values: Values, held: Held): Values {
  const thickness = held.get('card.thickness')
  return thickness ? new Map([...values, ['card.thickness', thickness]]) : values
}
