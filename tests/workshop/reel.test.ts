import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../src/length/length.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { besideSold, soldText } from '../../src/workshop/class/sold.ts'
import { stretchText } from '../../src/workshop/reel.ts'

const [metric, german, inch] = [wordingOf('en', 'mm'), wordingOf('de', 'mm'), wordingOf('en', 'in')]
const roll = (length: ReturnType<typeof mm>) => ({ kind: 'roll', length }) as const
const needed = (length: ReturnType<typeof mm>) => ({ kind: 'length', length }) as const

test('what is needed is in metres from one metre on', () => {
  expect([999, 1000, 8640, 8640.2].map((n) => stretchText(mm(n), metric))).toEqual([
    '999 mm',
    '1 m',
    '8.64 m',
    '8.641 m',
  ])
  expect(stretchText(mm(8640), german)).toBe('8,64 m')
  expect(stretchText(inches(340), inch)).toBe('340 in')
})

describe('what is needed and what is there stand in the unit of the roll', () => {
  // 8640 mm beside 3 m; 340 in = 8.636 m; 12 yd = 432 in, 340 in = 9.444… yd.
  test.each([
    [metric, mm(8640), mm(10_000), ['8.64 m', '8.64 m', 'roll of 10 m']],
    [inch, inches(340), mm(10_000), ['8.64 m', '8.63 m', 'roll of 10 m']],
    [inch, inches(340), inches(432), ['9.5 yd', '9.4 yd', 'roll of 12 yd']],
    [inch, inches(340), inches(100), ['340 in', '340 in', 'roll of 100 in']],
    [metric, mm(640), mm(3000), ['640 mm', '640 mm', 'roll of 3 m']],
  ])('%#', (wording, length, whole, said) => {
    const texts = (['up', 'down'] as const).map((which) =>
      besideSold(needed(length), roll(whole), which, wording),
    )
    expect([...texts, soldText(roll(whole), wording)]).toEqual(said)
  })
})
