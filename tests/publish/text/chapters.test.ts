import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chaptersOf, timeText } from '../../../src/publish/text/chapters.ts'
import { plainLesson } from '../lesson.ts'

const chapters = (...minutes: (number | undefined)[]) =>
  chaptersOf(
    plainLesson(
      minutes
        .map((m, i) => `${i + 1}. Do thing ${i + 1}.${m === undefined ? '' : ` :minutes[${m}]`}`)
        .join('\n'),
    ),
  )

test('a chapter for each step, from 0:00, at the sum of the minutes before it', () => {
  expect(chapters(4, 30, 26.5, 2).map(({ time, name }) => `${time} ${name}`)).toEqual([
    '0:00 Do thing 1',
    '4:00 Do thing 2',
    '34:00 Do thing 3',
    '1:00:30 Do thing 4',
  ])
})

test('without minutes there are none; a step without its own goes with the one before it', () => {
  expect(chapters(undefined, undefined)).toEqual([])
  expect(chapters(undefined, 3, undefined, 2).map(({ time, step }) => [time, step])).toEqual([
    ['0:00', 1],
    ['3:00', 4],
  ])
})

test('what takes the time to dry is not filmed', () => {
  const lesson = plainLesson('1. Glue it. :minutes[2] :drying[30 min]\n2. Fold it. :minutes[3]')
  expect(chaptersOf(lesson).map(({ time }) => time)).toEqual(['0:00', '2:00'])
})

test('chapters begin at 0:00, go on forwards, and none is shorter than ten seconds', () => {
  const minutes = fc.array(fc.option(fc.constantFrom(0.05, 0.1, 0.2, 0.5, 1, 7, 45), { nil: undefined }), {
    minLength: 1,
    maxLength: 12,
  })
  fc.assert(
    fc.property(minutes, (some) => {
      const found = chapters(...some)
      if (some.every((m) => m === undefined)) return found.length === 0
      expect(found[0]?.time).toBe('0:00')
      const starts = [
        ...found.map(({ seconds }) => seconds),
        some.map((m) => (m ?? 0) * 60).reduce((sum, m) => sum + m, 0),
      ]
      const lengths = starts.slice(1).map((at, i) => at - (starts[i] ?? 0))
      // A film as short as that has one chapter, however short it is.
      return found.length === 1 || lengths.every((length) => length >= 9.5)
    }),
  )
})

test('times are written as a film shows them', () => {
  expect([0, 59, 60, 725, 3600, 3930].map(timeText)).toEqual([
    '0:00',
    '0:59',
    '1:00',
    '12:05',
    '1:00:00',
    '1:05:30',
  ])
})
