import { type Finding, suggestWord } from '../../length/finding.ts'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { kitPieces } from '../kit-pieces.ts'
import type { Choice, ClassFile, ClassLesson } from './class-file.ts'
import { classWording } from './class-wording.ts'

/** A lesson as one class makes it. */
export interface Taught {
  readonly lesson: FilledLesson
  /** Those who sit down to it. */
  readonly people: number
  /** With the spare ones. */
  readonly kits: number
  /** For a stock of the lesson that people choose for, the stocks that are taken and how many kits have each. */
  readonly taken: ReadonlyMap<string, readonly Take[]>
}

/** Kits that have a stock. */
export interface Take {
  readonly stock: string
  readonly kits: number
}

/** Puts a lesson and what the class file says of it together; a choice for a stock that it has not is told. */
export function taughtLesson(
  { people: own, choices }: ClassLesson,
  lesson: FilledLesson,
  { people: all, spare }: Pick<ClassFile, 'people' | 'spare'>,
): { taught: Taught; findings: readonly Finding[] } {
  const people = own ?? all
  const kits = people + spare
  const stocks = [
    ...new Set(kitPieces(lesson).flatMap((piece) => (piece.kind === 'piece' ? [piece.stock] : []))),
  ]
  const unknown = choices.filter(({ stock }) => !stocks.includes(stock))
  return {
    taught: {
      lesson,
      people,
      kits,
      taken: new Map(choices.map((choice) => [choice.stock, shared(choice, kits)])),
    },
    findings: unknown.map(({ stock, place }) => ({
      rule: 'choices',
      severity: 'error',
      message: `Nothing in “${lesson.frontMatter.title}” is cut from \`${stock}\``,
      suggestion: suggestWord(stock, stocks),
      place,
    })),
  }
}

/** What a class is called: as its file says, or after its lessons. */
export const classTitle = (file: Pick<ClassFile, 'title' | 'lang'>, lessons: readonly Taught[]): string =>
  file.title ?? classWording(file, lessons).list(lessons.map(({ lesson }) => lesson.frontMatter.title))

/** The spare kits go where most people choose, in proportion; what is left over goes to the largest remainders. */
function shared({ takes }: Choice, kits: number): Take[] {
  const people = takes.reduce((sum, take) => sum + take.people, 0)
  if (people === 0) return []
  const exact = takes.map((take) => (take.people * kits) / people)
  const whole = exact.map(Math.floor)
  const left = kits - whole.reduce((sum, n) => sum + n, 0)
  const byRemainder = exact
    .map((share, i) => ({ i, rest: share - Math.floor(share) }))
    .sort((a, b) => b.rest - a.rest || a.i - b.i)
    .slice(0, left)
  for (const { i } of byRemainder) whole[i] = (whole[i] ?? 0) + 1
  return takes.map(({ stock }, i) => ({ stock, kits: whole[i] ?? 0 }))
}
