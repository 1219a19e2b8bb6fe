import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inches, mm, type Size, same } from '../../src/length/length.ts'
import { readSize } from '../../src/length/text.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { resizeLesson } from '../../src/lesson/resize.ts'

const lesson = (closed = '7 x 5 in', front = 'units: in  # for the harbour class') => `---
title:   "Shells"   # as on the poster
${front}
sizes: [6 x 6 in]
---

Text   with  odd spaces, *kept*.

\`\`\`card
fold:   side
closed:   ${closed}   # the usual one
layers: {sky: {on: front, border: 1/8 in}}
\`\`\`

1. Cut {base.size}.
`
const rules = (text: string, wishes: Parameters<typeof resizeLesson>[1]) =>
  resizeLesson(text, wishes).findings.map((f) => f.rule)

test('only the size is another one', () => {
  const { text, findings } = resizeLesson(lesson(), { closed: readSize('6 x 6 in') })
  expect(text).toBe(lesson('6 x 6 in'))
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
})

test('only the unit is another one, and lengths stay as the teacher wrote them', () => {
  expect(resizeLesson(lesson(), { units: 'mm' }).text).toBe(
    lesson('7 x 5 in', 'units: mm  # for the harbour class'),
  )
})

test.each([
  ['7 x 5 in', '6 x 6 in', '6 x 6 in'],
  ['7x5in', '6 x 6 in', '6x6in'],
  ['7 × 5 inches', '6 1/2 x 6 in', '6 1/2 × 6 inches'],
  ['7in x 5in', '6 x 6 in', '6in x 6in'],
  ['\'7" x 5"\'', '6 x 6 in', '\'6" x 6"\''],
  ['"7 x 5 in"', '6 x 6 in', '"6 x 6 in"'],
  ['7 x 5 in', '180 x 120 mm', '180 x 120 mm'],
  ['7 x 5 in', 'A6 landscape', '148 x 105 mm'],
  ['A6 landscape', '6 x 6 in', '6 x 6 in'],
  ['148 x 105 mm', '6 x 6 in', '6 x 6 in'],
  ['17.8 x 12.7 cm', '120 x 180 mm', '120 x 180 mm'],
])('%s becomes %s', (before, wish, after) => {
  const { text } = resizeLesson(lesson(before), { closed: readSize(wish) })
  expect(text).toBe(lesson(after))
})

test.each([
  ['7 x 5 in', { closed: readSize('7 x 5 in') }],
  ['A6 landscape', { closed: readSize('148 x 105 mm') }],
  ['17.78 x 12.7 cm', { closed: readSize('7 x 5 in'), units: 'in' as const }],
])('a lesson that is what is wished is not touched: %s', (closed, wishes) => {
  expect(resizeLesson(lesson(closed), wishes).text).toBe(lesson(closed))
})

describe('where there is no value yet', () => {
  test.each([
    ['---\ntitle: Shells\n---\n\nText\n', '---\ntitle: Shells\nunits: mm\n---\n\nText\n'],
    ['---\r\ntitle: Shells\r\n---\r\n', '---\r\ntitle: Shells\r\nunits: mm\r\n---\r\n'],
    ['---\ntitle: Shells\nunits:\n---\n', '---\ntitle: Shells\nunits: mm\n---\n'],
    ['---\n---\n', '---\nunits: mm\n---\n'],
    ['\ufeffText\n', '\ufeff---\nunits: mm\n---\n\nText\n'],
  ])('%j', (before, after) => {
    expect(resizeLesson(before, { units: 'mm' }).text).toBe(after)
  })
})

test('another ruler grid is written into the front matter', () => {
  const { text } = resizeLesson(lesson(), { grid: inches(1, 8) })
  expect(text).toBe(lesson().replace('sizes: [6 x 6 in]', 'sizes: [6 x 6 in]\ngrid: 1/8 in'))
  expect(resizeLesson(text, { grid: inches(1, 8) }).text).toBe(text)
  expect(resizeLesson(text, { grid: mm(1) }).text).toBe(text.replace('1/8 in\n---', '1 mm\n---'))
})

describe('its own size, turned', () => {
  test('a card that stands the other way is turned, and one that stands so already is left alone', () => {
    expect(resizeLesson(lesson(), { turned: 'portrait' }).text).toBe(lesson('5 x 7 in'))
    expect(resizeLesson(lesson(), { turned: 'landscape' }).text).toBe(lesson())
    expect(resizeLesson(lesson('6 x 6 in'), { turned: 'portrait' }).text).toBe(lesson('6 x 6 in'))
  })

  test('a standard sheet is written out', () => {
    expect(resizeLesson(lesson('A6'), { turned: 'landscape' }).text).toBe(lesson('148 x 105 mm'))
  })

  test('a size that is worked out cannot be turned', () => {
    const worked = lesson('leg x 5 in')
    const { text, findings } = resizeLesson(worked, { turned: 'landscape' })
    expect(text).toBe(worked)
    expect(findings.filter((f) => f.rule === 'cannot-turn').map((f) => f.place?.line)).toEqual([11])
  })
})

describe('what cannot be changed is told', () => {
  const closed = readSize('6 x 6 in')
  test('a size that is worked out', () => {
    const worked = lesson('leg x 5 in')
    const { text: same, findings } = resizeLesson(worked, { closed })
    expect(same).toBe(worked)
    expect(findings.filter((f) => f.rule === 'cannot-resize').map((f) => f.place?.line)).toEqual([11])
  })

  test('no size, and no card', () => {
    expect(rules(lesson().replace(/closed:.*\n/, ''), { closed })).toContain('missing-key')
    expect(rules('---\ntitle: a\n---\n\n1. Text\n', { closed })).toEqual(['no-card', 'cannot-resize'])
  })

  test('a size that does not work', () => {
    const { text, findings } = resizeLesson(lesson(), { closed: readSize('1/8 x 6 in') })
    expect(text).toBe(lesson('1/8 x 6 in'))
    expect(findings.some((f) => f.severity === 'error')).toBe(true)
  })
})

test('of several cards the one named `card`, or the first, has the new size', () => {
  const two = `${lesson()}\n\`\`\`card tag\nfold: side\nclosed: 2 x 3 in\n\`\`\`\n`
  const { text, findings } = resizeLesson(two, { closed: readSize('6 x 6 in') })
  expect(text).toBe(two.replace('7 x 5 in', '6 x 6 in'))
  expect(findings.filter((f) => f.severity === 'hint').map((f) => [f.rule, f.place?.line])).toEqual([
    ['other-card', 18],
  ])
})

const length = fc.oneof(
  fc.integer({ min: 1, max: 960 }).map((n) => inches(n, 64)),
  fc.integer({ min: 1, max: 800 }).map((n) => mm(n / 2)),
  fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 97 })).map(([n, d]) => inches(n, d)),
)

test('whatever size is wished, the lesson has exactly that size, and wishing it again changes nothing', () => {
  const likes = ['7 x 5 in', '7x5in', '178 × 127 mm', '17 x 12 cm', 'A6', '\'7" x 5"\'']
  fc.assert(
    fc.property(length, length, fc.constantFrom(...likes), (width, height, like) => {
      const closed: Size = { width, height }
      const { text } = resizeLesson(lesson(like), { closed })
      const written = /closed: {3}(.*?) {3}#/.exec(text)?.[1]?.replaceAll(/^'|'$/g, '') ?? ''
      const size = readSize(written)
      expect([written, same(size.width, width), same(size.height, height)]).toEqual([written, true, true])
      expect(text.replace(/closed:.*\n/, '')).toBe(lesson(like).replace(/closed:.*\n/, ''))
      expect(resizeLesson(text, { closed }).text).toBe(text)
      expect(readLesson(text).cards).toHaveLength(1)
    }),
    { numRuns: 60 },
  )
})
