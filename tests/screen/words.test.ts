import { expect, test } from 'vitest'
import { screenWords } from '../../src/publish/screen/words.ts'
import { wishOf } from '../../src/screen/keys.ts'
import { countText, lessonTime, minutesText, stepTime } from '../../src/screen/words.ts'
import { wordingOf } from '../../src/wording/wording.ts'

const words = screenWords(wordingOf('en', 'in'))

test('times as a clock counts them and as they are said', () => {
  expect([0, 1, 1000, 61_000, 600_000, 3_727_000].map(countText)).toEqual([
    '0:00',
    '0:01',
    '0:01',
    '1:01',
    '10:00',
    '1:02:07',
  ])
  expect([0, 1, 60_000, 3_600_000, 3_900_000].map((time) => minutesText(time, words))).toEqual([
    '0\u00a0min',
    '1\u00a0min',
    '1\u00a0min',
    '1\u00a0h',
    '1\u00a0h\u00a05\u00a0min',
  ])
})

test('what is left of a step, what is over, or how long it has taken', () => {
  expect([187_000, 0, -45_000, undefined].map((left) => stepTime(left, 65_000, words))).toEqual([
    '3:07 left',
    '0:00 left',
    '0:45 over',
    '1:05 at this step',
  ])
  expect([lessonTime(119_000, 60_001, words), lessonTime(60_000, undefined, words)]).toEqual([
    '1\u00a0min gone, 2\u00a0min to go',
    '1\u00a0min gone',
  ])
})

test('the keys of clickers, and none that the browser wants for itself', () => {
  const press = (key: string, more = {}) =>
    wishOf({ key, shiftKey: false, ctrlKey: false, altKey: false, metaKey: false, ...more })
  expect(['PageDown', 'PageUp', '.', 'b', 'B'].map((key) => press(key))).toEqual([
    'next',
    'back',
    'blank',
    'blank',
    'blank',
  ])
  expect([press(' '), press(' ', { shiftKey: true }), press('+', { shiftKey: true })]).toEqual([
    'next',
    'back',
    'more',
  ])
  expect([
    press('p', { ctrlKey: true }),
    press('ArrowLeft', { altKey: true }),
    press('F5'),
    press('Tab'),
  ]).toEqual([undefined, undefined, undefined, undefined])
})
