import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { LooseNumber } from '../../../src/lesson/loose/loose-numbers.ts'
import { tieLesson } from '../../../src/lesson/loose/tie.ts'

interface Truth {
  readonly line: number
  readonly text: string
  /** Any of these names is right; none if no name can supply the number. */
  readonly names: readonly string[]
  /** The name whose value the teacher meant to write. */
  readonly mistake?: string
  readonly mayStay?: boolean
}

const folder = new URL('../../data/hand-written/', import.meta.url)
const { about: _, ...truths } = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as Record<
  string,
  readonly Truth[]
>

/** Each number of a tutorial with what was judged by hand, in the order of the file. */
function judged(name: string) {
  const tied = tieLesson(readFileSync(new URL(`${name}.md`, folder), 'utf8'))
  const open = [...(truths[name] ?? [])]
  const truthOf = ({ place, words }: LooseNumber): Truth | undefined => {
    const i = open.findIndex(({ line, text }) => line === place.line && text === words)
    return i < 0 ? undefined : open.splice(i, 1)[0]
  }
  const placed = tied.placed.map(({ number, proposal }) => {
    const truth = truthOf(number)
    return { proposal, number, isRight: truth?.names.includes(proposal.candidate.path) === true }
  })
  const left = tied.left.map((number) => ({ number, truth: truthOf(number) }))
  const sure = placed.filter(({ proposal }) => proposal.confidence === 'sure')
  const mistakes = left.filter(
    ({ number, truth }) => truth?.mistake !== undefined && truth.mistake === number.mistake?.candidate.path,
  )
  return { placed, left, sure, mistakes, unseen: open }
}

describe.each(Object.keys(truths))('%s', (name) => {
  const { placed, left, sure, mistakes, unseen } = judged(name)

  test('every number that a person sees in it is found', () => {
    expect(unseen).toEqual([])
    expect(left.filter(({ truth }) => truth === undefined)).toEqual([])
  })

  test('no number has a wrong name', () => {
    expect(sure.filter(({ isRight }) => !isRight).map(({ number }) => number.words)).toEqual([])
    expect(placed.filter(({ isRight }) => !isRight).map(({ number }) => number.words)).toEqual([])
  })

  test('mistakes are told, and nothing else is called one', () => {
    const made = (truths[name] ?? []).filter(({ mistake }) => mistake !== undefined)
    expect(mistakes).toHaveLength(made.length)
    expect(left.filter(({ number }) => number.mistake !== undefined)).toHaveLength(made.length)
  })
})

test('how many are placed, for sure and likely, and left that have a name', () => {
  const all = Object.keys(truths).map(judged)
  const sum = (count: (one: ReturnType<typeof judged>) => number): number =>
    all.reduce((n, one) => n + count(one), 0)
  // Counted when this was written: 62 sure, 21 likely, none left. Not less than that.
  expect(sum(({ sure }) => sure.length)).toBeGreaterThanOrEqual(62)
  expect(sum(({ placed }) => placed.length)).toBeGreaterThanOrEqual(83)
  const named = ({ truth }: { truth: Truth | undefined }): boolean =>
    truth !== undefined && truth.names.length > 0 && truth.mayStay !== true
  expect(sum(({ left }) => left.filter(named).length)).toBe(0)
})
