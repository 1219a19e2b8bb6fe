import { classSupplies, type KitSupply, tableSupplies } from '../kit-supply.ts'
import { atOnce, type ClassFile } from './class-file.ts'
import { type SeatedTable, seatingOf } from './seating.ts'
import type { Taught } from './taught.ts'
import { together } from './together.ts'

/** A table of the class: how many sit there, what lies there, and what they share. Who it is stays with the labels. */
export interface TableKit {
  readonly name: string
  readonly people: number
  readonly kits: readonly { readonly lesson: string; readonly count: number }[]
  readonly shared: readonly KitSupply[]
}

/**
 * The numbers, from 0, of those in the class who make each lesson. Lessons that are made at the same time have people
 * after people; of lessons one after the other each begins with the first.
 */
export function makersOf(file: ClassFile, lessons: readonly Taught[]): { from: number; to: number }[] {
  const adds = atOnce(file)
  let from = 0
  return lessons.map(({ people }) => {
    const range = { from, to: from + people }
    if (adds) from += people
    return range
  })
}

/** For each lesson how many make it at each table; none where the class file has no tables. */
export function makersByTable(
  file: ClassFile,
  lessons: readonly Taught[],
): (readonly number[] | undefined)[] {
  const seating = seatingOf(file)
  return makersOf(file, lessons).map((range) =>
    seating.length === 0
      ? undefined
      : seating.map((table) => makersAt(table, range)).filter((people) => people > 0),
  )
}

const makersAt = ({ people }: SeatedTable, { from, to }: { from: number; to: number }): number =>
  people.filter((person) => person >= from && person < to).length

/** What lies on each table. */
export function tableKits(file: ClassFile, lessons: readonly Taught[]): TableKit[] {
  const ranges = makersOf(file, lessons)
  const largest = largestTables(file, lessons)
  return seatingOf(file).map((seated) => {
    const made = lessons
      .map(({ lesson }, i) => ({
        lesson,
        count: makersAt(seated, ranges[i] ?? { from: 0, to: 0 }),
        largest: largest[i] ?? 0,
      }))
      .filter(({ count }) => count > 0)
    return {
      name: seated.table.name,
      people: seated.people.length,
      kits: made.map(({ lesson, count }) => ({ lesson: lesson.frontMatter.title, count })),
      shared: together(
        made.map((one) => tableSupplies(one.lesson, one.count, one.largest)),
        atOnce(file),
      ),
    }
  })
}

/** What serves all tables together. */
export function forAllTables(file: ClassFile, lessons: readonly Taught[]): KitSupply[] {
  const largest = largestTables(file, lessons)
  return together(
    lessons.map(({ lesson, people }, i) => classSupplies(lesson, people, largest[i] ?? 0)),
    atOnce(file),
  )
}

/** For each lesson how many make it at the table where most do. */
const largestTables = (file: ClassFile, lessons: readonly Taught[]): number[] =>
  makersByTable(file, lessons).map((makers) => Math.max(0, ...(makers ?? [])))
