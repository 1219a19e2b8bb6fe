import type { Wording } from '../../wording/wording.ts'
import { makeKit } from '../kit.ts'
import { pieceWords } from '../kit-listing.ts'
import { quantityText } from '../quantity-text.ts'
import { makersOf } from './at-tables.ts'
import type { ClassFile } from './class-file.ts'
import { classWording } from './class-wording.ts'
import { seatingOf } from './seating.ts'
import type { Taught } from './taught.ts'

/** What stands on the label of one kit. */
export interface KitLabel {
  /** Of the person, or `kit 5`, or `spare kit 1`. */
  readonly name: string
  readonly title: string
  /** The stocks that this kit has by choice. */
  readonly chosen: readonly string[]
  /** `1 base`, `2 side strip`: pieces first, then the rest. */
  readonly contents: readonly string[]
  /** Where its person sits, if the class file has tables; nowhere for a spare kit. */
  readonly table?: string
}

/** A label for every kit of every lesson, people first and then the spare ones. */
export function kitLabels(file: ClassFile, lessons: readonly Taught[]): KitLabel[] {
  const wording = classWording(file, lessons)
  return lessons.flatMap((taught, lesson) => {
    const chosen = choicesOf(file, taught)
    const table = tableOfKit(file, lessons, lesson)
    const contents = contentsOf(taught, wording.in(taught.lesson.unit))
    return Array.from({ length: taught.kits }, (_, i) => ({
      name: nameOf(file, taught, i, wording),
      title: taught.lesson.frontMatter.title,
      chosen: (chosen[i] ?? []).map(wording.name),
      contents,
      ...(i < taught.people && table(i)),
    }))
  })
}

/** The table of each kit of a lesson, by the number of the kit from 0. */
function tableOfKit(
  file: ClassFile,
  lessons: readonly Taught[],
  lesson: number,
): (kit: number) => Pick<KitLabel, 'table'> {
  const seating = seatingOf(file)
  const { from = 0 } = makersOf(file, lessons)[lesson] ?? {}
  return (kit) => {
    const seated = seating.find(({ people }) => people.includes(from + kit))
    return seated ? { table: seated.table.name } : {}
  }
}

/** What is packed: pieces and letters by number, and what is counted out or cut off a roll. A number stays with its word. */
function contentsOf({ lesson, people, kits }: Taught, wording: Wording): string[] {
  const { each } = makeKit(lesson, people, kits - people)
  return each.map((entry) => {
    if (entry.kind === 'letters')
      return wording.say('class.pack-letters', { count: entry.count, letters: entry.letters })
    if (entry.kind === 'piece') return `${entry.count}\u00a0${pieceWords(entry, wording)}`
    return `${quantityText(entry.amount, wording)}\u00a0${entry.item}`
  })
}

function nameOf({ guests }: ClassFile, { people }: Taught, i: number, { say }: Wording): string {
  if (i >= people) return say('class.spare-kit', { number: i - people + 1 })
  // Who makes which of several lessons is not known from their names.
  return guests.length === people ? (guests[i]?.name ?? '') : say('class.kit-number', { number: i + 1 })
}

/** For each kit the stock of each choice: what the person takes, and of what is left the first that there is. */
function choicesOf({ guests }: ClassFile, { taken, kits, people }: Taught): string[][] {
  const chosen: string[][] = Array.from({ length: kits }, () => [])
  for (const takes of taken.values()) {
    const left = new Map(takes.map((take) => [take.stock, take.kits]))
    const give = (i: number, stock: string | undefined): void => {
      if (stock === undefined) return
      chosen[i]?.push(stock)
      left.set(stock, (left.get(stock) ?? 0) - 1)
    }
    const wish = (i: number): string | undefined =>
      guests.length === people ? guests[i]?.takes.find((stock) => (left.get(stock) ?? 0) > 0) : undefined
    const without: number[] = []
    for (let i = 0; i < kits; i++) {
      const stock = wish(i)
      if (stock === undefined) without.push(i)
      else give(i, stock)
    }
    for (const i of without) give(i, [...left].find(([, n]) => n > 0)?.[0])
  }
  return chosen
}
