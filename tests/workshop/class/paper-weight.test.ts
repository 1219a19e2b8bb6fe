import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { areaNumber, areaOf } from '../../../src/length/area.ts'
import { inches, mm } from '../../../src/length/length.ts'
import { wordingOf } from '../../../src/wording/wording.ts'
import { gramsText } from '../../../src/workshop/class/grams-text.ts'
import { gramsOf, paperWeight } from '../../../src/workshop/class/paper-weight.ts'
import { planClass } from '../../../src/workshop/class/plan-class.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'
import data from '../../data/sheet-weight.json' with { type: 'json' }
import { harbour } from '../harbour.ts'

const side = { in: inches, mm } as const

describe('sheets weigh what published figures say', () => {
  test.each(data.grams)('$id', ({ w, h, unit, gsm, sheets, expect_grams, tolerance }) => {
    const length = side[unit as 'in' | 'mm']
    const grams = gramsOf({ width: length(w), height: length(h) }, new Fraction(gsm), sheets)
    expect(Math.abs(grams.valueOf() - expect_grams)).toBeLessThan(tolerance)
  })

  // 500 sheets of the basis size weigh the pounds that the paper is sold by: within what a maker rounds its gsm to.
  test.each(data.reams)('a ream of $id ($source)', ({ lb, printed_gsm, tolerance_gsm, w_in, h_in }) => {
    const size = { width: inches(w_in), height: inches(h_in) }
    const pounds = gramsOf(size, new Fraction(printed_gsm), 500).div(453.59237).valueOf()
    const slack = (500 * (areaNumber(areaOf(size), 'mm') / 10_000) * tolerance_gsm) / 453.59237
    expect(Math.abs(pounds - lb)).toBeLessThan(slack)
  })
})

test('a class of 2 and a spare kit: what is said of the paper is weighed, and the rest is named', async () => {
  const { file } = readClass(`lesson: a.md
people: 2
spare: 1
sheets:
  dark blue card: 12 x 12 in
  grey card: {size: 12 x 12 in, weight: 200 gsm}
  patterned paper: 12 x 12 in
  envelope paper: 12 x 12 in
`)
  const lessons = file.lessons.map((one) => taughtLesson(one, harbour(), file).taught)
  const { purchases } = await planClass(file, lessons)
  const { stocks, perKit, unknown } = paperWeight(file, lessons, purchases)
  // By hand: a base of 8 1/2 × 5 in is 42.5 sq in = 0.0274193 m², at 300 gsm 8.22579 g; three are 24.67737 g.
  // A sea wall of 7 × 1 1/4 in is 8.75 sq in = 0.00564515 m², at 200 gsm 1.12903 g; three are 3.38709 g.
  // A sheet of 12 × 12 in is 0.09290304 m²: two of 300 gsm are 55.741824 g, one of 200 gsm 18.580608 g.
  expect(
    stocks.map(({ stock, gsm, pieces, sheets }) => [
      stock,
      gsm.valueOf(),
      pieces.valueOf(),
      sheets.valueOf(),
    ]),
  ).toEqual([
    ['dark blue card', 300, 24.67737, 55.741824],
    ['grey card', 200, 3.38709, 18.580608],
  ])
  expect(perKit[0]?.grams.valueOf()).toBeCloseTo(8.22579 + 1.12903, 9)
  expect(unknown).toEqual(['patterned paper', 'envelope paper'])
})

test('the class file knows the paper better than the lesson', () => {
  const { file } = readClass('lesson: a.md\npeople: 1\nsheets: {dark blue card: {size: A4, weight: 240 gsm}}')
  const lessons = file.lessons.map((one) => taughtLesson(one, harbour(), file).taught)
  expect(paperWeight(file, lessons, []).stocks[0]?.gsm.valueOf()).toBe(240)
})

test('weights are told as a kitchen scale shows them', () => {
  const say = (grams: number, unit: 'in' | 'mm') => gramsText(new Fraction(grams), wordingOf('en', unit))
  expect([say(8.22579, 'mm'), say(43.4, 'mm'), say(1093, 'mm')]).toEqual(['8.2 g', '43 g', '1.09 kg'])
  expect([say(28.349523125, 'in'), say(1093, 'in')]).toEqual(['28 g (1 oz)', '1.09 kg (2.4 lb)'])
})
