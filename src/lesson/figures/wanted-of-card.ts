import type { Action } from '../actions/action.ts'
import { type Course, stepOf } from '../actions/course.ts'
import type { ProvenCard } from '../lesson.ts'
import type { Wanted } from './wanted.ts'

/** The figures of a whole card: its envelope, its letters, and the last looks at it. */
export const wantedOfCard = (course: Course, card: ProvenCard, cards: readonly ProvenCard[]): Wanted[] => [
  ...makingEnvelope(course, card),
  ...settingLetters(course, card),
  ...lastLooks(course, card, cards),
]

/** Where the envelope is made: the first step that cuts, marks or scores something by its measures. */
function makingEnvelope(course: Course, card: ProvenCard): Wanted[] {
  const steps = stepsSaying(course, card, (owner) => owner === 'envelope')
  const made = course.actions.find(
    (action) => ['cut', 'score', 'fold', 'write'].includes(action.kind) && steps.includes(stepOf(action)),
  )
  return card.card.envelope && made ? [{ step: stepOf(made), show: 'envelope', card }] : []
}

/** Where letters are set out: the first step that says where each of them begins, or how far apart they are. */
const settingLetters = (course: Course, card: ProvenCard): Wanted[] =>
  card.card.lettering.flatMap(({ name, on, letters }): Wanted[] => {
    const [step] = stepsSaying(
      course,
      card,
      (owner, part) => owner === name && (part === 'marks' || part === 'gap'),
    )
    return step === undefined || letters.length < 2 ? [] : [{ step, show: 'lettering', card, of: on }]
  })

/** The steps that say a measure of a card, by the thing that it is of and its part. */
const stepsSaying = (
  { sentences }: Course,
  { card: { name } }: ProvenCard,
  is: (owner?: string, part?: string) => boolean,
): number[] =>
  sentences.flatMap(({ step, kind, callout, measures }) => {
    const paths = measures.flatMap((measure) => measure.paths)
    const isSaid = paths.some(
      ([first, second, third]) => is(first, second) || (first === name && is(second, third)),
    )
    return step !== undefined && kind === 'text' && callout === undefined && isSaid ? [step] : []
  })

/** Looks at the whole: the last step that stands a card up, and the last that shuts it once all is stuck. */
function lastLooks(course: Course, card: ProvenCard, cards: readonly ProvenCard[]): Wanted[] {
  const about = ({ objects }: Action): boolean =>
    objects.length === 0 ? cards.length === 1 : objects.some(({ named }) => named.card === card.card)
  const own = course.actions.filter(about)
  const last = (is: (action: Action) => boolean): number | undefined => {
    const found = own.findLast(is)
    return found && stepOf(found)
  }
  const stuck = last(({ kind, objects }) => kind === 'stick' && objects.length > 0) ?? 0
  const stood = last((action) => action.kind === 'handle' && /^stand/i.test(verbOf(action)))
  const shut = last((action) => action.kind === 'handle' && /^(?:shut|clos)/i.test(verbOf(action)))
  return [
    ...(stood !== undefined && card.proof.standing ? [{ step: stood, show: 'standing' as const, card }] : []),
    ...(shut !== undefined && shut >= stuck && card.proof.closed
      ? [{ step: shut, show: 'closed' as const, card }]
      : []),
  ]
}

const verbOf = ({ sentence, start }: Action): string => sentence.words.slice(start)
