import type { Bend, Piece, Structure } from '../card/structure.ts'

/** The pieces that a fold is made of, without what a lesson sticks on them. */
export const mechanismOf = ({ pieces }: Pick<Structure, 'pieces'>): Piece[] =>
  pieces.filter(({ kind }) => kind === 'base')

/** Whether a card is set up rather than laid flat: some crease is neither flat nor folded when it is shut. */
export const isBox = ({ shut = [] }: Pick<Structure, 'shut'>): boolean =>
  shut.some(({ degrees }) => degrees % 180 !== 0)

/** Whether a box is shown standing just as it is shut, so that one figure says it all. */
export function isShownShut({ shut = [], display }: Pick<Structure, 'shut' | 'display'>): boolean {
  const same = (a: Bend, b: Bend): boolean =>
    a.degrees === b.degrees && a.hinge.toSorted().join('\n') === b.hinge.toSorted().join('\n')
  return isBox({ shut }) && display.angles.every((bend) => shut.some((other) => same(bend, other)))
}
