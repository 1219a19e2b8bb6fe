import { readdirSync, readFileSync } from 'node:fs'
import { proveCard } from '../../src/fold/prove-card.ts'
import { hasErrors } from '../../src/length/finding.ts'
import { type Size, same, type Unit } from '../../src/length/length.ts'
import { readSize } from '../../src/length/text.ts'
import { mainCard } from '../../src/lesson/figure-target.ts'
import type { Lesson, ProvenCard } from '../../src/lesson/lesson.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { gridFor } from '../../src/lesson/ruler.ts'
import { sizes, units } from './cards.ts'

/** They stand beside the tests, and a bundle of this file elsewhere is run in the folder of the project. */
const folder = new URL(`file://${process.cwd()}/lessons/`)

/** The example lessons, by their file names. */
export const lessonNames = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .map((name) => name.replace(/\.md$/, ''))

export const lessonNamed = (name: string): Lesson =>
  readLesson(readFileSync(new URL(`${name}.md`, folder), 'utf8'))

/** Cards of one print of a lesson. */
export interface LessonPrint {
  readonly title: string
  readonly unit: Unit
  readonly cards: readonly ProvenCard[]
}

/**
 * The prints of a lesson in `count` sizes and both units: its own size, those it is offered in, and then others, of which
 * those that its fold refuses are left out.
 */
export function printsOf(lesson: Lesson, count: number): LessonPrint[] {
  const offered = lesson.frontMatter.sizes.map(({ size }) => size)
  const wished: (Size | undefined)[] = [undefined, ...offered, ...sizes.map((text) => readSize(text))]
  const distinct = wished.filter((size, i) => !wished.slice(0, i).some((other) => isSame(other, size)))
  const found: LessonPrint[] = []
  for (const size of distinct) {
    const both = units.map((unit) => printOf(lesson, unit, size))
    if (both.every((print) => print !== undefined)) found.push(...both)
    if (found.length >= count * units.length) break
  }
  return found
}

const isSame = (a: Size | undefined, b: Size | undefined): boolean =>
  a && b ? same(a.width, b.width) && same(a.height, b.height) : a === b

function printOf(lesson: Lesson, unit: Unit, size: Size | undefined): LessonPrint | undefined {
  const main = mainCard(lesson.cards)
  const cards = lesson.cards.map((block) =>
    proveCard(block, {
      unit,
      grid: gridFor(lesson.frontMatter, unit),
      ...(size && block === main && { closed: size }),
    }),
  )
  if (cards.some(({ findings }) => hasErrors(findings))) return undefined
  const { width, height } = cards[0]?.card?.closed ?? {}
  return {
    title: `${width?.toString()} × ${height?.toString()} mm, in ${unit}`,
    unit,
    cards: cards.flatMap(({ card, proof }) => (card && proof ? [{ card, proof }] : [])),
  }
}
