import { groupBy } from '../../length/group-by.ts'
import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Action } from './action.ts'
import { type Cut, firstCuts } from './cuts.ts'

/** How the making of the cards goes, step by step. */
export interface Course {
  /** What the steps tell a reader to do, call-outs left out. */
  readonly actions: readonly Action[]
  /** The same of call-outs and of what stands between the steps. */
  readonly asides: readonly Action[]
  readonly sentences: readonly Sentence[]
  readonly pieces: readonly Named[]
  /** The piece that something is, or is a panel of; none for letters and envelopes. */
  readonly pieceOf: (named: Named) => Named | undefined
  /** Where each piece is cut first, as far as the lesson says it. */
  readonly cuts: ReadonlyMap<Named, Cut>
}

/** Reads the course of a lesson. */
export function courseOf(
  sentences: readonly Sentence[],
  named: readonly Named[],
  all: readonly Action[],
): Course {
  const pieces = named.filter(({ kind }) => kind === 'piece')
  const ofCard = new Map(
    [...groupBy(pieces, ({ card }) => card)].map(
      ([card, own]) => [card, new Map(own.map((piece) => [piece.name, piece]))] as const,
    ),
  )
  const pieceOf = (one: Named): Named | undefined =>
    one.kind === 'piece' || one.kind === 'panel' ? ofCard.get(one.card)?.get(one.piece ?? '') : undefined
  const isStep = ({ sentence: { step, callout } }: Action): boolean =>
    step !== undefined && callout === undefined
  const actions = all.filter(isStep)
  const asides = all.filter((action) => !isStep(action))
  return {
    actions,
    asides,
    sentences,
    pieces,
    pieceOf,
    cuts: firstCuts({ actions, asides, sentences, pieces }),
  }
}

/** The number of the step that something is done in; 0 before the first. */
export const stepOf = ({ sentence: { step = 0 } }: Pick<Action, 'sentence'>): number => step

/** The place of what an action does, in the file. */
export const placeOfAction = ({ sentence, start, end }: Action) => sentence.place(start, end)
