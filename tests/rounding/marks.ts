import type Fraction from 'fraction.js'
import type { Bond, Structure } from '../../src/card/structure.ts'
import { formatLength } from '../../src/length/format.ts'
import type { Length } from '../../src/length/length.ts'
import type { FilledLesson, ProvenCard } from '../../src/lesson/lesson.ts'
import { lengthsIn, printsOf } from './printed.ts'

/** Whether a whole number of steps comes to this length. */
const isWhole = (x: Fraction, step: Fraction): boolean => x.div(step).d === 1n

/** Numbers of a print that its ruler has no mark for. */
export const troublesOfPrint = (lesson: FilledLesson): string[] =>
  printsOf(lesson).flatMap(({ where, text }) =>
    lengthsIn(text).some(({ mm, unit }) => unit !== lesson.unit || !isWhole(mm, lesson.grid))
      ? [`${where} prints ${text}`]
      : [],
  )

/** Corners, scores, cuts and places of pieces that lie between two marks: any of them may stand in a drawing. */
export function troublesOfMarks({ card: { structure, grid, unit, envelope } }: ProvenCard): string[] {
  const off = (where: string, lengths: readonly Length[]): string[] => {
    const between = lengths.filter((x) => !isWhole(x, grid))
    return between.length > 0
      ? [`${where} is at ${between.map((x) => formatLength(x, unit)).join(' and ')}`]
      : []
  }
  const flat = (one: Structure): string[] => [
    ...one.pieces.flatMap(({ name, size, cuts }) => [
      ...off(`the size of ${name}`, [size.width, size.height]),
      ...cuts.flatMap(({ from, to }) => off(`a cut of ${name}`, [from.x, from.y, to.x, to.y])),
    ]),
    ...one.plates.flatMap(({ name, outline, holes }) =>
      [...outline, ...holes.flat()].flatMap(({ x, y }) => off(`a corner of ${name}`, [x, y])),
    ),
    ...one.hinges.flatMap(({ between, line: { from, to } }) =>
      off(`the score between ${between.join(' and ')}`, [from.x, from.y, to.x, to.y]),
    ),
  ]
  // What slides has play, and nobody marks where in its play it lies. What is stuck on slanting follows its glue line.
  const placed = ({ plate, onto, at, turn, slide }: Bond): string[] =>
    turn % 90 === 0 && !slide ? off(`${plate} on ${onto}`, [at.x, at.y]) : []
  return [
    ...flat(structure),
    ...structure.bonds.flatMap(placed),
    ...(envelope ? flat(envelope.structure) : []),
  ]
}
