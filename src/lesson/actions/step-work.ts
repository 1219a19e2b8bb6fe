import type { Step, StepWork } from '../lesson.ts'
import type { Action, Thing } from './action.ts'
import { type Course, stepOf } from './course.ts'

/**
 * Steps with what of them can be done before the class, as far as their words say it. `more` is true for anything that
 * is not cutting a piece from its sheet or scoring it, and for words that are not understood, so that no work is thought
 * to be done that is not.
 */
export function withWork(steps: readonly Step[], { actions, cuts, pieceOf }: Course): Step[] {
  const isCutFromSheet = ({ kind, objects, sentence }: Action): boolean =>
    kind === 'cut' &&
    objects.length > 0 &&
    objects.every(({ named }: Thing) => {
      if (named.kind === 'envelope') return saysItsSheet(sentence)
      const piece = pieceOf(named)
      return piece !== undefined && cuts.get(piece)?.step === (sentence.step ?? 0)
    })
  const isScored = ({ kind, objects }: Action): boolean => kind === 'score' && objects.length > 0
  const workIn = (own: readonly Action[]): StepWork => {
    const isWork = (action: Action): boolean => isCutFromSheet(action) || isScored(action)
    return {
      cuts: own.some(isCutFromSheet),
      scores: own.some(isScored),
      more: !own.some(isWork) || own.some((action) => !isWork(action) && !action.turns),
    }
  }
  return steps.map((step) => {
    const work = workIn(actions.filter((action) => stepOf(action) === step.number))
    return work.cuts || work.scores ? { ...step, work } : step
  })
}

/** What is cut away from an envelope later on is not its sheet. */
const saysItsSheet = ({ measures }: Action['sentence']): boolean =>
  measures.some(({ paths }) => paths.some((path) => path.includes('envelope') && path.at(-1) === 'sheet'))
