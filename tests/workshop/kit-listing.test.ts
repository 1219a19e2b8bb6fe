import { expect, test } from 'vitest'
import { makeKit } from '../../src/workshop/kit.ts'
import { kitListing } from '../../src/workshop/kit-listing.ts'
import { listingMarkdown } from '../../src/workshop/listing-markdown.ts'
import { listingText } from '../../src/workshop/listing-text.ts'
import { harbour } from './harbour.ts'
import { bridgeBlock, lessonWith } from './lesson-with.ts'

const listing = kitListing(makeKit(harbour(), 14, 2))

test('a terminal shows the columns under each other', () => {
  expect(listingText(listing).split('\n').slice(0, 9)).toEqual([
    'Kit list: Harbour lights',
    'For 14 people and 2 spare kits: 16 kits.',
    '',
    'In each kit',
    '  item               count  how much              stock',
    '  base                   1  8 1/2 × 5 in          dark blue card',
    '  side strip             2  3/4 × 5 in            patterned paper',
    '  backdrop               1  5 3/8 × 5 in          patterned paper',
    '  sea wall               1  7 × 1 1/4 in          grey card',
  ])
})

test('long lengths are told in the unit of a roll, never too little', () => {
  // 612 in = 17 yd exactly; 15 544.8 mm = 15.5448 m, which 15.544 m would not reach.
  expect(listingText(listing)).toMatch(/double-sided tape {2}612 in {4}17 yd\n/)
  expect(listingText(kitListing(makeKit(harbour('mm'), 14, 2)))).toMatch(/double-sided tape {2}15.545 m\n/)
})

test('a table with nothing in it is left out, and so is a column', () => {
  const { intro, sections } = kitListing(makeKit(lessonWith({ card: bridgeBlock }), 1, 0))
  expect(intro).toBe('For 1 person: 1 kit.')
  expect(sections.map((s) => s.heading)).toEqual(['In each kit', 'To cut'])
})

test('pieces of one stock stand together', () => {
  const cut = listing.sections.find((s) => s.heading === 'To cut')
  expect(cut?.rows.slice(1, 3)).toEqual([
    ['side strip', '32', '3/4 × 5 in', 'patterned paper'],
    ['backdrop', '16', '5 3/8 × 5 in', 'patterned paper'],
  ])
})

test('as Markdown it is tables, counts to the right', () => {
  const lines = listingMarkdown(listing).split('\n')
  expect(lines.slice(0, 7)).toEqual([
    '# Kit list: Harbour lights',
    '',
    'For 14 people and 2 spare kits: 16 kits.',
    '',
    '## In each kit',
    '',
    expect.stringMatching(/^\| item +\| count \| how much +\| stock +\|$/),
  ])
  expect(lines[7]).toMatch(/^\| -+ \| -+: \| -+ \| -+ \|$/)
})
