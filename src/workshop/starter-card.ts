import type { Card } from '../card/card.ts'
import { checkCard } from '../card/check.ts'
import type { FoldStyle } from '../card/style.ts'
import { proveCard } from '../fold/prove-card.ts'
import type { Finding } from '../length/finding.ts'
import { usualGrid } from '../length/grid.ts'
import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'

type Style = Pick<FoldStyle, 'name' | 'starter'>

const blockOf = ({ starter }: Style) => ({
  name: 'card',
  text: starter,
  place: { line: 1, column: 1, offset: 0 },
})
const wishesIn = (unit: Unit) => ({ unit, grid: usualGrid[unit] })

/**
 * The card of a fold's starter lesson in one unit, as it is cut. Much sooner done than folding it, too.
 *
 * @throws Error when it has mistakes: it is part of the program.
 */
export function starterCard(style: Style, unit: Unit): Card {
  const { card, findings } = checkCard(blockOf(style), wishesIn(unit))
  return card ?? broken(style, findings)
}

/** The same, folded. */
export function provenStarter(style: Style, unit: Unit): ProvenCard {
  const { card, proof, findings } = proveCard(blockOf(style), wishesIn(unit))
  return card && proof ? { card, proof } : broken(style, findings)
}

function broken({ name }: Style, findings: readonly Finding[]): never {
  const messages = findings.map(({ message }) => message).join('; ')
  throw new Error(`The starter of \`${name}\` has mistakes: ${messages}`)
}
