import { hingesOf, scoresOf } from '../card/scores.ts'
import { slantsOf } from '../card/slants.ts'
import type { Fold, Piece, Structure } from '../card/structure.ts'
import { listOf } from '../length/finding.ts'

/** The ways to measure the score lines of a piece: from one edge, from both, and by the ends of slanting ones. */
export function scoreWays(structure: Structure, { name }: Piece): string[] {
  const hinges = hingesOf(structure, name)
  const ways = new Set(scoresOf(hinges).map(({ along }) => along))
  const straight =
    ways.size > 1
      ? [`at {${name}.uprights} from the left edge`, `at {${name}.levels} from the lower edge`]
      : [...ways].map(() => `at {${name}.scores}`)
  return [...straight, ...(slantsOf(hinges).length > 0 ? [`{${name}.slants}`] : [])]
}

/** How the creases of a piece are bent: the valleys, and the mountains; and where, if one edge tells. */
export function bendsOf(structure: Structure, piece: Piece): string {
  const isOneWay = scoreWays(structure, piece).length === 1
  const said = (fold: Fold, part: string, way: string): string[] => {
    const hinges = hingesOf(structure, piece.name).filter((hinge) => hinge.fold === fold)
    if (hinges.length === 0) return []
    const marks = new Set(scoresOf(hinges).map(({ at, along }) => `${along} ${at.toFraction()}`))
    const several = marks.size + slantsOf(hinges).length > 1
    const at = isOneWay ? ` at {${piece.name}.${part}}` : ''
    return [`the ${fold}${several ? 's' : ''}${at} ${way}`]
  }
  return listOf([
    ...said('valley', 'valleys', 'towards you'),
    ...said('mountain', 'mountains', 'away from you'),
  ])
}
