import { expect, test } from 'vitest'
import { listingBody } from '../../../src/publish/listing-body.ts'
import { wordingOf } from '../../../src/wording/wording.ts'
import { attendanceListing, packingListing } from '../../../src/workshop/class/packing.ts'

const english = wordingOf('en', 'in')

const label = (name: string, title = 'Harbour lights', chosen: string[] = []) => ({
  name,
  title,
  chosen,
  contents: ['1 base', '2 side strip'],
})

test('kits of each lesson stand under what is in them, each with a box to tick', () => {
  const { sections, intro } = packingListing(
    'Saturday',
    [label('Ada', 'Harbour lights', ['green card']), label('Bo'), label('Ada', 'Tide box')],
    [],
    english,
  )
  expect(intro).toMatch(/^3 kits\./)
  expect(sections.map(({ heading, rows, note }) => [heading, rows, note])).toEqual([
    [
      'Harbour lights',
      [
        ['Ada', 'green card', '☐'],
        ['Bo', '', '☐'],
      ],
      'In each: 1 base, 2 side strip.',
    ],
    ['Tide box', [['Ada', '', '☐']], 'In each: 1 base, 2 side strip.'],
  ])
})

test('the attendance sheet alone says what the teacher must know', () => {
  const guests = [
    { name: 'Ada', takes: [] },
    { name: 'Bo', takes: ['green card'], note: 'no latex' },
  ]
  expect(attendanceListing('Saturday', { guests, people: 2, tables: [] }, english).sections[0]?.rows).toEqual(
    [
      ['Ada', '☐', '', ''],
      ['Bo', '☐', 'no latex', 'green card'],
    ],
  )
})

test('on paper a box is drawn, and who does not see it is told what it is, in the language of the class', () => {
  const html = listingBody(packingListing('Samstag', [label('Ada')], [], wordingOf('de', 'mm')))
  expect(html).toContain('<span class="tick" role="img" aria-label="zum Abhaken"></span></td>')
  expect(html).not.toContain('☐')
})
