import type { Piece, Structure } from '../card/structure.ts'

/** The pieces that a fold is made of, without what a lesson sticks on them. */
export const mechanismOf = ({ pieces }: Pick<Structure, 'pieces'>): Piece[] =>
  pieces.filter(({ kind }) => kind === 'base')
