import type { FilledLesson } from '../lesson/lesson.ts'
import { closingAdvice } from '../lesson/safety/hazards.ts'

/** The cautions that stand before the first step, and the advice below them. */
export interface SafetyView {
  readonly cautions: readonly { readonly title: string; readonly text: string }[]
  readonly closing: string
}

/** What a lesson's tools and supplies call for and it does not say itself; null when there is nothing to add. */
export const safetyView = ({ cautions }: Pick<FilledLesson, 'cautions'>): SafetyView | null =>
  cautions.length === 0
    ? null
    : { cautions: cautions.map(({ title, text }) => ({ title, text })), closing: closingAdvice }
