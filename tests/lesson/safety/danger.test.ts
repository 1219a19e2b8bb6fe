import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { dangersIn } from '../../../src/lesson/safety/danger.ts'
import { hazards } from '../../../src/lesson/safety/hazards.ts'

const named = (text: string, children = false): string[] =>
  dangersIn(text, { as: 'step', children, locale: 'en-GB' }).map(({ hazard }) => hazard.name)
const item = (text: string, children = false): string[] =>
  dangersIn(text, { as: 'item', children, locale: 'en-GB' }).map(({ hazard }) => hazard.name)

describe('what has a hazard, in a step and in a list', () => {
  test.each([
    ['blades', ['a craft knife', 'Craft Knives', 'the scalpel', 'a rotary cutter', 'a box-cutter']],
    ['trimmers', ['the paper trimmer', 'a guillotine', 'the trimmer', 'paper cutters']],
    ['points', ['a needle', 'the awl', 'a paper piercer', 'push pins', 'with a pin']],
    [
      'punches',
      ['a hole punch', 'the eyelet setter', 'a hammer', 'the die-cutting machine', 'corner punches'],
    ],
    ['wire', ['thin wire', 'florist wire', 'jewelry wire']],
    ['film', ['a sheet of acetate', 'clear film', 'shrink plastic']],
    ['heat', ['the heat tool', 'a heat gun', 'a warm iron', 'the embossing gun', 'with an iron']],
    ['hot-glue', ['a hot-glue gun', 'glue guns', 'hot glue']],
    ['flames', ['a candle', 'tea lights', 'sealing wax', 'with a match', 'with a lighter']],
    ['sprays', ['spray adhesive', 'spray mount', 'an aerosol', 'fixative']],
    ['solvents', ['contact adhesive', 'white spirit', 'acetone', 'rubber cement', 'alcohol inks']],
    ['instant-glue', ['super glue', 'superglue', 'instant glue', 'cyanoacrylate']],
    ['resin', ['epoxy', 'UV resin', 'two-part glue']],
    ['powders', ['embossing powder', 'fine glitter', 'mica powder']],
    ['small-parts', ['seed beads', 'gems', 'brads', 'a button', 'wiggle eyes', 'pearl dots', 'split pins']],
    ['magnets', ['disc magnets', 'a magnet', 'a magnetic closure']],
    ['button-cells', ['a coin cell', 'CR2032', 'button batteries', 'LED tea lights']],
    ['balloons', ['a balloon', 'latex balloons']],
    ['allergies', ['rubber bands', 'latex gloves', 'walnut shells', 'feathers', 'an egg box']],
  ])('%s', (name, words) => {
    for (const word of words) expect(named(`Take it ${word}.`), word).toContain(name)
  })

  test.each(hazards.map((hazard) => hazard))(
    '$name: every word of it, one and several, in a list',
    (hazard) => {
      const { name, words, alone = [], forChildren = [], not = [] } = hazard
      for (const word of [...words, ...alone]) expect(item(word), word).toContain(name)
      for (const word of forChildren) expect([item(word), item(word, true)], word).toEqual([[], [name]])
      for (const word of not) expect(item(word), word).not.toContain(name)
    },
  )
})

test.each([
  'environ',
  'irons out',
  'tape measure',
  'a glue stick',
  'heat',
  'Cut it',
  'spray water on it',
  'sea spray',
  'scissors',
  'a bone folder',
  'it matches the wall',
  'Match the edges',
  'a lighter blue',
  'lighter paper',
  'the iron pier',
  'pine needles',
  'a palette knife',
  'a buttonhole',
  'a point on the fold',
  'the pin holes',
  'wireless',
  'a resin-free finish',
  'glitter card',
  'foam pads',
  'a paper balloon',
  'balloon stickers',
  'Draw a candle',
  'Draw the small candle',
  'a candle shape',
  'button stencil',
  'a wire rack',
])('%s has none', (text) => {
  expect(named(`Take ${text}.`)).toEqual([])
})

test.each([
  'No knife is needed.',
  'Tear it without a knife.',
  'Use scissors instead of a craft knife.',
  'Never use superglue.',
  'A knife is not needed.',
])('what is not used: %s', (text) => {
  expect(named(text)).toEqual([])
})

test.each([
  'Do not press hard with the craft knife.',
  'Do not let go of the knife.',
  'No tape under the knife.',
])('what is used all the same: %s', (text) => {
  expect(named(text)).toEqual(['blades'])
})

test('one tool can have several hazards, and the longer word counts', () => {
  expect(named('Put the LED tea lights in.')).toEqual(['button-cells'])
  expect(named('Put the tea lights in.')).toEqual(['flames'])
  expect(named('Close the button cell holder.')).toEqual(['button-cells'])
  expect(named('Set eyelets with the eyelet setter.')).toEqual(['small-parts', 'punches'])
})

interface SmallParts {
  readonly cylinder: { readonly diameter: number; readonly leastDepth: number }
  readonly fits: readonly {
    readonly name: string
    readonly size: readonly [number, number, number]
    readonly ball?: boolean
  }[]
}
const file = new URL('../../data/small-parts.json', import.meta.url)
const { cylinder, fits }: SmallParts = JSON.parse(readFileSync(file, 'utf8'))

test.each(fits)(
  '$name goes into the published cylinder, and is a small part for children',
  ({ name, size, ball }) => {
    const [long = 0, middle = 0, short = 0] = size.toSorted((a, b) => b - a)
    // The longest side upright: what lies across is a rectangle, or a circle.
    expect(ball ? middle : Math.hypot(middle, short)).toBeLessThan(cylinder.diameter)
    expect(long).toBeLessThanOrEqual(cylinder.leastDepth)
    expect(item(name, true)).toEqual(['small-parts'])
  },
)
