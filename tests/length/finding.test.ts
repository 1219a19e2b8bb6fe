import { expect, test } from 'vitest'
import { suggestWord } from '../../src/length/finding.ts'

const folds = [
  'side',
  'gate',
  'double gate',
  'z',
  'joy',
  'v-fold',
  'box step',
  'side step',
  'box card',
  'match box',
]

test.each([
  ['a slip of the pen', 'boxstep', 'Write `box step`'],
  ['a slip before a longer name', 'gat', 'Write `gate`'],
  ['one word of several names', 'box', 'Choose one of `box step`, `box card` or `match box`'],
  ['one word of one name', 'double', 'Write `double gate`'],
  ['words in another order', 'card-box', 'Write `box card`'],
  ['letters in another size', 'MATCH Bux', 'Write `match box`'],
  ['a name and more', 'gatefold', 'Write `gate`'],
  ['the longest name and more', 'side steps card', 'Write `side step`'],
])('%s leads to the names that may be meant', (_, word, told) => {
  expect(suggestWord(word, folds)).toBe(told)
})

test('what is like no name leads to all of them, and to none where there are none', () => {
  expect(suggestWord('lighthouse', ['gate', 'z'])).toBe('Choose one of `gate` or `z`')
  expect(suggestWord('x', ['gate', 'z'])).toBe('Choose one of `gate` or `z`')
  expect(suggestWord('', ['gate', 'joint'])).toBe('Choose one of `gate` or `joint`')
  expect(suggestWord('gate', [])).toBe('Take it out')
})
