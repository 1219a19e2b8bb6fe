import { expect, test } from 'vitest'
import { minutesIn } from '../../src/lesson/minutes-in.ts'

test.each([
  ['90', 90],
  ['90 min', 90],
  ['90 minutes', 90],
  ['2 h', 120],
  ['2h', 120],
  ['2 hours', 120],
  ['1.5 h', 90],
  ['1 1/2 hours', 90],
  ['1½ h', 90],
  ['½ h', 30],
  ['1 h 30', 90],
  ['1 hour and 15 min', 75],
  ['24 h', 1440],
])('%s is %d minutes', (text, minutes) => expect(minutesIn(text)).toBe(minutes))

test.each(['', 'long', '2 days', '25 h', '1/0 h', '-5 min', '1 min 2 h', '9'.repeat(400)])(
  '%j is no time',
  (text) => expect(minutesIn(text)).toBeUndefined(),
)
