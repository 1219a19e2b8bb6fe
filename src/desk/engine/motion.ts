import type { MotionTold } from '../../motion/told.ts'
import { type MotionCardView, motionCards } from '../../publish/motion/view.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Settings } from './engine.ts'
import { lessonAt } from './kept-lesson.ts'

/** The cards of a lesson in motion, and what stands for each where nothing can move. */
export interface MotionAnswer {
  readonly told: MotionTold
  /** In the same order. */
  readonly cards: readonly StillCard[]
  /** The language that it is told in: that of the lesson. */
  readonly lang: string
  readonly labels: MotionLabels
}

/** What stands on the buttons round the card, as on the page in motion that the lesson is printed as. */
export type MotionLabels = ReturnType<typeof labelsIn>

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
  const cards = motionCards(filled)
  return {
    told: { cards: cards.map(({ told }) => told) },
    cards: cards.map(({ view }) => stillOf(view)),
    lang: filled.wording.locale,
    labels: labelsIn(filled.wording),
  }
}

const labelsIn = ({ say }: Pick<Wording, 'say'>) => ({
  whichCard: say('motion.which-card'),
  stage: say('motion.stage'),
  keys: say('motion.keys', { plus: '+', minus: '-', home: say('motion.home-key') }),
  play: say('motion.play'),
  howFar: say('motion.how-far'),
  stopAt: say('motion.stop-at'),
  stops: { flat: say('motion.flat'), shut: say('motion.shut'), standing: say('motion.standing') },
  turnIt: say('motion.turn-it'),
  turns: {
    left: say('motion.left'),
    right: say('motion.right'),
    up: say('motion.turn-up'),
    down: say('motion.turn-down'),
    nearer: say('motion.nearer'),
    farther: say('motion.farther'),
    home: say('motion.as-it-was'),
  },
  names: say('motion.names'),
  sorry: say('motion.sorry'),
})

const stillOf = ({ name, shut, lacks, figures }: MotionCardView): StillCard => ({
  name,
  shut: shut.html,
  lacks,
  figures: figures.map(({ html }) => html),
})
