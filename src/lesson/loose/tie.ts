import { errorsIn, type Finding } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import { frontMatterEdit } from '../front-matter-edit.ts'
import { editFor, hasNewErrors, lookAt, makeEdits, type Placed, read } from './edits.ts'
import type { LooseNumber } from './loose-numbers.ts'
import { isUnsaidMetric } from './unsaid-units.ts'

/** A hand-written tutorial with names in place of its plain numbers. */
export interface Tied {
  readonly text: string
  readonly placed: readonly Placed[]
  readonly left: readonly LooseNumber[]
  /** Plain numbers in the front matter that follow the card: no name can stand there. */
  readonly front: readonly LooseNumber[]
  /** The unit that it is printed in, and whether it did not say so and does now, because its card is in millimetres. */
  readonly unit: Unit
  readonly addedUnit: boolean
  /** Whether there is a card, so that there are names. */
  readonly hasCard: boolean
  /** Errors of the tutorial itself, which keep its card from being built. */
  readonly errors: readonly Finding[]
}

/**
 * Proposes names for all plain numbers of a tutorial at once. Likely ones are placed too, and marked as such. A tutorial
 * that is written in the other unit than its card throughout goes over to the unit of its card.
 */
export function tieLesson(text: string): Tied {
  const written = read(text)
  const units = isUnsaidMetric(written.lesson) ? ('mm' as const) : undefined
  const before = units ? read(text, units) : written
  const always = units ? [frontMatterEdit(text, written.lesson, 'units', units)] : []
  const { lesson, filled, complete, words, front } = lookAt(before, true)
  const errors = complete ? [] : errorsIn(filled.findings)
  const all = words.flatMap((number): Placed[] => {
    const { proposal } = number
    const edit = proposal && editFor(number, proposal, text)
    return proposal && edit ? [{ number, proposal, edit }] : []
  })
  const { after, placed } = makeEdits(before, all, (tied) => !hasNewErrors(written, tied), always)
  const done = new Set(placed.map(({ number }) => number))
  return {
    text: after.lesson.source.text,
    placed,
    left: words.filter((number) => !done.has(number)),
    front: front.filter(({ proposal }) => proposal !== undefined),
    unit: lesson.frontMatter.units,
    addedUnit: units !== undefined,
    hasCard: lesson.cards.length > 0,
    errors,
  }
}
