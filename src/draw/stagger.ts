/** A number that belongs at a mark on a line: where the mark is from the start of the line, and how wide the number. */
export interface Tag {
  readonly at: number
  readonly width: number
}

/** Which row a number stands in, 0 nearest the shape, and on which side of its mark. */
export interface Seat {
  readonly row: number
  readonly side: 'before' | 'after'
}

/** Clear room kept between a number and its own mark, another number, or another mark. */
export const clear = 0.75

/**
 * Seats the numbers of running dimensions in as few rows as possible, so that none touches another or a line.
 *
 * The line of a mark crosses every row up to its own:
 *
 *     |     |   |
 *     |   1 | 2 |    row 0
 *     |         |
 *     |   1 1/2 |    row 1
 *
 * @param tags in the order of their marks; the start of the line is itself a line through all rows.
 */
export function stagger(tags: readonly Tag[]): Seat[] {
  for (let rows = 1; rows < tags.length; rows++) {
    const seats = seatIn(tags, rows)
    if (seats) return seats
  }
  // One row each, longest lines first, always works: no line reaches down to a later number.
  return seatIn(tags, tags.length) ?? tags.map((_, i) => ({ row: tags.length - 1 - i, side: 'after' }))
}

/** From where to where a number reaches. */
const reach = ({ at, width }: Tag, { side }: Seat): readonly [number, number] =>
  side === 'before' ? [at - clear - width, at - clear] : [at + clear, at + clear + width]

function disturbs(a: Tag, seatA: Seat, b: Tag, seatB: Seat): boolean {
  const [fromA, toA] = reach(a, seatA)
  const [fromB, toB] = reach(b, seatB)
  const crossed = (from: number, to: number, at: number) => from - clear < at && at < to + clear
  if (seatB.row >= seatA.row && crossed(fromA, toA, b.at)) return true
  if (seatA.row >= seatB.row && crossed(fromB, toB, a.at)) return true
  return seatA.row === seatB.row && fromA < toB + clear && fromB < toA + clear
}

/** Search with memory: what is possible from a mark on depends only on the seats that later numbers can still reach. */
function seatIn(tags: readonly Tag[], rows: number): Seat[] | undefined {
  const widest = Math.max(0, ...tags.map((tag) => tag.width))
  const dead = new Set<string>()
  const seats: Seat[] = []
  const extend = (i: number): boolean => {
    const tag = tags[i]
    if (!tag) return true
    const within = (j: number) => {
      const [other, seat] = [tags[j] as Tag, seats[j] as Seat]
      return Math.max(other.at, reach(other, seat)[1]) > tag.at - widest - 3 * clear
    }
    const near = seats.map((_, j) => j).filter(within)
    const key = `${i}:${near.map((j) => `${j}${seats[j]?.row}${seats[j]?.side}`).join()}`
    if (dead.has(key)) return false
    for (let row = 0; row < rows; row++)
      for (const side of ['before', 'after'] as const) {
        const seat = { row, side }
        if (reach(tag, seat)[0] < clear) continue
        if (near.some((j) => disturbs(tag, seat, tags[j] as Tag, seats[j] as Seat))) continue
        seats[i] = seat
        if (extend(i + 1)) return true
        seats.length = i
      }
    dead.add(key)
    return false
  }
  return extend(0) ? seats : undefined
}
