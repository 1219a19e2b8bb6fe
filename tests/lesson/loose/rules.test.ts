import { describe, expect, test } from 'vitest'
import { readSize } from '../../../src/length/text.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import type { Wishes } from '../../../src/lesson/lesson.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const card = `\`\`\`card
fold: bridge
closed: 7 x 5 in
leg: 3/4 in
layers:
  backdrop: {on: floor, border: {sides: 1/16 in}, stock: patterned paper}
spans:
  sea wall: {height: 1 1/4 in, at: bottom, stock: 2 mm board}
envelope: {make: diagonal, stock: envelope paper}
\`\`\``

const told = (
  body: string,
  {
    front = '',
    wishes = {},
    rule = 'loose-measure',
  }: { front?: string; wishes?: Wishes; rule?: string } = {},
) =>
  fillLesson(
    readLesson(`---\ntitle: Shells\nunits: in\n${front}---\n\n${card}\n\n${body}\n`),
    wishes,
  ).findings.filter((finding) => finding.rule === rule)
const cures = (body: string, more: Parameters<typeof told>[1] = {}) =>
  told(body, more).map(({ suggestion }) => suggestion)

describe('a plain number that a name supplies', () => {
  test.each([
    ['1. Cut the backdrop to 5 3/8 x 5 in.', '{backdrop.size}'],
    ['1. The backdrop is 5⅜″ wide.', '{backdrop.width}'],
    ['1. Score the base at 3/4, 1 1/2, 7 and 7 3/4 in.', '{base.scores}'],
    ['1. Cut the sea wall. It is an inch and a quarter high.', '{sea wall.height}'],
    ['1. Cut the backdrop to 137 × 127 mm.', '{backdrop.size as mm}'],
    ['# The sea wall is 7 x 1 1/4 in', '{sea wall.size}'],
    ['| piece | size |\n|-|-|\n| backdrop | 5 3/8 x 5" |', '{backdrop.size}'],
    [':::tip\nCut the backdrop to 5 3/8 x 5 in.\n:::', '{backdrop.size}'],
    ['1. Stick it.\n\n   ::figure[The sea wall, 7 x 1 1/4 in]{show=flat}', '{sea wall.size}'],
  ])('%j wants %s', (body, measure) => expect(cures(body)).toEqual([`Write \`${measure}\``]))

  test('in a print of another size and unit it is still that of the lesson', () => {
    const wishes = { closed: readSize('A6 landscape'), units: 'mm' } as const
    expect(cures('1. Cut the backdrop to 5 3/8 x 5 in.', { wishes })).toEqual(['Write `{backdrop.size}`'])
  })

  test('it stands where the words are, even over two lines', () => {
    const [finding] = told('1. Cut the backdrop to 5 3/8\n   x 5 in.')
    const text = `---\ntitle: Shells\nunits: in\n---\n\n${card}\n\n1. Cut the backdrop to 5 3/8\n   x 5 in.\n`
    expect(text.slice(finding?.place?.offset, finding?.place?.end)).toBe('5 3/8\n   x 5 in')
    expect([finding?.place?.line, finding?.place?.column]).toEqual([17, 24])
  })
})

describe('a sum that the words ask for is likely, and only where no name by itself has the value', () => {
  test.each([
    ['1. The left leg and the floor side by side are 6 1/4 in wide.', '{left leg.width + floor.width}'],
    ['1. Cut a strip 5 5/8 in long, 1/4 in longer than the backdrop is wide.', '{backdrop.width + 1/4 in}'],
  ])('%s', (body, measure) => expect(cures(body)[0]).toMatch(`Write \`${measure}\` if that is meant`))
  test('not without those words', () => {
    expect(cures('1. The left leg and the floor are 6 1/4 in wide.')[0]).toContain('Write `:meant[6 1/4 in]`')
  })
})

describe('a number that is not what the card needs', () => {
  test.each([
    [
      '1. Cut the backdrop to 5 3/4 x 5 in.',
      '`5 3/4 x 5 in` is not the size of `backdrop`, which is 5 3/8 × 5 in',
      '{backdrop.size}',
    ],
    [
      '1. Cut the sea wall 6 in wide.',
      '`6 in` is not the width of `sea wall`, which is 7 in',
      '{sea wall.width}',
    ],
    [
      '1. Cut the sea wall to 1 1/4 x 7 in.',
      '`1 1/4 x 7 in` is the size of `sea wall` the other way round: it is 7 × 1 1/4 in, width first',
      '{sea wall.size}',
    ],
  ])('%s', (body, message, name) => {
    const [finding] = told(body)
    expect(finding?.message).toBe(message)
    expect(finding?.suggestion).toContain(`Write \`${name}\``)
  })

  test('a sheet to cut it from is none', () => {
    expect(told('1. Cut the backdrop from a 6 x 6 in sheet.').map(({ message }) => message)).toEqual([
      '`6 x 6 in` is a plain number, and the words do not say which piece it is of',
    ])
  })
})

describe('a number that no name supplies', () => {
  test('can be marked as meant', () => {
    expect(cures('1. Drill a 3 mm hole.')[0]).toMatch(/^Write `:meant\[3 mm\]`/)
    expect(told('1. Drill a :meant[3 mm] hole.')).toEqual([])
  })
  test.each([
    'Cut 2 in the same way.',
    'Cut it from the 2 mm board.',
    'Print it on A4 paper.',
    'It is {backdrop.size}.',
    'See `6 in`.',
  ])('%s is none', (words) => expect(told(`1. ${words}`)).toEqual([]))
})

describe('the front matter', () => {
  const front = 'summary: A card of 7 x 5 in, with 2 mm foam.\n'
  test('is told where a number follows the card, with its place', () => {
    const [finding, ...more] = told('1. Fold it.', { front })
    expect(more).toEqual([])
    expect(finding?.message).toMatch(/^`7 x 5 in` is the size of the shut card/)
    expect([finding?.place?.line, finding?.place?.column]).toEqual([4, 20])
  })
})

describe('a time in the words of a step', () => {
  const times = (body: string) => cures(body, { rule: 'loose-time' })
  test.each([
    [
      '1. Wait 30 minutes.',
      'Write `:minutes[30]` if the class waits for it, or `:meant[30 minutes]` if it goes on meanwhile',
    ],
    [
      '1. Wait for 1 1/2 hours.',
      'Write `:minutes[90]` if the class waits for it, or `:meant[1 1/2 hours]` if it goes on meanwhile',
    ],
    [
      '1. Let it dry for half an hour.',
      'Write `:minutes[30]` if the class waits for it, or `:drying[30 min]` if it goes on meanwhile',
    ],
    [
      '1. Give it Twenty-five, no, twenty minutes.',
      'Write `:minutes[20]` if the class waits for it, or `:meant[twenty minutes]` if it goes on meanwhile',
    ],
    [
      '1. Wait 10 min. :minutes[5]',
      'Write `:minutes[10]` if the class waits for it, or `:meant[10 min]` if it goes on meanwhile',
    ],
  ])('%s', (body, cure) => expect(times(body)).toEqual([cure]))
  test.each([
    '1. Wait 5 minutes. :minutes[10]',
    '1. Wait :meant[30 minutes].',
    'Wait 30 minutes.',
    '1. Press it for 30 seconds.',
    '1. Wait a minute. :minutes[2]',
    '1. Fold it.\n\n   :::ahead\n   Let it dry for 30 minutes.\n   :::',
  ])('%j needs none', (body) => expect(times(body)).toEqual([]))
})

test('both can be allowed with a reason', () => {
  const front = 'allow: {loose-measure: It is a drill., loose-time: It dries at home.}\n'
  const body = '1. Drill 3 mm deep and wait 30 minutes.'
  expect(told(body, { front })).toEqual([])
  expect(told(body, { front, rule: 'loose-time' })).toEqual([])
})
