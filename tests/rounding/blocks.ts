import * as fc from 'fast-check'
import { parse, stringify } from 'yaml'
import type { FoldStyle } from '../../src/card/style.ts'

/** A length a little off: of the trade, off every ruler, in either unit. */
const little = fc.oneof(
  fc.integer({ min: 0, max: 60 }).map((n) => `${n / 10} mm`),
  fc.tuple(fc.integer({ min: 0, max: 12 }), fc.constantFrom(16, 40, 48, 64)).map(([n, d]) => `${n}/${d} in`),
)
const border = fc.oneof(
  little,
  fc.record({ left: little, right: little, top: little, bottom: fc.constant('auto') }),
  fc.record({ sides: little, ends: little }),
)
/** What a length is times its usual value. */
const share = fc
  .tuple(fc.integer({ min: 13, max: 19 }), fc.constantFrom(16, 17, 19))
  .map(([n, d]) => `${n}/${d}`)

/** A number for everything that a block may say otherwise; whoever builds the block takes what it needs. */
const changes = fc.record({
  lengths: fc.array(fc.option(share), { minLength: 12, maxLength: 12 }),
  borders: fc.array(border, { minLength: 6, maxLength: 6 }),
  words: fc.array(fc.option(fc.nat(1000), { freq: 2 }), { minLength: 6, maxLength: 6 }),
  margin: little,
  letters: fc.constantFrom('SEA', 'AB', 'QUILLHAVEN'),
})

/** Whether a border follows from other lengths of the card; then it stays as it is. */
const isBound = (own: unknown): boolean =>
  /[a-z]{3}/.test(JSON.stringify(own ?? '').replace(/left|right|top|bottom|sides|ends|auto/g, ''))

/** The starter block of a fold with other lengths, counts, words and borders, most of them off every ruler. */
export const blockOf = (style: FoldStyle): fc.Arbitrary<string> =>
  changes.map(({ lengths, borders, words, margin, letters }) => {
    const block = parse(style.starter, { schema: 'failsafe' })
    for (const [i, [key, { usual }]] of Object.entries(style.parameters).entries())
      if (lengths[i]) block[key] = `(${usual}) * ${lengths[i]}`
    for (const [i, [key, { least, most }]] of Object.entries(style.counts ?? {}).entries()) {
      const word = words[i]
      if (typeof word === 'number')
        block[key] = String(least + (word % (Math.min(most, least + 4) - least + 1)))
    }
    for (const [i, [key, choice]] of Object.entries(style.choices ?? {}).entries()) {
      const word = words[i + 3]
      if (typeof word === 'number') block[key] = choice.words[word % choice.words.length]
    }
    for (const [i, layer] of Object.values(block.layers ?? {}).entries()) {
      const own = layer as { border?: unknown }
      if (!isBound(own.border)) own.border = borders[i]
    }
    if (block.spans) {
      block.spans.wall = { height: 'closed.height * 3/11', at: 'middle' }
      block.lettering = { name: { on: 'wall', letters, widths: 'closed.width / 17', margin } }
    }
    const [ground] = Object.keys(block.layers ?? {})
    if (ground)
      block.apertures = { ...block.apertures, hatch: { on: ground, size: 'closed.width / 9 x 11/48 in' } }
    return stringify(block)
  })
