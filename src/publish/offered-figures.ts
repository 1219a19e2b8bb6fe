import { type Offered, offeredFigures } from '../lesson/figures/offered.ts'
import { withFigures } from '../lesson/figures/with-figures.ts'
import type { FilledLesson, Lesson } from '../lesson/lesson.ts'
import { proseOf } from '../lesson/rules/prose.ts'
import { stepWithoutFigure } from '../lesson/rules/step-without-figure.ts'
import { rooms } from './figure.ts'
import { figuresOf } from './figures-of.ts'

/** Whether a figure that a step is offered can be drawn. */
export const canDraw = ({ show, of }: Pick<Offered, 'show' | 'of'>, lesson: FilledLesson): boolean => {
  const drawn = figuresOf(lesson)(show, of, rooms.across)
  return !('findings' in drawn)
}

/** A lesson with the figures that its steps are offered, for this print: its file stays as it is. */
export function withOfferedFigures(lesson: Lesson, filled: FilledLesson): FilledLesson {
  const offered = offeredFigures(filled, proseOf({ lesson, filled }).course()).filter((one) =>
    canDraw(one, filled),
  )
  if (offered.length === 0) return filled
  const names = stepWithoutFigure.docs.map(({ name }) => name)
  return {
    ...filled,
    tree: withFigures(filled.tree, offered),
    findings: filled.findings.filter(({ rule }) => !names.includes(rule)),
  }
}
