import { type Finding, suggestWord } from '../../length/finding.ts'
import type { ClassFile } from './class-file.ts'
import type { SeatTable } from './seat-table.ts'

/** A table with those who sit at it, by their number in the class from 0. */
export interface SeatedTable {
  readonly table: SeatTable
  readonly people: readonly number[]
}

/** What a class file says of who comes and where they can sit. */
export type Seated = Pick<ClassFile, 'tables' | 'people' | 'guests'>

/**
 * Who sits where: those who want a table there, and the others so that the tables are as even as their seats allow.
 * People who stand beside each other in the file sit beside each other. Tables where nobody sits are left out.
 */
export function seatingOf({ tables, people, guests }: Seated): SeatedTable[] {
  if (tables.length === 0) return []
  const seated: number[][] = tables.map(() => [])
  const others: number[] = []
  for (let person = 0; person < people; person++) {
    const wish = guests[person]?.table?.name
    const at = wish === undefined ? undefined : seated[tables.findIndex(({ name }) => name === wish)]
    ;(at ?? others).push(person)
  }
  const sizes = evenSizes(
    tables,
    seated.map(({ length }) => length),
    others.length,
  )
  let next = 0
  for (const [i, at] of seated.entries()) {
    const free = (sizes[i] ?? 0) - at.length
    at.push(...others.slice(next, next + free))
    next += free
  }
  return tables
    .map((table, i) => ({ table, people: (seated[i] ?? []).toSorted((a, b) => a - b) }))
    .filter((one) => one.people.length > 0)
}

/** How many sit at each table when so many more come: each goes to the emptiest that has a seat. */
function evenSizes(tables: readonly SeatTable[], taken: readonly number[], more: number): number[] {
  const sizes = [...taken]
  for (let n = 0; n < more; n++) {
    const free = tables.flatMap(({ seats = Number.POSITIVE_INFINITY }, i) =>
      (sizes[i] ?? 0) < seats ? [i] : [],
    )
    // Where seats are missing, which is told, they squeeze in.
    const open = free.length > 0 ? free : tables.map((_, i) => i)
    const emptiest = open.reduce((a, b) => ((sizes[b] ?? 0) < (sizes[a] ?? 0) ? b : a))
    sizes[emptiest] = (sizes[emptiest] ?? 0) + 1
  }
  return sizes
}

/** Whether everybody has a seat, and the tables that people ask for are there. */
export function seatFindings({ tables, people, guests }: Seated): Finding[] {
  const [first] = tables
  const wishes = guests.flatMap(({ table }) => (table ? [table] : []))
  const unknown = wishes
    .filter(({ name }) => !tables.some((table) => table.name === name))
    .map(({ name, place }) =>
      error(
        'seats',
        `There is no table \`${name}\``,
        first
          ? suggestWord(
              name,
              tables.map((table) => table.name),
            )
          : `Add it, such as \`tables: [${name}]\``,
        place,
      ),
    )
  const full = tables.flatMap(({ name, seats, place }) => {
    const wished = wishes.filter((wish) => wish.name === name).length
    if (seats === undefined || wished <= seats) return []
    return [
      error(
        'seats',
        `${wished} people want to sit at \`${name}\`, which has ${seats} ${seats === 1 ? 'seat' : 'seats'}`,
        `Give it ${wished} seats, or seat somebody elsewhere`,
        place,
      ),
    ]
  })
  const seats = tables.reduce((sum, table) => sum + (table.seats ?? Number.POSITIVE_INFINITY), 0)
  const missing = people - seats
  const short =
    first && missing > 0
      ? [
          error(
            'seats',
            `${people} people come, and the tables have ${seats} ${seats === 1 ? 'seat' : 'seats'}`,
            `Add ${missing} ${missing === 1 ? 'seat' : 'seats'}, or another table`,
            first.place,
          ),
        ]
      : []
  return [...unknown, ...full, ...short]
}

const error = (rule: string, message: string, suggestion: string, place: Finding['place']): Finding => ({
  rule,
  severity: 'error',
  message,
  suggestion,
  ...(place && { place }),
})
