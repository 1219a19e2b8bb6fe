import fc from 'fast-check'
import { toHtml } from 'hast-util-to-html'
import { expect, test } from 'vitest'
import { measureHast, measureSpan, measureText } from '../../src/publish/measure.ts'

const htmlOf = (text: string) => toHtml({ type: 'root', children: measureHast(text) })

test('a mixed number keeps its whole, its fraction and its unit together', () => {
  expect(htmlOf('5 7/8 in')).toBe('5\u202f<span class="frac">7/8</span>\u00a0in')
})

test.each([
  ['7/8 in', '<span class="frac">7/8</span>\u00a0in'],
  ['149 mm', '149\u00a0mm'],
  ['5 7/8 × 4 in', '5\u202f<span class="frac">7/8</span>\u00a0×\u00a04\u00a0in'],
  ['1, 2 1/2 and 9 in', '1, 2\u202f<span class="frac">1/2</span> and 9\u00a0in'],
  ['0.5 mm', '0.5\u00a0mm'],
  ['dark blue card', 'dark blue card'],
  ['none', 'none'],
])('%s', (text, html) => {
  expect(htmlOf(text)).toBe(html)
})

test('text alone gets fractions from the fraction slash', () => {
  expect(measureText('5 7/8 × 13/16 in')).toBe('5\u202f7\u20448\u00a0×\u00a013\u204416\u00a0in')
})

test('only what has a number in it is set apart', () => {
  expect(measureSpan('dark blue card')).toEqual([{ type: 'text', value: 'dark blue card' }])
  expect(measureSpan('3')).toMatchObject([{ tagName: 'span', properties: { className: ['measure'] } }])
})

test('copying gives what the lesson says, whatever the measure', () => {
  const whole = fc.nat(200)
  const part = fc.constantFrom('1/2', '3/4', '7/8', '13/16', '31/32')
  const number = fc.oneof(
    whole.map(String),
    part,
    fc.tuple(whole, part).map(([w, p]) => `${w} ${p}`),
  )
  const unit = fc.constantFrom('in', 'mm')
  const measure = fc.oneof(
    fc.tuple(number, unit).map(([n, u]) => `${n} ${u}`),
    fc.tuple(number, number, unit).map(([a, b, u]) => `${a} × ${b} ${u}`),
    fc.tuple(fc.array(number, { minLength: 2 }), unit).map(([list, u]) => `${list.join(', ')} and 1 ${u}`),
  )
  fc.assert(
    fc.property(measure, (text) => {
      const copied = htmlOf(text)
        .replace(/<[^>]*>/g, '')
        .replace(/[\u00a0\u202f]/g, ' ')
      expect(copied).toBe(text)
    }),
  )
})
