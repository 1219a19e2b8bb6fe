import type { Course } from '../actions/course.ts'
import type { Sentence } from '../prose/sentence.ts'

/** What a step speaks of in numbers: its figures need no others. */
export interface Said {
  /** The names that its measures are worked out from, such as `['base', 'mountains']`. */
  readonly paths: readonly (readonly string[])[]
  /** Whether something is cut in it; true as well where its words are not understood. */
  readonly cuts: boolean
}

/** What each step speaks of, by its number. Variations are not for everyone, and are left out. */
export function saidInSteps(
  sentences: readonly Sentence[],
  { actions }: Pick<Course, 'actions'>,
): Map<number, Said> {
  const said = new Map<number, Said>()
  for (const { step, kind, callout, measures } of sentences) {
    if (step === undefined || kind !== 'text' || callout === 'variation') continue
    const paths = [...(said.get(step)?.paths ?? []), ...measures.flatMap((measure) => measure.paths)]
    const cuts = actions.some(
      (action) => action.sentence.step === step && (action.kind === 'cut' || action.kind === 'shape'),
    )
    said.set(step, { paths, cuts: cuts || actions.length === 0 })
  }
  return said
}
