import type { Layout, WantedPiece } from './cutting.ts'
import type { Laid } from './lay-out.ts'

/** A layout with the names of its pieces, and the shape it is of. */
export interface Named extends Layout {
  readonly shape: number
}

/**
 * Says which piece each one on the sheets is. Pieces of one size may be of several names: then a place gets a name that
 * is left for every sheet of the layout, and where there is none, the sheets are told apart.
 */
export function namePieces(laid: readonly Laid[], kinds: readonly (readonly WantedPiece[])[]): Named[] {
  const left = kinds.map((pieces) => pieces.map((piece) => ({ piece, count: piece.count })))
  const name = (layout: Laid): Named[] => {
    if (layout.times === 0) return []
    let times = layout.times
    const chosen: { piece: WantedPiece; take: { count: number } }[] = []
    const held = new Map<object, number>()
    for (const { kind } of layout.laid) {
      const free = (one: { count: number }): number => one.count - times * (held.get(one) ?? 0)
      const names = left[kind] ?? []
      // The one with least left that still goes round; else the one with most left, on as many sheets as it is enough for.
      const enough = names.filter((one) => free(one) >= times).sort((a, b) => free(a) - free(b))
      const take = enough[0] ?? names.toSorted((a, b) => free(b) - free(a))[0]
      if (!take) continue
      held.set(take, (held.get(take) ?? 0) + 1)
      chosen.push({ piece: take.piece, take })
      times = Math.min(times, Math.floor(take.count / (held.get(take) ?? 1)))
    }
    if (times === 0) return name({ ...layout, times: 1 }).concat(name({ ...layout, times: layout.times - 1 }))
    for (const { take } of chosen) take.count -= times
    const placed = layout.laid.map(({ x, y, width, height, turned }, i) => ({
      piece: chosen[i]?.piece.name ?? '',
      lesson: chosen[i]?.piece.lesson ?? '',
      x,
      y,
      width,
      height,
      turned,
    }))
    return [
      { shape: layout.shape, times, placed, cuts: layout.cuts },
      ...name({ ...layout, times: layout.times - times }),
    ]
  }
  return laid.flatMap(name)
}
