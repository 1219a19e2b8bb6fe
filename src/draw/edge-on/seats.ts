import type { Named } from './names.ts'
import { type Found, type Room, type Seated, seatFor, type Waiting, type Way, waitingFor } from './seat.ts'

const ways: readonly Way[] = ['centred', 'right', 'left']
/** How often a way is tried, each time with those that found no place before the others. */
const mostRounds = 4
/** What a name without a place costs, and from what on a place is a poor one. */
const [none, poor] = [1000, 2.5]

/**
 * Gives every name a place near to the drawing, with a line that crosses few layers. No name lies across the line of
 * another. A name that finds no place comes first in the next try; where many stretches lie over one another, names hang
 * like flags from lines side by side. The try that finds a place for most of the names is kept.
 */
export function seatNames(names: readonly Named[], room: Room): Seated[] {
  const all = names.map((name) => waitingFor(name, room))
  let best: readonly Found[] | undefined
  for (const way of ways) {
    let order = orderFor(way, all)
    for (let round = 0; round < mostRounds; round++) {
      const found = seatAll(order, room, way)
      if (!best || costOf(found, all) < costOf(best, all)) best = found
      if (found.length === all.length) return improved(found, room).map(({ seat }) => seat)
      const left = order.filter(({ name }) => !found.some(({ seat }) => seat.name === name))
      order = [...left, ...order.filter((one) => !left.includes(one))]
    }
  }
  return improved(best ?? [], room).map(({ seat }) => seat)
}

/** Those that can stand in few places come first; those that point at several go round the others. */
function orderFor(way: Way, all: readonly Waiting[]): Waiting[] {
  const many = ({ choices }: Waiting): number => choices[0]?.drops.length ?? 0
  const key = {
    centred: (one: Waiting) => one.long,
    right: (one: Waiting) => -one.end,
    left: (one: Waiting) => one.start,
  }
  return all.toSorted((a, b) => many(a) - many(b) || key[way](a) - key[way](b))
}

/** Places for names in this order, beside those that are there already. */
function seatAll(order: readonly Waiting[], room: Room, way: Way, there: readonly Seated[] = []): Found[] {
  const found: Found[] = []
  const seats = [...there]
  for (const one of order) {
    const next = seatFor(one, room, seats, way)
    if (!next) continue
    found.push(next)
    seats.push(next.seat)
  }
  return found
}

const costOf = (found: readonly Found[], all: readonly unknown[]): number =>
  found.reduce((sum, { cost }) => sum + cost, 0) + none * (all.length - found.length)

/** Each name once more, now that all others have their places; a poor place may be had in turn with any other. */
function improved(all: readonly Found[], room: Room): Found[] {
  let now = [...all]
  const again = (these: readonly Found[]): void => {
    const rest = now.filter((one) => !these.includes(one))
    const seats = rest.map(({ seat }) => seat)
    const moved = seatAll(
      these.map(({ waiting }) => waiting),
      room,
      'centred',
      seats,
    )
    if (costOf(moved, these) < costOf(these, these) - 1e-9) now = [...rest, ...moved]
  }
  for (const { waiting } of all) again(now.filter((one) => one.waiting === waiting))
  for (const { waiting } of all)
    for (const { waiting: other } of all) {
      const [one, two] = [waiting, other].map((each) => now.find((found) => found.waiting === each))
      if (one && two && one !== two && one.cost > poor) again([two, one])
    }
  return now
}
