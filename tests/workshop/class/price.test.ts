import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { wordingOf } from '../../../src/wording/wording.ts'
import { priceOf } from '../../../src/workshop/class/price.ts'
import { priceText } from '../../../src/workshop/class/price-text.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import data from '../../data/class-prices.json' with { type: 'json' }

/** What the class file says of the price, read as a teacher writes it. */
function wishOf(people: number, price: string) {
  const { file, findings } = readClass(`lesson: a.md\npeople: ${people}\nprice: ${price}`)
  expect(findings).toEqual([])
  if (!file.price) throw new Error('The price was not read')
  return file.price
}

describe('prices worked by hand', () => {
  test.each(data.classes)('$id', ({ materials, people, price, cost, exact, charge, left, margin, pays }) => {
    const out = priceOf(wishOf(people, price), new Fraction(materials), people)
    const said = [out.cost, out.exact, out.charge, out.left, out.margin].map((x) => x.toFraction())
    expect([...said, out.pays]).toEqual([cost, exact, charge, left, margin, pays])
  })
})

test('what to charge leaves the margin, is the least such price, and pays from the least number that covers the costs', () => {
  const amount = fc.integer({ min: 0, max: 50_000 })
  fc.assert(
    fc.property(
      fc.tuple(amount, amount, fc.integer({ min: 0, max: 900 })),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 0, max: 40 }),
      fc.integer({ min: 0, max: 90 }),
      fc.constantFrom('0.01', '0.05', '0.50', '5'),
      ([cents, fee, each], payers, free, percent, step) => {
        const people = payers + free
        const euro = (n: number) => (n / 100).toFixed(2)
        const wish = wishOf(
          people,
          `{fees: {room: ${euro(fee)}}, each: {tea: ${euro(each)}}, margin: ${percent} %, round to: ${step}, paying: ${payers}}`,
        )
        const { charge, pays } = priceOf(wish, new Fraction(cents, 100), people)
        // In whole cents and hundredths of a per cent, so that nothing is rounded here.
        const price = charge.mul(100).valueOf()
        const all = cents + fee + each * people
        const leaves = (p: number) => p * payers * (100 - percent) >= all * 100
        expect(leaves(price)).toBe(true)
        if (price > 0) expect(leaves(price - Number(step) * 100)).toBe(false)
        const covers = (n: number) => n * price >= cents + fee + each * (free + n)
        expect(covers(pays)).toBe(true)
        expect(pays).toBeLessThanOrEqual(payers)
        if (pays > 0) expect(covers(pays - 1)).toBe(false)
      },
    ),
    { numRuns: 60 },
  )
})

test('the price is told in words', () => {
  const [first] = data.classes
  if (!first) throw new Error('There is no class')
  const wish = wishOf(first.people, first.price)
  expect(
    priceText(priceOf(wish, new Fraction(45), 14), '£', wordingOf('en', 'in')).replace(/\u00a0/g, ' '),
  ).toBe(
    'To have 20 % of the price left when all is paid, charge £22.00, £21.96 rounded up. 14 who pay bring £308.00, and £62.00 are left, 20.1 % of it. It pays for itself from 11 people on.',
  )
})

describe('what is wrong with a price is told with a cure', () => {
  test.each([
    [
      '{margin: 20}',
      '3:17 value: `20` is no margin',
      'Write the part of the price that is to be left, such as `margin: 20 %`',
    ],
    [
      '{margin: 100 %}',
      '3:17 value: No price leaves so much: a margin is a part of the price',
      'Write the part of the price that is to be left, such as `margin: 20 %`',
    ],
    [
      '{markup: 25 %}',
      '3:9 unknown-key: A price is set by its `margin`, the part of the price that is left when all is paid, and not by a markup on the cost',
      'Write `margin: 20 %`, which comes to the same',
    ],
    [
      '{markup: 50 %}',
      '3:9 unknown-key: A price is set by its `margin`, the part of the price that is left when all is paid, and not by a markup on the cost',
      'Write `margin: 33.3 %`, which comes to nearly the same',
    ],
    [
      '{round to: 0}',
      '3:9 value: A price cannot be rounded to nothing',
      'Write for example `round to: 0.50`',
    ],
    ['{paying: 9}', '3:9 value: 9 pay, but only 5 come', 'Write at most `paying: 5`'],
    [
      '{fees: {room: much}}',
      '3:22 value: `much` is no price',
      'Write a number such as `room: 0.60`; the currency stands once, as `currency: £`',
    ],
    ['{fee: 3}', '3:9 unknown-key: Unexpected key `fee` in the price', 'Write `fees`'],
    [
      '12',
      '3:8 value: `price` wants what is paid and what is to be left, but there is a text here',
      'Write for example `price: {fees: {room: 60, teaching: 120}, margin: 20 %, round to: 0.50}`',
    ],
  ])('%s', (price, message, cure) => {
    const { findings } = readClass(`lesson: a.md\npeople: 5\nprice: ${price}`)
    expect(
      findings.map((f) => [`${f.place?.line}:${f.place?.column} ${f.rule}: ${f.message}`, f.suggestion]),
    ).toEqual([[message, cure]])
  })
})
