import type { Lesson, ProvenCard } from '../../lesson/lesson.ts'
import { atMark } from '../card-measures.ts'
import { type Printed, workFor } from './exactly.ts'
import { type Explained, plainly } from './explained.ts'
import { followsOf } from './follows.ts'
import { givenIn, heldAt, uselessIn } from './given.ts'
import { numbersOf, valuesOf } from './numbers.ts'
import { answersTo } from './slopes.ts'
import { type Inquiry, sourceOf } from './source.ts'

/** Every number of a lesson's card explained. */
export function explainCard({ cards }: Pick<Lesson, 'cards'>, { card, proof }: ProvenCard): Explained[] {
  const block = cards.find(({ name }) => name === card.name)
  const thickness = proof.closed?.thickness
  if (!block || !thickness) return []
  return [...explain({ block, card, thickness }), ...standing(proof, card)]
}

/** How the card stands, which only standing it up can tell. */
function standing({ standing }: ProvenCard['proof'], { grid }: ProvenCard['card']): Explained[] {
  if (!standing) return []
  const sides = (['width', 'height', 'depth'] as const).map((side) => ({ side, x: standing[side] }))
  return sides.map(({ side, x }) => ({
    name: `standing ${side}`,
    owner: 'card',
    value: atMark(x, grid),
    source: { kind: 'standing' },
    rounding: 'nearest',
  }))
}

function explain(print: Printed): Explained[] {
  const { card, thickness } = print
  const exactly = workFor(print, false)
  const onRuler = workFor(print, true)
  const printed = valuesOf(card)
  const base = exactly(new Map())
  if (!base) return numbersOf(card).flatMap((number) => plainly(print, number, printed))
  const given = givenIn(card.origins, base)
  const direct = answersTo(exactly, given.all, base)
  const whole = answersTo(exactly, given.plain, base)
  const follows = followsOf({ exactly, onRuler }, { base, printed, grid: card.grid }, whole)
  const rounded = new Map([...heldAt(printed, [...given.all.keys()]), ['card.thickness', thickness] as const])
  const inquiry: Inquiry = { card, given, base, printed, fromRuler: exactly(rounded), direct, whole }
  const useless = uselessIn(card.origins, direct)
  return numbersOf(card)
    .filter(({ name }) => !useless.has(name))
    .flatMap((number) =>
      plainly(print, number, printed).map((one): Explained => {
        const [key = ''] = number.keys
        const [exact, followed] = [base.get(key), follows.get(key)]
        return {
          ...one,
          ...(exact && { exact }),
          ...(followed && one.source.kind !== 'folding' && { follows: followed }),
          ...(exact && one.source.kind === 'lengths' && sourceOf(number, one.value, inquiry)),
        }
      }),
    )
}
