import { describe, expect, test } from 'vitest'
import { wordingOf } from '../../../src/wording/wording.ts'
import { classKit } from '../../../src/workshop/class/class-kit.ts'
import { classKitListing } from '../../../src/workshop/class/class-kit-listing.ts'
import { kitLabels } from '../../../src/workshop/class/kit-labels.ts'
import { packingListing } from '../../../src/workshop/class/packing.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'
import { bridgeBlock, lessonWith, supply } from '../lesson-with.ts'

const lesson = lessonWith(
  { card: bridgeBlock },
  {
    each: [supply('dots', { kind: 'count', count: 5 })],
    shared: [
      supply('ruler', { kind: 'per', count: 1, people: 3 }),
      supply('glue pot', { kind: 'per table', count: 2 }),
      supply('machine', { kind: 'per', count: 1, people: 7 }),
      supply('kettle', { kind: 'count', count: 1 }),
      supply('dots', { kind: 'per', count: 10, people: 5 }),
    ],
  },
)

function classOf(text: string) {
  const { file, findings } = readClass(text)
  expect(findings).toEqual([])
  const lessons = file.lessons.map((one) => taughtLesson(one, lesson, file).taught)
  return { file, lessons, kit: classKit(file, lessons, []) }
}

const counts = (list: readonly { item: string; amount: object }[]) =>
  Object.fromEntries(list.map(({ item, amount }) => [item, 'count' in amount ? amount.count : amount]))

// 14 people sit 5, 4 and 5. By threes that is 2 + 2 + 2 rulers and not 5; a machine for 7 stands between the tables.
describe('14 people at three tables, worked by hand', () => {
  const { kit, file, lessons } = classOf(
    'lesson: a.md\npeople: 14\nspare: 2\ntables: {window: 6, stove: 4, door: 6}',
  )

  test('each table has its kits and its own share', () => {
    expect(kit.tables.map(({ name, people, kits }) => [name, people, kits[0]?.count])).toEqual([
      ['window', 5, 5],
      ['stove', 4, 4],
      ['door', 5, 5],
    ])
    expect(kit.tables.map(({ shared }) => counts(shared))).toEqual([
      { ruler: 2, 'glue pot': 2, dots: 10 },
      { ruler: 2, 'glue pot': 2, dots: 10 },
      { ruler: 2, 'glue pot': 2, dots: 10 },
    ])
  })

  test('what more people share than sit at a table, and what there is once, serves all', () => {
    expect(counts(kit.forAll)).toEqual({ machine: 2, kettle: 1 })
  })

  test('the tables and what serves all are what is shared in all, and what is used up is bought', () => {
    expect(counts(kit.shared)).toEqual({ ruler: 6, 'glue pot': 6, dots: 30, machine: 2, kettle: 1 })
    expect(kit.buy).toMatchObject([{ item: 'dots', need: { kind: 'count', count: 16 * 5 + 30 } }])
  })

  test('the list has a part for each table, and the spare kits lie with the tutor', () => {
    const sections = classKitListing(kit).sections.map(({ heading, rows }) => [heading, rows.length])
    expect(sections.slice(1, 6)).toEqual([
      ['On the table “window”: 5 people', 4],
      ['On the table “stove”: 4 people', 4],
      ['On the table “door”: 5 people', 4],
      ['For all tables together', 2],
      ['Spare kits, with the tutor', 1],
    ])
  })

  test('kits are packed table by table, with what is shared there; nobody is left out', () => {
    const { sections } = packingListing('Saturday', kitLabels(file, lessons), kit.tables, kit.wording)
    expect(sections.map(({ heading, rows }) => [heading, rows.map(([first]) => first)])).toEqual([
      ['In each kit', ['Harbour lights']],
      [
        'window',
        ['kit 1', 'kit 2', 'kit 3', 'kit 4', 'kit 5', '☐ 2 × ruler', '☐ 2 × glue pot', '☐ 10 × dots'],
      ],
      ['stove', ['kit 6', 'kit 7', 'kit 8', 'kit 9', '☐ 2 × ruler', '☐ 2 × glue pot', '☐ 10 × dots']],
      [
        'door',
        ['kit 10', 'kit 11', 'kit 12', 'kit 13', 'kit 14', '☐ 2 × ruler', '☐ 2 × glue pot', '☐ 10 × dots'],
      ],
      ['Spare kits, with the tutor', ['spare kit 1', 'spare kit 2']],
    ])
    for (const { columns, rows } of sections) for (const row of rows) expect(row).toHaveLength(columns.length)
  })
})

test('a person has one row with the kit of each lesson, what was chosen in it, and a dash for what they do not make', () => {
  const label = (name: string, title: string, chosen: string[], table?: string) => ({
    name,
    title,
    chosen,
    contents: ['1 base'],
    ...(table !== undefined && { table }),
  })
  const { sections } = packingListing(
    'Saturday',
    [
      label('Ada', 'Harbour lights', ['blue card'], 'window'),
      label('Bo', 'Harbour lights', [], 'window'),
      label('Ada', 'Tide box', [], 'window'),
      label('spare kit 1', 'Tide box', ['red card']),
    ],
    [{ name: 'window', people: 2, kits: [], shared: [] }],
    wordingOf('en', 'in'),
  )
  expect(
    sections.slice(1).map(({ heading, columns, rows }) => [heading, columns.map((c) => c.head), rows]),
  ).toEqual([
    [
      'window',
      ['kit', 'Harbour lights', 'Tide box'],
      [
        ['Ada', '☐ blue card', '☐'],
        ['Bo', '☐', '–'],
      ],
    ],
    [
      'Spare kits, with the tutor',
      ['kit', 'Harbour lights', 'Tide box'],
      [['spare kit 1', '–', '☐ red card']],
    ],
  ])
})

test('lessons at the same time have people of their own: the first lesson fills the first table', () => {
  const { kit } = classOf(
    'lessons: [{lesson: a.md, people: 4}, {lesson: b.md, people: 3}]\npeople: 7\ntables: [window, door]',
  )
  expect(kit.tables.map(({ kits }) => kits.map(({ count }) => count))).toEqual([[4], [3]])
  // Two pots a table, one lesson at each.
  expect(counts(kit.shared)['glue pot']).toBe(4)
})

test('without tables a pot for each table stays a rule, and everything is as it was', () => {
  const { kit } = classOf('lesson: a.md\npeople: 14')
  expect(kit.tables).toEqual([])
  expect(counts(kit.shared)).toEqual({
    ruler: 5,
    'glue pot': { kind: 'text', text: '2 per table', perTable: 2 },
    machine: 2,
    kettle: 1,
    dots: 30,
  })
})
