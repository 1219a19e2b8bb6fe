import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { proveCard } from '../../../src/fold/prove-card.ts'
import { hasErrors } from '../../../src/length/finding.ts'
import { formatSize } from '../../../src/length/format.ts'
import { fitInside } from '../../../src/length/grid.ts'
import { inches, type Length, mm, type Size, times } from '../../../src/length/length.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { candidates } from '../../../src/workshop/fit/candidates.ts'
import { cutFrom } from '../../../src/workshop/fit/cutting/cut-from.ts'
import { fitLesson } from '../../../src/workshop/fit/fit.ts'
import { ownSize } from '../../../src/workshop/fit/own-size.ts'
import { paperPieces } from '../../../src/workshop/fit/paper-pieces.ts'
import type { NamedSize, Question } from '../../../src/workshop/fit/question.ts'
import { trialsOf } from '../../../src/workshop/fit/trial.ts'
import { harbour } from '../../cli/lessons.ts'
import data from '../../data/envelopes.json' with { type: 'json' }
import { mistakesIn } from './cutting-checker.ts'

const folder = fileURLToPath(new URL('../../../lessons/', import.meta.url))
const lessons = readdirSync(folder).filter((name) => name.endsWith('.md'))
const lights = readLesson(harbour)

const inch = (width: number, height: number): NamedSize => ({
  text: `${width} x ${height} in`,
  size: { width: inches(width), height: inches(height) },
})
const ask = (question: Partial<Question>): Question => ({ paper: [], ...question })
const sheet = (size: NamedSize, stock?: string): Question['paper'][number] => ({
  kind: 'sheet',
  sizes: [size],
  ...(stock !== undefined && { stock }),
})
const text = (size: Size | undefined) => size && formatSize(size, 'in')
const quarter = inches(1, 4)

/** A lesson of a card that opens like a book. */
const book = (closed: string, more = '', front = '') =>
  readLesson(
    `---\ntitle: Tide table\nunits: in\n${front}---\n\n\`\`\`card\nfold: side\nclosed: ${closed}\nbase: {stock: white card, weight: 200 gsm}\n${more}\n\`\`\`\n\n1. Fold it.\n`,
  )

/** The sizes there are to try, those worth it, each proven. */
const everySize = (
  lesson: ReturnType<typeof readLesson>,
  question: Question,
  grid: Length,
  worth: (closed: Size) => boolean = () => true,
) =>
  lesson.cards.slice(0, 1).flatMap((main) =>
    candidates(ownSize(main, lesson), question, grid)
      .sizes.filter(worth)
      .map((closed) => {
        const { card, findings } = proveCard(main, { unit: lesson.frontMatter.units, grid, closed })
        return {
          closed,
          good: !hasErrors(findings),
          pieces: paperPieces(card ? [card] : [], false),
          envelope: card?.mailing.fits.find(({ envelope }) => envelope.name === 'C5'),
        }
      }),
  )

/** Whether a card is not larger than a sheet, however it lies. */
const within = (sheet: Size) => (card: Size) =>
  [card, { width: card.height, height: card.width }].some(
    ({ width, height }) => width.lte(sheet.width) && height.lte(sheet.height),
  )
const notSmaller = (than: Size | undefined) => (card: Size) =>
  than === undefined || (card.width.gte(than.width) && card.height.gte(than.height))

describe.each(lessons)('%s', (name) => {
  const lesson = readLesson(readFileSync(folder + name, 'utf8'))
  const { units } = lesson.frontMatter
  // The nests of the box stand in each other on a fine ruler only.
  const grid = units === 'mm' ? mm(4) : name === 'tide-box.md' ? inches(1, 8) : quarter

  test('no larger card comes out of one sheet of each stock, and the cuts can be made', () => {
    const paper = inch(12, 18)
    const { found, next } = fitLesson(lesson, ask({ paper: [sheet(paper)] }), { grid })
    expect(found).toBeDefined()
    const comesOut = (pieces: ReturnType<typeof paperPieces>) =>
      [...new Set(pieces.map(({ stock }) => stock))].every(
        (stock) =>
          cutFrom(
            pieces.filter((p) => p.stock === stock),
            [paper.size],
          ).is === 'cut',
      )
    const larger = (card: Size) => notSmaller(found?.closed)(card) && within(paper.size)(card)
    const good = everySize(lesson, ask({}), grid, larger).filter((one) => one.good && comesOut(one.pieces))
    expect(good.map(({ closed }) => text(closed))).toEqual([text(found?.closed)])
    for (const { supply, layouts } of found?.cutting ?? []) {
      const wanted = good[0]?.pieces.filter(({ stock }) => stock === supply.stock) ?? []
      expect(mistakesIn(layouts, wanted, [paper.size])).toEqual([])
    }
    expect(next?.misses.length).toBeGreaterThan(0)
  })

  test('no larger card goes into a C5 envelope', () => {
    const { found, next } = fitLesson(lesson, ask({ envelope: 'C5' }), { grid })
    // The box is too deep for any.
    expect(found === undefined).toBe(name === 'tide-box.md')
    const c5 = { width: mm(162), height: mm(229) }
    const larger = (card: Size) => notSmaller(found?.closed)(card) && within(c5)(card)
    const good = everySize(lesson, ask({}), grid, larger).filter((one) => one.good && one.envelope)
    expect(good.map(({ closed }) => text(closed))).toEqual(found ? [text(found.closed)] : [])
    if (found) expect(next?.misses.length).toBeGreaterThan(0)
  })

  test('a draft has the pieces of the proven card, but for the envelope', () => {
    const trialAt = trialsOf(lesson, units, grid)
    for (const width of [3, 5.5, 8]) {
      const trial = trialAt({ width: inches(width), height: inches(width - 0.5) })
      const draft = trial.draft()
      if (!draft || draft.errors.length > 0) continue
      expect(draft.pieces).toEqual(trial.proven().pieces.filter(({ name }) => name !== 'envelope'))
    }
  })
})

// Published inserts with their sources: a thin card in the proportions of the insert grows until it is the insert.
const published = data.envelopes.filter((e) => e.inside_w !== undefined && e.unit === 'in')
test.each(published)('the largest card for $id is its published insert', ({ id, inside_w, inside_h }) => {
  const insert = { width: inches(inside_w ?? 0), height: inches(inside_h ?? 0) }
  const grid = inches(1, 8)
  const lesson = book(formatSize(insert, 'in').replace('×', 'x'))
  const { found, next } = fitLesson(
    lesson,
    ask({ envelope: `${id.replace(/ envelope$| \(Slimline\)$/, '')} US` }),
    { grid },
  )
  expect(text(found?.closed)).toBe(
    text({ width: fitInside(insert.width, grid), height: fitInside(insert.height, grid) }),
  )
  expect(next?.misses.map(({ limit }) => limit)).toEqual(['envelope'])
})

test('the thickness of the card counts: a thick one must be smaller, and is told why', () => {
  const thick = 'layers:\n  block: {on: front, border: 1 in, raise: 1/2 in, stock: board}'
  const flat = fitLesson(book('5 x 7 in'), ask({ envelope: 'A7' }))
  const raised = fitLesson(book('5 x 7 in', thick), ask({ envelope: 'A7' }))
  expect(text(flat.found?.closed)).toBe('5 × 7 in')
  expect(raised.found?.closed.width.lt(inches(5))).toBe(true)
  // The rule: the envelope's own size leaves twice the thickness each way.
  const { closed, thickness } = raised.found ?? {}
  const { closed: larger } = raised.next ?? {}
  const holds = (size: Size | undefined) =>
    size?.width.add(thickness?.mul(2) ?? 0).lte(inches(21, 4)) &&
    size.height.add(thickness?.mul(2) ?? 0).lte(inches(29, 4))
  expect([holds(closed), holds(larger)]).toEqual([true, false])
  expect(raised.next?.misses[0]?.message).toContain('thick when shut')
})

// Worked by hand, on a ruler of 1/4 in: the backdrop is the closed width less two legs of 3/4 in and two borders of 1/4 in,
// and as high as the card: 8 × 6 in for a square of 6 in. In proportions of 7 to 5 a width of 8 in has a height of 5 3/4.
test('a square is used whole by the backdrop, in the shape that does', () => {
  const { found, otherShape, asked, next } = fitLesson(lights, ask({ whole: inch(6, 6) }), { grid: quarter })
  expect(asked.whole?.piece).toBe('backdrop')
  expect([text(found?.closed), text(found?.use?.piece)]).toEqual(['8 × 5 3/4 in', '6 × 5 3/4 in'])
  expect([found?.use?.beside.equals(0), found?.use?.above.equals(quarter)]).toEqual([true, true])
  expect(text(otherShape?.closed)).toBe('8 × 6 in')
  expect(otherShape?.use).toMatchObject({ whole: true, share: 1 })
  expect(next?.misses.map(({ limit }) => limit)).toEqual(['whole'])
})

test('a sheet of the right proportions is used whole at once', () => {
  const { found, otherShape } = fitLesson(
    book('5 x 7 in', 'layers:\n  mat: {on: front, border: 0 in, stock: patterned paper}'),
    ask({ whole: inch(10, 14) }),
  )
  expect([text(found?.closed), found?.use?.whole, otherShape]).toEqual(['10 × 14 in', true, undefined])
})

// By hand, on a ruler of 1/4 in: seven letters, of 5/8 in and so 3/4 in, and two margins of 1/4 in take 5 3/4 in.
test('the smallest card that the lettering fits is as wide as the letters and the margins', () => {
  const { ranges } = fitLesson(lights, ask({ lettering: true, high: inches(4) }), { grid: quarter })
  expect(ranges.map(({ from, to }) => [text(from), text(to)])).toEqual([['5 3/4 × 4 in', '24 × 4 in']])
  expect(ranges[0]?.below?.misses.map(({ limit }) => limit)).toContain('lettering')
})

// The border is negative, which is an error, between 5 and 8 in of width, and from 10 in on it eats the layer up.
const gapped = book(
  '5 x 7 in',
  'layers:\n  mat: {on: front, border: {sides: (closed.width - 5 in) * ((closed.width - 8 in) / (4 in))}, stock: patterned paper}\nlettering:\n  sign: {on: mat, letters: SEA, widths: 1/2 in}',
)

test('sizes with a gap are two ranges, the same as trying each', () => {
  const grid = inches(1, 4)
  const question = ask({ lettering: true, high: inches(5) })
  const { ranges, found } = fitLesson(gapped, question, { grid })
  const good = everySize(gapped, question, grid).filter((one) => one.good)
  const listed = ranges.flatMap(({ from, to }) => {
    const widths: string[] = []
    for (let w = from.width; w.lte(to.width); w = w.add(grid) as Length) widths.push(w.toFraction())
    return widths
  })
  expect(listed).toEqual(good.map(({ closed }) => closed.width.toFraction()))
  expect(ranges.length).toBeGreaterThan(1)
  // The largest lies above the gap, where a search that stops at the first size that fails would not look.
  expect(text(fitLesson(gapped, ask({ envelope: 'C4', high: inches(5) }), { grid }).found?.closed)).toBe(
    text(found?.closed),
  )
})

test('questions combine: the largest card does all that is asked', () => {
  const question = ask({ envelope: 'A7', paper: [sheet(inch(6, 12), 'dark blue card')], lettering: true })
  const { found, next } = fitLesson(lights, question, { grid: quarter })
  const one = (q: Partial<Question>) => fitLesson(lights, ask(q), { grid: quarter }).found?.closed.width
  const each = [one({ envelope: 'A7' }), one({ paper: question.paper })]
  expect(found?.closed.width.toFraction()).toBe(
    each.reduce((a, b) => (a && b && a.lt(b) ? a : b))?.toFraction(),
  )
  expect(next?.misses.length).toBeGreaterThan(0)
})

test('a metric ruler gives a metric card', () => {
  const { found, unit } = fitLesson(lights, ask({ envelope: 'C6' }), { units: 'mm' })
  // C6 is 114 × 162 mm and keeps 7 mm free each way: 107 × 155, in the proportions of 7 × 5 in 150 × 107.
  expect([unit, found && formatSize(found.closed, 'mm')]).toEqual(['mm', '150 × 107 mm'])
})

test('one sheet is of each stock, unless a stock is named, and everything is all of them', () => {
  const { asked } = fitLesson(lights, ask({ paper: [sheet(inch(12, 12), 'vellum')] }), { grid: quarter })
  expect(asked.supplies.map(({ stock }) => stock)).toEqual(['vellum'])
  const all = fitLesson(lights, ask({ paper: [sheet(inch(24, 24), 'everything')] }), { grid: quarter })
  const names = all.found?.cutting.flatMap(({ layouts }) =>
    layouts.flatMap(({ placed }) => placed.map((p) => p.name)),
  )
  expect(names?.sort()).toEqual(
    ['backdrop', 'base', 'beam', 'envelope', 'lighthouse', 'sea wall', 'side strip', 'side strip'].sort(),
  )
})

test('nothing fits: the smallest card that can be made is told, and what it would need', () => {
  const { found, nearest } = fitLesson(lights, ask({ paper: [sheet(inch(2, 2), 'vellum')] }), {
    grid: quarter,
  })
  expect(found).toBeUndefined()
  expect(text(nearest?.closed)).toBe('5 3/4 × 4 in')
  expect(nearest?.misses[0]?.message).toContain('`beam` would be 5 3/4 × 2 in')
  const narrow = fitLesson(lights, ask({ lettering: true, wide: inches(4) }), { grid: quarter })
  expect(narrow.nearest?.misses.map(({ limit }) => limit)).toContain('lettering')
  const box = readLesson(readFileSync(`${folder}tide-box.md`, 'utf8'))
  expect(fitLesson(box, ask({ envelope: 'C7' })).nearest?.misses[0]?.message).toContain('it is a box')
})

test.each([
  [
    'a stock it has not',
    { paper: [sheet(inch(2, 2), 'velum')] },
    'nothing of stock `velum`',
    'Write `vellum`',
  ],
  [
    'scraps of no stock',
    { paper: [{ ...sheet(inch(2, 2)), kind: 'scraps' as const }] },
    'which of them the scraps are',
    '--stock',
  ],
  ['an envelope nobody knows', { envelope: 'B52' }, 'Unexpected envelope `B52`', 'B5'],
  ['an envelope of no size', { envelope: '1/4 x 2 in' }, 'too small for an envelope', 'C6'],
  ['a piece it has not', { whole: inch(6, 6), piece: 'bakdrop' }, 'no piece `bakdrop`', 'Write `backdrop`'],
  [
    'both sides',
    { wide: inches(5), high: inches(5), envelope: 'C6' },
    'leave nothing to look for',
    'one of them',
  ],
  ['a side too long', { wide: inches(30), envelope: 'C6' }, 'not from 1 in to 24 in', '--wide'],
])('a question that cannot be asked: %s', (_, question, message, suggestion) => {
  expect(() => fitLesson(lights, ask(question), { grid: quarter })).toThrow(
    expect.objectContaining({
      message: expect.stringContaining(message),
      suggestion: expect.stringContaining(suggestion),
    }),
  )
})

test('a lesson without lettering, a ruler too fine, two pieces that could be meant', () => {
  expect(() => fitLesson(book('5 x 7 in'), ask({ lettering: true }))).toThrow('no lettering')
  expect(() => fitLesson(lights, ask({ envelope: 'C6' }), { grid: mm(0.01) })).toThrow(
    'cannot be gone through',
  )
  const gate = readLesson(readFileSync(`${folder}beach-hut-doors.md`, 'utf8'))
  expect(() => fitLesson(gate, ask({ whole: inch(6, 6) }))).toThrow('It is not said which piece')
})

test.each([
  ['A7', 'A7 (US trade)', 5.25],
  ['a7 envelope', 'A7 (US trade)', 5.25],
  ['A7 US', 'A7 (US trade)', 5.25],
  ['5 1/4 x 7 1/4 in', 'A7 (US trade)', 5.25],
  ['7 1/4 x 5 1/4 in', 'A7 (US trade)', 5.25],
  ['A7 sheet', 'A7 sheet', 74 / 25.4],
  ['A7 ISO', 'A7 ISO', 74 / 25.4],
  ['C6', 'C6 (ISO 269)', 114 / 25.4],
  ['DL', 'DL (ISO 269)', 110 / 25.4],
  ['#10', '#10 (US trade)', 4.125],
  ['120 x 170 mm', '120 x 170 mm', 120 / 25.4],
])('the envelope %s is %s', (wanted, name, side) => {
  const { asked } = fitLesson(book('3 x 5 in'), ask({ envelope: wanted }), { grid: times(quarter, 2) })
  expect(asked.envelope?.name).toBe(name)
  expect(asked.envelope?.size.width.div(127).mul(5).valueOf()).toBeCloseTo(side, 9)
})
