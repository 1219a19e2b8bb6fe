import { describe, expect, test } from 'vitest'
import { letterPosts } from '../../src/card/post/countries.ts'
import { classify, type Miss } from '../../src/card/post/rules.ts'
import { missWords } from '../../src/card/post/words.ts'
import { inches, type Length, mm, numberIn, type Unit } from '../../src/length/length.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import data from '../data/postal-limits.json' with { type: 'json' }
import { cardOf, measure } from './block.ts'

const posts = new Map(letterPosts.map((post) => [post.key, post]))
const keys: Record<string, string> = { US: 'us', UK: 'uk', CA: 'canada', DE: 'germany' }

/** The words of the data for what the program calls otherwise. */
const words: Record<string, string> = {
  'letter, machinable': 'machinable letter',
  'letter, nonmachinable': 'nonmachinable letter',
  nonmailable: 'too small to post',
  standard: 'standard letter',
  oversize: 'oversize letter',
}

const classed = (key: string, long: Length, high: Length, thick: Length) => {
  const post = posts.get(key)
  if (!post) throw new Error(key)
  const found = classify(post, { long, high, thick })
  return { ...found, why: said(found.why, post.unit) }
}

/** Why something is not what it would be, in words. */
const said = (why: readonly Miss[], unit: Unit) => why.map((miss) => missWords(miss, wordingOf('en', unit)))

test.each(data.cases)(
  '$id: $expect',
  ({ country, length, height, width, thickness, unit, expect: expected }) => {
    const [long, high, thick] = [length, height ?? width ?? 0, thickness].map((n) =>
      unit === 'in' ? inches(n) : mm(n),
    )
    if (!long || !high || !thick) throw new Error('a case without a size')
    expect(classed(keys[country] ?? '', long, high, thick).name).toBe(words[expected] ?? expected)
  },
)

/** The limits of the data, each against those of the program: the same, and a hair more is out. */
describe('limits', () => {
  const hair = mm(0.01)
  const more = (x: Length) => mm(x.add(hair))
  const less = (x: Length) => mm(x.sub(hair))

  test.each([
    ['us', inches(11.5), inches(6.125), inches(0.25), 'machinable letter', 'us-letter-max'],
    ['uk', mm(240), mm(165), mm(5), 'letter', 'uk-letter-max'],
    ['uk', mm(353), mm(250), mm(25), 'large letter', 'uk-large-letter-max'],
    ['canada', mm(245), mm(156), mm(5), 'standard letter', 'ca-standard-max'],
    ['canada', mm(380), mm(270), mm(20), 'oversize letter', 'ca-oversize-max'],
    ['germany', mm(235), mm(125), mm(5), 'Standardbrief', 'de-standardbrief'],
    ['germany', mm(235), mm(125), mm(10), 'Kompaktbrief', 'de-kompaktbrief'],
    ['germany', mm(353), mm(250), mm(20), 'Großbrief', 'de-grossbrief'],
    ['abroad', mm(237), mm(122), mm(5), 'standardized letter', 'upu-standardized'],
  ] as const)(
    '%s takes %s × %s × %s as a %s (%s), and nothing larger',
    (key, long, high, thick, name, id) => {
      expect(classed(key, long, high, thick).name).toBe(name)
      expect(classed(key, more(long), high, thick).name).not.toBe(name)
      expect(classed(key, long, more(high), thick).name).not.toBe(name)
      expect(classed(key, long, high, more(thick)).name).not.toBe(name)
      const all = [data.us, data.uk, data.canada, data.germany, data.upu].flat()
      const numbers = JSON.stringify(all.find((one) => one.id === id)).match(/[\d.]+/g) ?? []
      const unit = key === 'us' ? 'in' : 'mm'
      const published = [long, high].map((x) => numberIn(x, unit) - (key === 'abroad' ? 2 : 0))
      expect(numbers).toEqual(expect.arrayContaining([...published, numberIn(thick, unit)].map(String)))
    },
  )

  test.each([
    ['us', inches(5), inches(3.5), 'machinable letter', 'too small to post'],
    ['canada', mm(140), mm(90), 'standard letter', 'too small to post'],
    ['germany', mm(140), mm(90), 'Standardbrief', 'Kompaktbrief'],
    ['germany', mm(100), mm(70), 'Kompaktbrief', 'too small for a letter'],
    ['abroad', mm(138), mm(88), 'standardized letter', 'too small for a letter'],
  ] as const)('%s takes %s × %s as a %s, and what is smaller is %s', (key, long, high, name, below) => {
    expect(classed(key, long, high, mm(1)).name).toBe(name)
    expect(classed(key, less(long), high, mm(1)).name).toBe(below)
    expect(classed(key, long, less(high), mm(1)).name).toBe(below)
  })

  test('a letter abroad: 900 mm altogether and 600 mm one way, 2 mm more or less', () => {
    expect(classed('abroad', mm(602), mm(290), mm(10)).name).toBe('letter')
    expect(classed('abroad', mm(602), mm(290), mm(11)).name).toBe('larger than a letter')
    expect(classed('abroad', mm(603), mm(90), mm(1)).name).toBe('larger than a letter')
  })

  test('how long a letter is for its height', () => {
    expect(classed('us', inches(8.75), inches(3.5), inches(0.02)).why).toEqual([])
    expect(classed('us', inches(8.8125), inches(3.5), inches(0.02)).why).toEqual([
      '2.52 times as long as high, at most 2.5',
    ])
    expect(classed('us', inches(6.4375), inches(5), inches(0.02)).why).toEqual([
      'only 1.28 times as long as high, at least 1.3',
    ])
    expect(classed('germany', mm(174), mm(125), mm(2)).why).toEqual([
      'only 1.39 times as long as high, at least 1.4',
    ])
    expect(classed('germany', mm(125), mm(125), mm(2)).name).toBe('Großbrief')
  })

  test('too thin: everywhere in the US, in Canada, and when large', () => {
    expect(classed('us', inches(5), inches(3.5), inches(6, 1000)).why).toEqual([
      '0.006 in thick, at least 0.007 in',
    ])
    expect(classed('canada', mm(140), mm(90), mm(0.17)).why).toEqual(['0.1 mm thick, at least 0.18 mm'])
    const large = classed('us', inches(7), inches(5), inches(8, 1000))
    expect([large.name, large.why]).toEqual([
      'nonmachinable letter',
      ['thinner than 0.009 in, too thin for its size'],
    ])
  })
})

describe('what a lesson says', () => {
  const card = (closed: string, thick: Length, rest = '') =>
    cardOf(`fold: side\nclosed: ${closed}\n${rest}`, { thickness: () => thick })

  // An A6 card goes into C6, 162 × 114, or the US A6, 6 1/2 × 4 3/4 in = 165.1 × 120.65 mm.
  test('one country, with the class, the weight that it allows, and the date of the figures', () => {
    const a6 = card('A6', mm(1))
    expect(measure(a6, 'card.posts.uk')).toBe(
      'letter, up to 100 g (figures: read in November 2026; ask the carrier)',
    )
    expect(measure(a6, 'card.posts.germany')).toBe(
      'Standardbrief, up to 20 g (figures: February 2025; ask the carrier)',
    )
    expect(measure(a6, 'card.posts')).toBe(
      'US: machinable letter, UK: letter, Canada: standard letter, Germany: Standardbrief and abroad (UPU): standardized letter (figures: 2010 to 2026; ask the carrier)',
    )
  })

  // 5 sheets of envelope paper of 0.15 mm: 4.5 + 0.75 mm, told upwards.
  test('why it is not a letter: too thick', () => {
    expect(measure(card('7 x 5 in', mm(4.5)), 'card.posts.uk')).toMatch(
      /^large letter \(5\.3 mm thick, at most 5 mm\), up to 750 g/,
    )
  })

  test('why it is not machinable: a square', () => {
    expect(measure(card('5 x 5 in', mm(1), 'envelope: diagonal'), 'card.posts.us')).toMatch(
      /^nonmachinable letter \(square, at least 1\.3 times as long as high\), up to 3 1\/2 oz/,
    )
  })

  test('below the least: a small card in an envelope of its own', () => {
    expect(measure(card('A7', mm(1), 'envelope: diagonal'), 'card.posts.canada')).toMatch(
      /^too small to post \(\d+ mm long, at least 140 mm; \d+ mm high, at least 90 mm\) \(figures: 2022/,
    )
  })

  test('a box goes as a parcel; what it is put in makes it larger, so it is never too small or too square', () => {
    const said = (thick: Length) =>
      ['us', 'uk', 'canada', 'germany'].map((key) => measure(card('4 x 4 in', thick), `card.posts.${key}`))
    expect(said(inches(4)).map((text) => text.replace(/ \(figures.*/, ''))).toEqual([
      'flat or larger (4 in thick, at most 1/4 in)',
      'parcel (101.6 mm thick, at most 5 mm)',
      'larger than a letter (101.6 mm thick, at most 5 mm)',
      'larger than a Großbrief (101.6 mm thick, at most 5 mm)',
    ])
  })

  // 500 + 300 + 250 mm.
  test('a large box is no letter abroad either', () => {
    const box = card('500 x 300 mm', mm(250))
    expect(classed('abroad', mm(500), mm(300), mm(250)).name).toBe('larger than a letter')
    expect(measure(box, 'card.posts.abroad')).toMatch(/^larger than a letter \(/)
  })

  test('what is not a letter abroad is told with its sum', () => {
    const post = posts.get('abroad')
    const letters = post?.classes[1]
    if (!post || !letters) throw new Error('no class for letters abroad')
    expect(
      said(
        classify({ ...post, classes: [letters] }, { long: mm(500), high: mm(300), thick: mm(103) }).why,
        'mm',
      ),
    ).toEqual(['903 mm long, high and thick together, at most 900 mm'])
  })
})
