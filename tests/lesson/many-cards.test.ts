import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'

/** A lesson of so many cards with a mat each, and twice as many steps that name the base which all of them have. */
function lessonOf(cards: number): string {
  const card = (_: unknown, i: number) =>
    `\`\`\`card c${i}\nfold: gate\nclosed: A6\nbase: {stock: white card}\nlayers:\n  mat: {on: back, stock: white card, border: 5 mm}\n\`\`\`\n`
  const step = (_: unknown, i: number) => `${i + 1}. Cut the base to {c0.base.size}.\n`
  return [
    '---\ntitle: Many\n---\n',
    ...Array.from({ length: cards }, card),
    ...Array.from({ length: 2 * cards }, step),
  ].join('\n')
}

/** What filling takes, in ms of this computer's work. */
function work(cards: number): number {
  const lesson = readLesson(lessonOf(cards))
  const before = process.cpuUsage()
  const { cards: all, findings } = fillLesson(lesson)
  const { user } = process.cpuUsage(before)
  expect(all).toHaveLength(cards)
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
  return user / 1000
}

test('a lesson of many cards takes about as much longer as it has more of them', () => {
  work(10)
  // With the cube of their number it would be 64 times, with its square 16.
  expect(work(120) / work(30)).toBeLessThan(12)
}, 60_000)
