import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { clockIn, clockText } from '../../../src/workshop/class/clock.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { runSheet } from '../../../src/workshop/class/run-sheet.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'

const lesson = (title: string, minutes: readonly (number | undefined)[]) =>
  fillLesson(
    readLesson(
      `---\ntitle: ${title}\n---\n\n## First\n\n${minutes
        .map((n, i) => `${i + 1}. Do thing ${i + 1}. Then rest.${n === undefined ? '' : ` :minutes[${n}]`}\n`)
        .join('\n')}\n:::ahead\nBoil the kettle.\n:::\n`,
    ),
  )

function sheetOf(text: string, lessons: readonly ReturnType<typeof lesson>[]) {
  const { file, findings } = readClass(text)
  expect(findings).toEqual([])
  return runSheet(
    file,
    file.lessons.map((one, i) => taughtLesson(one, lessons[i] ?? lesson('none', []), file).taught),
  )
}

const slotsIn = (sheet: ReturnType<typeof runSheet>, course = 0) =>
  (sheet.courses[course]?.slots ?? []).map(
    ({ from, minutes, what, step }) => `${clockText(from)} ${minutes} ${step ?? what}`,
  )

describe('a class by the clock', () => {
  test('steps follow one another; welcome and clearing stand at both ends', () => {
    const sheet = sheetOf('people: 4\nlesson: a.md\nstart: 9.30\nwelcome: 5\nclearing: 10 min', [
      lesson('A', [10, 20]),
    ])
    expect(slotsIn(sheet)).toEqual(['09:30 5 welcome', '09:35 10 1', '09:45 20 2', '10:05 10 clearing'])
    expect(clockText(sheet.courses[0]?.finish ?? 0)).toBe('10:15')
  })

  // 10:30 is nearer to 10:25 (the end of step 1) than to 10:45 (that of step 2).
  test('a break comes at the end of the step that is nearest', () => {
    const sheet = sheetOf('people: 4\nlesson: a.md\nstart: 10:00\nbreaks: [{at: 10:30, for: 15 min}]', [
      lesson('A', [25, 20, 5]),
    ])
    expect(slotsIn(sheet)).toEqual(['10:00 25 1', '10:25 15 break', '10:40 20 2', '11:00 5 3'])
  })

  test('a break after the last step is still a break', () => {
    const sheet = sheetOf(
      'people: 4\nlesson: a.md\nstart: 10:00\nbreaks: {at: 10:29, for: 15 min, name: tea}',
      [lesson('A', [30])],
    )
    expect(slotsIn(sheet)).toEqual(['10:00 30 1', '10:30 15 break'])
  })

  test.each([
    ['9:30', 'At 09:30, when `tea` should be, the class has not begun'],
    ['12:00', 'At 12:00, when `tea` should be, the class is over'],
  ])('a break at %s is before or behind the class, and is told with the times it may have', (at, message) => {
    const text = `people: 4\nlesson: a.md\nstart: 10:00\nbreaks: [{at: "${at}", for: 15 min, name: tea}]`
    const found = sheetOf(text, [lesson('A', [30])]).findings.filter(({ rule }) => rule === 'break-outside')
    expect(found.map((one) => [one.message, one.place?.line])).toEqual([[message, 4]])
    expect(found[0]?.suggestion).toMatch(/^Choose a time from 10:00 to /)
  })

  test('it says by how much it is too long', () => {
    const text = 'people: 4\nlesson: a.md\nstart: 10:00\nend: 10:50'
    expect(sheetOf(text, [lesson('A', [30, 30])]).over).toBe(10)
    expect(sheetOf(text, [lesson('A', [30, 20])]).over).toBe(0)
  })

  test('the end follows from how long the lesson says its class is', () => {
    const timed = fillLesson(readLesson('---\ntitle: A\ntime: 1 h\n---\n\n1. Fold. :minutes[70]\n'))
    const sheet = sheetOf('people: 4\nlesson: a.md\nstart: 2 pm', [timed])
    expect([clockText(sheet.end ?? 0), sheet.over]).toEqual(['15:00', 10])
  })

  test('two lessons are made one after the other, and side by side by two groups', () => {
    const both = [lesson('A', [10]), lesson('B', [20])]
    const after = sheetOf('people: 6\nstart: 10:00\nlessons: [a.md, b.md]', both)
    expect(after.courses.map((_, i) => slotsIn(after, i))).toEqual([['10:00 10 1', '10:10 20 1']])
    const groups = '[{lesson: a.md, people: 4}, {lesson: b.md, people: 2}]'
    const beside = sheetOf(`people: 6\nstart: 10:00\nlessons: ${groups}`, both)
    expect(beside.courses.map((_, i) => slotsIn(beside, i))).toEqual([['10:00 10 1'], ['10:00 20 1']])
  })

  test('a step is told by its first sentence, and what is done ahead is listed', () => {
    const sheet = sheetOf('people: 4\nlesson: a.md', [lesson('A', [10])])
    expect(sheet.courses[0]?.slots[0]).toMatchObject({ words: 'Do thing 1.', stage: 'First' })
    expect(sheet.ahead).toEqual([{ lesson: 'A', words: 'Boil the kettle.' }])
  })

  test('steps without a time are told: the end would be wrong', () => {
    const { findings } = sheetOf('people: 4\nlesson: a.md', [lesson('A', [10, undefined, undefined])])
    expect(findings).toMatchObject([
      { rule: 'loose-time', message: expect.stringContaining('steps 2 and 3 have no time') },
    ])
  })

  test('whatever the times, nothing overlaps, no minute is lost and every break comes once', () => {
    const minutes = fc.array(fc.integer({ min: 1, max: 60 }), { maxLength: 12 })
    const breaks = fc.array(fc.tuple(fc.integer({ min: 0, max: 1439 }), fc.integer({ min: 1, max: 30 })), {
      maxLength: 4,
    })
    fc.assert(
      fc.property(minutes, breaks, (steps, pauses) => {
        const list = pauses.map(([at, long]) => `{at: ${clockText(at)}, for: ${long} min}`).join(', ')
        const sheet = sheetOf(`people: 4\nlesson: a.md\nstart: 10:00\nbreaks: [${list}]`, [
          lesson('A', steps),
        ])
        const slots = sheet.courses[0]?.slots ?? []
        for (const [i, slot] of slots.entries())
          expect(slot.from).toBe(i === 0 ? 600 : (slots[i - 1]?.from ?? 0) + (slots[i - 1]?.minutes ?? 0))
        // A break is taken, or it is told that the class has not begun or is over.
        const taken = slots.filter(({ what }) => what === 'break').length
        expect(taken + sheet.findings.length).toBe(pauses.length)
        expect(slots.filter(({ what }) => what === 'step').map(({ minutes: m }) => m)).toEqual(steps)
      }),
      { numRuns: 150 },
    )
  })
})

describe('times of day', () => {
  test.each([
    ['10:00', 600],
    ['9.30', 570],
    ['14h15', 855],
    ['2 pm', 840],
    ['12 am', 0],
    ['12:30 p.m.', 750],
    ['7', 420],
  ])('%s', (text, clock) => expect(clockIn(text)).toBe(clock))
  test.each(['25:00', '10:60', 'noon', '', '13 pm', '0 am', '-1:00'])('%j is none', (text) =>
    expect(clockIn(text)).toBeUndefined(),
  )
  test('any is written as it is read', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), (n) => {
        expect(clockIn(clockText(n))).toBe(n)
      }),
    )
  })
})
