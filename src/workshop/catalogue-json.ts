import type { Side } from '../card/structure.ts'
import { wordsOf } from '../card/style.ts'
import type { Unit } from '../length/length.ts'
import { type CatalogueFold, groupsOf } from './catalogue.ts'
import { type LengthJson, type SizeJson, sizeJson } from './length-json.ts'
import { cardJson } from './measures.ts'
import { mechanismOf } from './mechanism.ts'
import { provenStarter } from './starter-card.ts'

interface Named {
  readonly name: string
  readonly help: string
}

export interface FoldJson {
  readonly name: string
  readonly group: string
  readonly summary: string
  /** The part that takes what does not divide on the ruler; missing where nothing is divided. */
  readonly remainder?: string
  readonly parameters: readonly (Named & { readonly usual: string })[]
  readonly counts: readonly (Named & Readonly<Record<'usual' | 'least' | 'most', number>>)[]
  /** The usual word comes first. */
  readonly choices: readonly (Named & { readonly words: readonly string[] })[]
  /** Parts that the card block lists; of a free fold only. */
  readonly parts?: readonly Named[]
  readonly panels: readonly { readonly name: string; readonly side: Side }[]
  /** From here on: of the card of its starter lesson. */
  readonly pieces: readonly (SizeJson & { readonly name: string; readonly count: number })[]
  readonly closed: SizeJson
  /** Whether it is not laid flat when it is shut. */
  readonly box: boolean
  readonly standing?: SizeJson & { readonly depth: LengthJson }
  readonly thickness?: LengthJson
  /** How many creases bend each on its own: 0 rigid, 1 moves as one. */
  readonly freedom?: number
}

/** A fold for programs: what its card block takes, and what the card of its starter lesson comes to. */
export function foldJson(fold: CatalogueFold, unit: Unit): FoldJson {
  const { name, summary, remainder, parameters, counts = {}, choices = {}, parts, panels } = fold
  const proven = provenStarter(fold, unit)
  const { closed, standing, thickness, freedom } = cardJson(proven, proven.card)
  return {
    name,
    group: groupsOf([fold])[0]?.title ?? '',
    summary,
    ...(remainder !== undefined && { remainder }),
    parameters: Object.entries(parameters).map(([key, { usual, help }]) => ({ name: key, usual, help })),
    counts: Object.entries(counts).map(([key, { usual, least, most, help }]) => ({
      name: key,
      usual,
      least,
      most,
      help,
    })),
    choices: Object.entries(choices).map(([key, choice]) => ({
      name: key,
      words: wordsOf(choice),
      help: choice.help,
    })),
    ...(Object.keys(parts).length > 0 && {
      parts: Object.entries(parts).map(([key, help]) => ({ name: key, help })),
    }),
    panels: Object.entries(panels).map(([panel, side]) => ({ name: panel, side })),
    pieces: mechanismOf(proven.card.structure).map((piece) => ({
      name: piece.name,
      count: piece.count,
      ...sizeJson(piece.size, unit),
    })),
    closed,
    box: proven.proof.closed?.isFlat === false,
    ...(standing && { standing }),
    ...(thickness && { thickness }),
    ...(freedom !== undefined && { freedom }),
  }
}
