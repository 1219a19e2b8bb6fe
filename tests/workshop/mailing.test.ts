import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { listingText } from '../../src/workshop/listing-text.ts'
import { measures } from '../../src/workshop/measures.ts'
import { measuresListing } from '../../src/workshop/measures-listing.ts'
import { measuresShape } from './contract.ts'
import { bridgeBlock, lessonWith } from './lesson-with.ts'

const lesson = (block: string, text = '', units = 'mm') =>
  fillLesson(
    readLesson(
      `---\ntitle: Gulls\nlevel: beginner\nunits: ${units}\n---\n\n\`\`\`card\n${block}\n\`\`\`\n\n${text}\n`,
    ),
  )
const cardOf = (block: string, units?: string) => {
  const answer = measuresShape.parse(JSON.parse(JSON.stringify(measures(lesson(block, '', units)))))
  return answer.cards[0]
}
const a6 = 'fold: side\nclosed: A6\nbase: {stock: card, caliper: 0.3 mm}'

// An A6 card of two sheets of 0.3 mm in a C6: 162 × 114 mm, and 0.6 mm with five sheets of paper of 0.15 mm thick.
test('--json has the envelopes that fit and the post, whether or not one is made', () => {
  const card = cardOf(a6)
  expect(card?.envelope).toBeUndefined()
  const [c6] = card?.fits ?? []
  expect([
    c6?.name,
    c6?.series,
    c6?.size.width.text,
    c6?.room.width.mm,
    c6?.room.height.mm,
    c6?.tight,
  ]).toEqual(['C6', 'ISO 269', '114 mm', 9, 14, false])
  expect(card?.post?.map((one) => [one.country, one.class, one.inside, one.weight])).toEqual([
    ['US', 'machinable letter', 'A6 (US trade)', '3 1/2 oz'],
    ['UK', 'letter', 'C6 (ISO 269)', '100 g'],
    ['Canada', 'standard letter', 'A6 (US trade)', '50 g'],
    ['Germany', 'Standardbrief', 'C6 (ISO 269)', '20 g'],
    ['abroad (UPU)', 'standardized letter', 'C6 (ISO 269)', '20 g'],
  ])
  expect(card?.post?.flatMap(({ why }) => why)).toEqual([])
})

test('--json has the folds and cuts of the envelope, and the order of its flaps', () => {
  const diagonal = cardOf(`${a6}\nenvelope: diagonal`)?.envelope
  expect([diagonal?.slants?.length, diagonal?.cuts.length]).toEqual([4, 8])
  expect(diagonal?.folding).toEqual(['left flap', 'right flap', 'bottom flap', 'top flap'])
  const seam = cardOf(`${a6}\nenvelope: side seam`)?.envelope
  expect([seam?.slants, seam?.cuts.length, seam?.folding[2]]).toEqual([undefined, 8, 'back'])
})

test('a card that does not fold is told neither', () => {
  const [card] = measures(lessonWith({ card: bridgeBlock })).cards
  expect([card?.fits, card?.post]).toEqual([undefined, undefined])
  expect(listingText(measuresListing(lessonWith({ card: bridgeBlock })))).not.toContain('By post')
})

test('the table says what fits, how it posts and why, with the date of the figures', () => {
  const text = listingText(measuresListing(lesson('fold: side\nclosed: 4 1/4 x 5 1/2 in', '', 'in')))
  expect(text).toMatch(/\nEnvelopes to buy\n.*\n {2}B6 \(ISO 269\) +125 × 176 mm +17 × 36 mm\n/)
  expect(text).toMatch(
    /\n {2}A2 \(US trade\) +4 3\/8 × 5 3\/4 in +1\/8 × 1\/4 in +tight: lists of sizes differ\n/,
  )
  expect(text).toMatch(/\n {2}UK +B6 \(ISO 269\) +letter +100 g +read in November 2026\n/)
  expect(text).toMatch(/\n {2}abroad \(UPU\) +B6 \(ISO 269\) +letter +125 mm high, at most 120 mm +read in/)
  expect(text).toContain('Limits change: ask the carrier')
})

test('a lesson says it too', () => {
  const { tree, findings } = lesson(a6, '1. Buy a {card.fits}. In the UK: {card.posts.uk}.')
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
  const said = JSON.stringify(tree)
  expect(said).toContain('"C6 (ISO 269) or A6 (US trade)"')
  expect(said).toContain('"letter, up to 100 g (figures: read in November 2026; ask the carrier)"')
})

test.each([
  [
    'de',
    'C6 (ISO 269) oder A6 (US-Handel)',
    'Brief, bis 100 g (Stand: gelesen im November 2026; bei der Post nachfragen)',
    'USA: maschinenfähiger Brief, Großbritannien: Brief',
  ],
  [
    'fr',
    'C6 (ISO 269) ou A6 (commerce américain)',
    'lettre, jusqu’à 100 g (données : lu en novembre 2026 ; demander à la poste)',
    'États-Unis : lettre mécanisable, Royaume-Uni : lettre',
  ],
  [
    'es',
    'C6 (ISO 269) o A6 (comercio de EE. UU.)',
    'carta, hasta 100 g (datos: consultado en noviembre de 2026; preguntar en Correos)',
    'EE. UU.: carta automatizable, Reino Unido: carta',
  ],
])('a lesson in `%s` says it in its own words', (lang, fits, uk, all) => {
  const { tree } = lesson(a6, '1. {card.fits}. {card.posts.uk}. {card.posts}.', `mm\nlang: ${lang}`)
  // Which of the spaces that hold words together stands before a mark is not looked at here.
  const said = JSON.stringify(tree).replace(/[\u00a0\u202f]/g, ' ')
  expect(said).toContain(`"${fits}"`)
  expect(said).toContain(`"${uk}"`)
  expect(said).toContain(`"${all}`)
  expect(said).not.toMatch(/letter|carrier|US trade|figures/)
})

test('why it is dearer is told with the decimals of the language', () => {
  const square = 'fold: side\nclosed: 125 x 125 mm\nbase: {stock: card, caliper: 0.3 mm}\nenvelope: diagonal'
  const { tree } = lesson(square, '1. {card.posts.us}.', 'mm\nlang: de')
  expect(JSON.stringify(tree)).toContain('(quadratisch, mindestens 1,3-mal so lang wie hoch), bis 3 1/2 oz')
})
