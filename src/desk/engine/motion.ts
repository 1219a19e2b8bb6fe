import type { MotionTold } from '../../motion/told.ts'
import { type MotionCardView, motionCards } from '../../publish/motion/view.ts'
import { wordingOf } from '../../wording/wording.ts'
import type { Settings } from './engine.ts'
import { lessonAt } from './kept-lesson.ts'

/** The cards of a lesson in motion, and what stands for each where nothing can move. */
export interface MotionAnswer {
  readonly told: MotionTold
  /** In the same order. */
  readonly cards: readonly StillCard[]
}

/** A card where nothing moves. */
export interface StillCard {
  readonly name: string
  /** Its shut size, as HTML. */
  readonly shut: string
  /** Why a part of the way is not shown; empty when all of it is. */
  readonly lacks: string
  /** Flat, shut and standing, as HTML. */
  readonly figures: readonly string[]
}

/** The cards of a lesson in motion. A card that does not fold, or that has mistakes, is left out. */
export function motionOf(text: string, settings: Settings): MotionAnswer {
  const { filled } = lessonAt(text, settings)
  const cards = motionCards({ ...filled, wording: wordingOf('en', filled.unit) })
  return { told: { cards: cards.map(({ told }) => told) }, cards: cards.map(({ view }) => stillOf(view)) }
}

const stillOf = ({ name, shut, lacks, figures }: MotionCardView): StillCard => ({
  name,
  shut: shut.html,
  lacks,
  figures: figures.map(({ html }) => html),
})
