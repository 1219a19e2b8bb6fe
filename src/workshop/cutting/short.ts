import type { Unit } from '../../length/length.ts'
import { wordingOf } from '../../wording/wording.ts'
import type { ShortPiece, ShortReason, WantedPiece } from './cutting.ts'
import type { Marked } from './marks.ts'
import { planStock } from './plan-stock.ts'
import { shortWords } from './short-words.ts'
import type { Solver } from './solver.ts'
import type { Work } from './work.ts'

/** The pieces of each kind that there is paper for, and those that there is not. */
export interface Shared {
  readonly kinds: readonly (readonly WantedPiece[])[]
  readonly lacking: readonly { readonly piece: WantedPiece; readonly count: number }[]
}

/** Shares out what is missing of each kind: the pieces named last go without first. */
export function shareShort({ kinds }: Marked, short: readonly number[]): Shared {
  const lacking: { piece: WantedPiece; count: number }[] = []
  const shared = kinds.map((pieces, kind) => {
    let missing = short[kind] ?? 0
    return pieces
      .toReversed()
      .map((piece) => {
        const count = Math.min(missing, piece.count)
        missing -= count
        if (count > 0) lacking.push({ piece, count })
        return { ...piece, count: piece.count - count }
      })
      .toReversed()
  })
  return { kinds: shared, lacking }
}

/** Pieces that cannot be cut, with the reason. */
export function shortPiece(
  { stock, name, lesson }: WantedPiece,
  count: number,
  reason: ShortReason,
  unit: Unit,
): ShortPiece {
  const words = shortWords(reason, `\`${stock}\``, wordingOf('en-GB', unit))
  return { stock, piece: name, lesson, count, reason, ...words }
}

/** What is missing, with how many more sheets would do. */
export async function shortPieces(
  { problem, shapes }: Marked,
  short: readonly number[],
  lacking: Shared['lacking'],
  unit: Unit,
  solver: Solver,
  work: Work,
): Promise<ShortPiece[]> {
  if (lacking.length === 0) return []
  const wanted = short.flatMap((count, kind) => (count > 0 ? [kind] : []))
  // The first size of sheet that all of them fit on; an offcut is not to be had more often.
  const shape = shapes.findIndex(
    (sheet, i) =>
      !sheet.offcut && wanted.every((kind) => problem.shapes[i]?.ways.some((way) => way.kind === kind)),
  )
  const sheet = shapes[shape]
  const more = sheet && { sheets: await sheetsFor(shape), size: sheet.size }
  return lacking.map(({ piece, count }) =>
    shortPiece(piece, count, { kind: 'too little', count, ...(more && { more }) }, unit),
  )

  async function sheetsFor(only: number): Promise<number> {
    const supplies = [{ shape: only, limit: Number.POSITIVE_INFINITY, counted: true, price: 0 }]
    return (await planStock({ ...problem, counts: short, supplies }, solver, work)).used
  }
}
