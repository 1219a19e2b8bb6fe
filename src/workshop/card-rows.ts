import type { ProvenCard } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
import { atMark } from './card-measures.ts'
import { movementWords } from './movement.ts'

/** One thing to know of a card: which it is, and how it is said. */
export interface CardRow {
  readonly row: 'fold' | 'shut' | 'thick' | 'deep' | 'standing' | 'depth' | 'moves'
  readonly said: string
}

/** What a card comes to: a row for each thing to know of it. */
export function cardRows({ card, proof }: ProvenCard, wording: Wording): CardRow[] {
  const { closed, standing } = proof
  const mark = (x: number) => atMark(x, card.grid)
  return [
    { row: 'fold', said: wording.name(card.fold) },
    { row: 'shut', said: wording.size(closed?.size ?? card.closed) },
    ...(closed
      ? [{ row: closed.isFlat ? 'thick' : 'deep', said: wording.length(closed.thickness) } as const]
      : []),
    ...(standing
      ? ([
          {
            row: 'standing',
            said: wording.size({ width: mark(standing.width), height: mark(standing.height) }),
          },
          { row: 'depth', said: wording.length(mark(standing.depth)) },
        ] as const)
      : []),
    ...(closed ? [{ row: 'moves', said: movementWords(card.structure, proof, wording) } as const] : []),
  ]
}

/** The same as rows of a table. */
export const cardCells = (proven: ProvenCard, wording: Wording): string[][] =>
  cardRows(proven, wording).map(({ row, said }) => [wording.say('kit.row', { row }), said])
