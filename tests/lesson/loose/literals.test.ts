import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { toMm } from '../../../src/length/length.ts'
import type { Literal } from '../../../src/lesson/loose/literal.ts'
import { literalsIn } from '../../../src/lesson/loose/literals.ts'

interface Marked {
  readonly words: string
  readonly measures: readonly { start: number; text: string; means: string }[]
}

/** The sentences, and the measures that a person has marked in them. */
const corpus = readFileSync(new URL('../../data/measures-in-words.txt', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .map((line): Marked => {
    let words = ''
    let at = 0
    const measures = [...line.matchAll(/⟦(.*?)\|(.*?)⟧/g)].map(
      ({ index, 0: all, 1: text = '', 2: means = '' }) => {
        words += line.slice(at, index)
        at = index + all.length
        const start = words.length
        words += text
        return { start, text, means }
      },
    )
    return { words: words + line.slice(at), measures }
  })

/** Millimetres of `5.875in` and the like, worked out without the code that is tested. */
const lengthsOf = (means: string): number[] =>
  means.split(/ x |; |\.\./).map((one) => Number.parseFloat(one) * (one.endsWith('in') ? 25.4 : 1))

const kindOf = (means: string): Literal['kind'] =>
  means.includes(' x ') ? 'size' : means.includes(';') ? 'list' : means.includes('..') ? 'range' : 'length'

/** A sheet is one only where it is the size of the card: that is not for words alone to say. */
const found = (words: string): Literal[] => literalsIn(words).filter(({ kind }) => kind !== 'sheet')

test.each(corpus.map(({ words, measures }) => [words, measures] as const))('%s', (words, measures) => {
  expect(found(words).map(({ start, end }) => words.slice(start, end))).toEqual(
    measures.map(({ text }) => text),
  )
  for (const [i, literal] of found(words).entries()) {
    const { start = -1, means = '' } = measures[i] ?? {}
    expect(literal.start).toBe(start)
    expect(literal.kind).toBe(kindOf(means))
    const lengths = literal.lengths.map(toMm)
    for (const [k, length] of lengthsOf(means).entries()) expect(lengths[k]).toBeCloseTo(length, 9)
  }
})

describe('over all sentences', () => {
  test('there are a hundred of them, and four in ten have no measure', () => {
    expect(corpus.length).toBeGreaterThanOrEqual(100)
    const none = corpus.filter(({ measures }) => measures.length === 0)
    expect(none.length / corpus.length).toBeGreaterThan(0.35)
  })
})
