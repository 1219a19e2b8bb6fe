import type { Step } from '../../lesson/lesson.ts'
import type { ClassFile } from './class-file.ts'

/** What of a step is done before the class: all of it, so that it is left out, or the cutting and scoring in it. */
export type Beforehand = 'all' | 'cut' | 'score' | 'cut and score'

/** Undefined when nothing of the step is. Where a step asks for more than what is prepared, it keeps its minutes. */
export function beforehandOf(
  { work }: Pick<Step, 'work'>,
  { cut, score }: Pick<ClassFile['prepare'], 'cut' | 'score'>,
): Beforehand | undefined {
  const cuts = work?.cuts === true && cut
  const scores = work?.scores === true && score
  if (!work || !(cuts || scores)) return undefined
  if (!work.more && cuts === work.cuts && scores === work.scores) return 'all'
  return cuts && scores ? 'cut and score' : cuts ? 'cut' : 'score'
}
