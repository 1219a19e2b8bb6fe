import { describe, expect, test } from 'vitest'
import { UsageError } from '../../src/cli/problems.ts'
import { readSeconds, stoppedText, timeLimit } from '../../src/cli/time-limit.ts'
import { mm } from '../../src/length/length.ts'
import type { SheetPlan } from '../../src/workshop/cutting/cutting.ts'
import { harbour } from './lessons.ts'
import { foldlore } from './memory.ts'

describe('how long a search may take', () => {
  test.each([
    ['10s', 10],
    ['10 s', 10],
    ['0.5 seconds', 0.5],
    ['30', 30],
    ['2 min', 120],
    ['1m', 60],
  ])('%s', (text, seconds) => {
    expect(readSeconds(text)).toBe(seconds)
  })
  test.each(['soon', '', '0 s', '-3', '10 h'])('%j is told, with what to write', (text) => {
    expect(() => readSeconds(text)).toThrow(UsageError)
  })
  test('is over when it is over, and never without one', () => {
    let now = 0
    const [limit, none] = [timeLimit(2, () => now), timeLimit(undefined, () => now)]
    expect(limit.aborted).toBe(false)
    now = 1999
    expect(limit.aborted).toBe(false)
    now = 2000
    expect([limit.aborted, none.aborted]).toEqual([true, false])
  })
})

describe('what is told of a search that was ended', () => {
  const size = { width: mm(210), height: mm(297) }
  const plan = (used: number, lowerBound: number, proven: boolean): SheetPlan => ({
    stock: 'white card',
    sheet: { stock: 'white card', size },
    used,
    lowerBound,
    proven,
    layouts: [],
  })
  test('how good its plan is for certain', () => {
    expect(stoppedText({ plans: [plan(14, 13, false)], short: [] })).toContain(
      'white card: 14 sheets; fewer than 13 cannot be done',
    )
    expect(stoppedText({ plans: [plan(14, 0, false)], short: [] })).toContain('not known yet')
  })
  test('nothing, where nothing better is possible', () => {
    expect(stoppedText({ plans: [plan(14, 14, true), plan(3, 3, false)], short: [] })).toBeUndefined()
  })
})

describe('--within', () => {
  const stocks = ['dark blue card', 'patterned paper', 'vellum', 'grey card', 'white card', 'envelope paper']
  const files = {
    'class.yaml': `lesson: harbour.md\npeople: 60\nsheets:\n${stocks.map((stock) => `  ${stock}: 12 x 12 in`).join('\n')}\n`,
    'harbour.md': harbour,
  }
  const sheets = (plans: readonly { used: number }[]): number =>
    plans.reduce((sum, { used }) => sum + used, 0)

  test('ends the search: all is cut, and what is said of the plan is true', async () => {
    const whole = JSON.parse((await foldlore(['sheets', 'class.yaml', '--json'], files)).out)
    const soon = JSON.parse(
      (await foldlore(['sheets', 'class.yaml', '--within', '0.001 s', '--json'], files)).out,
    )
    expect(soon.short).toEqual([])
    expect(whole.plans.every(({ proven }: { proven: boolean }) => proven)).toBe(true)
    expect(soon.plans.every(({ proven }: { proven: boolean }) => proven)).toBe(false)
    expect(sheets(soon.plans)).toBeGreaterThanOrEqual(sheets(whole.plans))
    for (const [i, { lowerBound }] of soon.plans.entries())
      expect(lowerBound).toBeLessThanOrEqual(whole.plans[i].used)
  })
  test('tells how good the plan is for certain', async () => {
    const { err } = await foldlore(['sheets', 'class.yaml', '--within', '0.001 s'], files)
    expect(err).toMatch(
      /The search was ended, and this is the best plan so far:\n( {2}.*: \d+ sheets?; .*\n)+/,
    )
  })
})
