import { expect, test } from 'vitest'
import { measuresShape } from '../workshop/contract.ts'
import { broken, harbour, small } from './lessons.ts'
import { foldlore } from './memory.ts'

const files = { 'harbour.md': harbour, 'small.md': small, 'broken.md': broken }
const json = async (...argv: string[]) => {
  const { code, out, err } = await foldlore(['measure', 'harbour.md', '--json', ...argv], files)
  expect([code, err]).toEqual([0, ''])
  return measuresShape.parse(JSON.parse(out))
}

// Worked by hand, no source: floor 7 - 3/4 - 3/4 = 5 1/2, base 5 1/2 + 4 · 3/4 = 8 1/2; scores after the left tab,
// the left leg, the floor and the right leg. A mountain is scored on the face, a valley on the back. Seven letters of
// 5/8 on a 7 in wall with 1/4 margins: 6 1/2 - 35/8 = 17/8 over 6 gaps is 17/48, on the ruler 5/16.
test('--json has the promised shape and the hand-worked base of the example', async () => {
  const { lesson, units, grid, cards } = await json()
  expect([lesson, units, grid]).toEqual(['Harbour lights', 'in', '1/16 in'])
  const base = cards[0]?.pieces[0]
  expect([base?.name, base?.stock, base?.count, base?.width.text, base?.height.text]).toEqual([
    'base',
    'dark blue card',
    1,
    '8 1/2 in',
    '5 in',
  ])
  expect(base?.scores.map((s) => [s.at.text, s.along, s.from.in, s.to.in, s.fold, s.side])).toEqual([
    ['3/4 in', 'width', 0, 5, 'mountain', 'face'],
    ['1 1/2 in', 'width', 0, 5, 'valley', 'back'],
    ['7 in', 'width', 0, 5, 'valley', 'back'],
    ['7 3/4 in', 'width', 0, 5, 'mountain', 'face'],
  ])
  expect(cards[0]?.closed).toMatchObject({ width: { in: 7 }, height: { in: 5 } })
  expect(cards[0]?.standing).toMatchObject({
    width: { text: '7 in' },
    height: { text: '5 in' },
    depth: { text: '3/4 in' },
  })
  // Floor, legs and span are a ring of four creases: a parallelogram, which one angle decides.
  expect(cards[0]?.freedom).toBe(1)
})

test('the terminal shows the same numbers in columns', async () => {
  const { code, out, err } = await foldlore(['measure', 'harbour.md', '--quiet'], files)
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^Harbour lights\nEvery measure is on a ruler of 1\/16 in\.\n\nThe card\n/)
  expect(out).toMatch(/\n {2}shut +7 × 5 in\n/)
  expect(out).toMatch(/\n {2}how it moves +moves as one: one crease leads the others\n/)
  expect(out).toMatch(/\n {2}base +1 {2}8 1\/2 × 5 in +dark blue card\n/)
  expect(out).toMatch(/\n {2}base +3\/4 in +the left edge +right across +mountain +the inside\n/)
  expect(out).toMatch(/\n {2}base +1 1\/2 in +the left edge +right across +valley +the outside\n/)
  expect(out).toMatch(/\n {2}name +sea wall +5\/16 in +3\/8, 1 5\/16, .* and 6 in\n/)
  expect(out).toMatch(/\nEnvelope\n/)
})

test('--closed, --units and --grid give another card, proven again', async () => {
  const a6 = await json('--closed', 'A6 landscape')
  expect(a6.cards[0]?.closed.width.text).toBe('5 13/16 in')
  const metric = await json('--units', 'mm')
  expect([metric.units, metric.grid, metric.cards[0]?.closed.width.text]).toEqual(['mm', '1 mm', '177 mm'])
  const coarse = await json('--grid', '1/8 in')
  expect(coarse.grid).toBe('1/8 in')
  expect(coarse.cards[0]?.pieces.find((p) => p.name === 'backdrop')?.width.text).toBe('5 1/4 in')
})

test('a lesson with errors: they are told, no table, exit code 1; JSON answers all the same', async () => {
  const text = await foldlore(['measure', 'broken.md'], files)
  expect([text.code, text.out]).toEqual([1, ''])
  expect(text.err).toMatch(/^broken\.md:27:\d+ error .* \(unknown-name\)\n/)
  const { code, out, err } = await foldlore(['measure', 'broken.md', '--json'], files)
  expect([code, err]).toEqual([1, ''])
  expect(measuresShape.parse(JSON.parse(out)).findings.map((f) => f.line)).toEqual([27, 29])
})

test('-o writes the answer to a file, --quiet does not say so, and only --force overwrites', async () => {
  const first = await foldlore(['measure', 'small.md', '-o', 'm.txt'], files)
  expect([first.code, first.out, first.err]).toEqual([0, '', 'Wrote m.txt\n'])
  expect(first.text('m.txt')).toContain('Low tide\n')
  const taken = { ...files, 'm.txt': 'mine' }
  const refused = await foldlore(['measure', 'small.md', '-o', 'm.txt'], taken)
  expect([refused.code, refused.text('m.txt')]).toEqual([2, 'mine'])
  expect(refused.err).toContain('--force')
  const forced = await foldlore(['measure', 'small.md', '-o', 'm.txt', '--force', '--quiet'], taken)
  expect([forced.code, forced.err, forced.text('m.txt') === first.text('m.txt')]).toEqual([0, '', true])
})

test('a lesson that is not there: exit code 3', async () => {
  const { code, out, err } = await foldlore(['measure', 'none.md'], files)
  expect([code, out, err]).toEqual([
    3,
    '',
    'foldlore: Cannot read `none.md`: there is no such file\n  Check the folder and the name\n',
  ])
})
