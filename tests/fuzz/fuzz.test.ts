import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { entries } from './entries.ts'
import { fuzz } from './fuzz.ts'
import { startTrial, type Trial } from './trial.ts'
import { wrongWith } from './wrong.ts'

const names = Object.keys(entries)
const harbour = readFileSync('lessons/harbour-lights.md', 'utf8')
let trial: Trial
beforeAll(async () => {
  trial = await startTrial(20_000)
})
afterAll(() => trial.end())

// The same texts every time, as far as the time goes; `npm run fuzz` goes on for longer, with others.
test.each(names)('no text that comes in as %s is too much', async (name) => {
  const { tried, failure } = await fuzz(trial, name, 40_000 / names.length, 20, 100)
  expect(failure).toBeUndefined()
  expect(tried).toBeGreaterThan(0)
})

test.each([
  // Its first word is none, and no word is everywhere.
  ['names', '.scores.1<b>-5 in'],
  // Every mark of a ruler as long was tried for a cure.
  ['lesson', harbour.replace(/^sizes:.*$/m, 'sizes: [1081860368 x 150 mm]')],
])('a text that was too much as %s once: %j', async (name, text) =>
  expect(await trial.of(name, text)).toBeUndefined(),
)

describe('what is looked for', () => {
  const fine = { texts: ['Cut the base.'], findings: [{ rule: 'a', message: 'No', line: 1, column: 1 }] }

  test('nothing, where all is well', () => expect(wrongWith('# A', fine)).toBeUndefined())

  test.each(['Cut undefined', 'NaN mm', '[object Object]', 'A mistake inside foldlore'])('%s', (said) => {
    expect(wrongWith('# A', { ...fine, texts: [said] })).toContain(said.slice(0, 8).trim().split(' ').at(-1))
  })

  test('words of the text itself are no slip', () => {
    expect(wrongWith('# undefined', { ...fine, texts: ['Unexpected `undefined`'] })).toBeUndefined()
  })

  test.each([{ line: 0, column: 1 }, { line: 900, column: 1 }, {}])('a finding at %o', (place) => {
    expect(wrongWith('# A', { ...fine, findings: [{ rule: 'a', message: 'No', ...place }] })).toMatch(
      /The rule a/,
    )
  })

  test('a program that does not answer in time is ended, and the next text is tried', async () => {
    const hasty = await startTrial(1)
    expect(await hasty.of('lesson', '# A')).toBe('It takes longer than 0.001 s')
    hasty.end()
    expect(await trial.of('measure', 'base.width')).toBeUndefined()
  })
})
