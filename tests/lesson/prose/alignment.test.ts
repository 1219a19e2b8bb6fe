import { describe, expect, test } from 'vitest'
import { alignment } from '../../../src/lesson/prose/alignment.ts'

describe('where each character of a text stands in the file', () => {
  test.each([
    ['plain', 'plain', [0, 1, 2, 3, 4, 5]],
    ['a\\*b', 'a*b', [0, 1, 3, 4]],
    ['a\\b', 'a\\b', [0, 1, 2, 3]],
    ['5&nbsp;in', '5\u00a0in', [0, 1, 7, 8, 9]],
    ['&#189;"', '½"', [0, 6, 7]],
    ['&#xBD;"', '½"', [0, 6, 7]],
    ['&#x1F600;.', '😀.', [0, 0, 9, 10]],
    ['one\n   two', 'one\ntwo', [0, 1, 2, 3, 7, 8, 9, 10]],
    ['one\r\n   > two', 'one\ntwo', [0, 1, 2, 3, 10, 11, 12, 13]],
    ['one \ntwo', 'one\ntwo', [0, 1, 2, 3, 5, 6, 7, 8]],
    ['R&D', 'R&D', [0, 1, 2, 3]],
  ])('%j', (raw, value, offsets) => expect(alignment(raw, value)).toEqual(offsets))

  test('texts that do not go together', () => {
    expect(alignment('one', 'two')).toBeUndefined()
    expect(alignment('one', 'one and more')).toBeUndefined()
  })
})
