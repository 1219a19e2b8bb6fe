import { describe, expect, test } from 'vitest'
import { wordingOf } from '../../../src/wording/wording.ts'
import { planClass } from '../../../src/workshop/class/plan-class.ts'
import { prepareClass } from '../../../src/workshop/class/preparation.ts'
import { preparationListing } from '../../../src/workshop/class/preparation-listing.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'
import { harbour } from '../harbour.ts'

const sheets = `sheets:
  dark blue card: 12 x 12 in
`

async function prepared(text: string) {
  const { file, findings } = readClass(`people: 5\nspare: 1\nlesson: a.md\n${sheets}${text}`)
  expect(findings).toEqual([])
  const taught = file.lessons.map((one) => taughtLesson(one, harbour(), file).taught)
  return prepareClass(file, taught, await planClass(file, taught))
}

describe('the evening before', () => {
  test('a stack that is cut together counts once: 3 sheets by twos are 2 stacks', async () => {
    const one = await prepared('')
    const two = await prepared('trimmer: {stack: 2}')
    const [work] = one.cutting
    expect(work?.sheets).toBe(3)
    expect([work?.stacks, two.cutting[0]?.stacks]).toEqual([3, 2])
    expect(two.cutting[0]?.minutes).toBeCloseTo(((work?.minutes ?? 0) * 2) / 3, 9)
    expect(work?.minutes).toBeCloseTo(3 * (work?.cuts ?? 0) * 0.5, 9)
  })
  test('an offcut is told as one', async () => {
    const { cutting } = await prepared('  grey card: {size: 12 x 12 in, offcuts: [7 x 9 in]}\n')
    expect(cutting.map(({ stock, offcut, sheets }) => [stock, offcut, sheets])).toEqual([
      ['dark blue card', false, 3],
      ['grey card', true, 1],
    ])
  })
  test('by default the paper is cut and the guests score', async () => {
    const list = await prepared('')
    expect(list.scoring).toEqual([])
    expect(list.cutting).not.toEqual([])
  })
  // The base of a bridge has four scores, its diagonal envelope four.
  test('scores are counted on every piece of every kit', async () => {
    const { scoring, cutting } = await prepared('prepare: {do: score, minutes: {score: 1/4}}')
    expect(cutting).toEqual([])
    expect(scoring.map(({ piece, count, scores, minutes }) => [piece, count, scores, minutes])).toEqual([
      ['base', 6, 4, 6],
      ['envelope', 6, 4, 6],
    ])
  })
  test('kits are packed one by one, an item at a time', async () => {
    const { packing, minutes } = await prepared('prepare: {do: nothing, minutes: {kit: 2, item: 0.25}}')
    // 9 lines in each kit: 6 kits of 2 + 9/4 minutes are 25.5.
    expect(packing).toEqual([{ lesson: 'Harbour lights', kits: 6, items: 9, minutes: 25.5 }])
    expect(minutes).toBe(25.5)
  })
  test('it says that it is an estimate unless all minutes that it uses are the teacher’s own', async () => {
    const intro = async (text: string) =>
      preparationListing(await prepared(text), wordingOf('en', 'in')).intro
    expect(await intro('')).toMatch(/an estimate with 0\.5 min a cut, 0\.1 min an item, 1 min a kit/)
    expect(await intro('prepare: {minutes: {cut: 1, kit: 1}}')).toContain('an estimate')
    expect(await intro('prepare: {do: nothing, minutes: {item: 0, kit: 2}}')).toBe(
      'About 12 minutes for 6 kits, with the minutes of the class file.',
    )
  })
})

describe('mistakes in what is prepared', () => {
  const told = (text: string) =>
    readClass(`people: 5\nlesson: a.md\n${text}`).findings.map(({ message, suggestion, place }) => [
      place?.line,
      message,
      suggestion,
    ])
  test.each([
    ['prepare: cuts', 'Unexpected `cuts`, expected what is done before the class', /`cut`/],
    ['prepare: [nothing, cut]', 'This is `nothing` and something', /prepare: nothing/],
    ['prepare: {done: cut}', 'Unexpected key `done` in `prepare`', /`do`/],
    ['prepare: {minutes: 3}', /`minutes` wants what takes how long/, /minutes: \{/],
    ['prepare: {minutes: {cuts: 3}}', 'Unexpected key `cuts` in the minutes', /`cut`/],
    ['prepare: {minutes: {cut: soon}}', '`soon` does not say how many minutes', /cut: 0\.5/],
    ['trimmer: {stack: 0}', '`0` is no number of `stack`', /whole number/],
    ['trimmer: 3', /`trimmer` wants keys/, /stack: 3/],
  ])('%s', (text, message, cure) => {
    const [one, ...rest] = told(text)
    expect(rest).toEqual([])
    expect(one?.[0]).toBe(3)
    expect(one?.[1]).toEqual(typeof message === 'string' ? message : expect.stringMatching(message))
    expect(one?.[2]).toMatch(cure)
  })
})
