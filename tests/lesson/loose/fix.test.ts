import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readSize } from '../../../src/length/text.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { lookAt, read } from '../../../src/lesson/loose/edits.ts'
import { fixLesson } from '../../../src/lesson/loose/fix.ts'
import { measureOf } from '../../../src/lesson/loose/proposal.ts'
import { plainText } from '../../../src/lesson/plain-text.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { printedLengths, spellings, untied } from './plain.ts'

const names = ['beach-hut-doors', 'low-tide-z-card', 'deckchair-easel']
const lesson = (name: string): string =>
  readFileSync(new URL(`../../../lessons/${name}.md`, import.meta.url), 'utf8')

/** What a handout says, measures and plain numbers in one spelling. Knows nothing of the code that is tested. */
const said = (text: string): string =>
  plainText(fillLesson(readLesson(text)).tree)
    .replace(/\s+/g, ' ')
    .replace(
      /(\d)?([½¼¾])/g,
      (_, whole: string | undefined, sign: string) =>
        `${whole ? `${whole} ` : ''}${{ '½': '1/2', '¼': '1/4', '¾': '3/4' }[sign]}`,
    )
    .replace(/(\d) ?(?:"|inches\b)/g, '$1 in')
    .replace(/(\d)(?: x | by )(?=\d)/g, '$1 × ')

describe.each(names)('%s with its numbers written out by hand', (name) => {
  const text = lesson(name)
  const lengths = printedLengths(text)

  test('in any spelling and with any line ending, the handout says the same when it is fixed, and fixing again changes nothing', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(spellings.length), { minLength: 40, maxLength: 40 }),
        fc.constantFrom('\n', '\r\n', '\r'),
        fc.constantFrom('', '\ufeff'),
        (choices, ending, mark) => {
          const { plain } = untied(
            text,
            lengths,
            (printed, i) => spellings[choices[i % 40] ?? 0]?.(printed) ?? printed,
          )
          const written = mark + plain.replace(/\n/g, ending)
          const { text: fixed, placed } = fixLesson(written)
          expect(said(fixed)).toBe(said(written))
          expect(placed.length).toBeGreaterThan(0)
          expect(fixed.startsWith(mark)).toBe(true)
          const again = fixLesson(fixed)
          expect(again.text).toBe(fixed)
          expect(again.placed).toEqual([])
          // Nothing but the numbers has changed.
          const between = (all: string): string => all.replace(/\{[^{}\n\r]*\}/g, '')
          let [at, rest] = [0, '']
          for (const { number, edit } of [...placed].sort((a, b) => a.edit.start - b.edit.start)) {
            expect(written.slice(edit.start, edit.end).length).toBe(number.words.length)
            rest += written.slice(at, edit.start)
            at = edit.end
          }
          expect(between(fixed)).toBe(between(rest + written.slice(at)))
        },
      ),
      { numRuns: 2 },
    )
  })

  test('a name that is sure comes to what the lesson had there, in other sizes and the other unit', () => {
    const { plain, offsets } = untied(text, lengths, (printed) => printed)
    const sure = lookAt(read(plain)).words.flatMap(({ place, proposal }) =>
      proposal?.confidence === 'sure' ? [{ offset: place.offset, measure: measureOf(proposal) }] : [],
    )
    const pairs = lengths.flatMap(({ value }, i) => {
      const found = sure.find((one) => one.offset === offsets[i])
      return found ? [`${`{${value}}`} and ${found.measure}`] : []
    })
    expect(pairs.length).toBeGreaterThanOrEqual(lengths.length * 0.75)
    const probe = `${text}\n${pairs.map((pair) => `- ${pair}\n`).join('')}`
    for (const [closed, units] of [
      ['8 x 6 in', 'in'],
      ['170 x 130 mm', 'mm'],
      ['6 x 8 in', 'mm'],
    ] as const) {
      const { tree } = fillLesson(readLesson(probe), { closed: readSize(closed), units })
      const list = tree.children.at(-1)
      const lines = list?.type === 'list' ? list.children.map(plainText) : []
      expect(lines).toHaveLength(pairs.length)
      for (const line of lines) {
        const [original, proposed] = line.split(/(?<=(?:in|mm)) and /)
        expect(proposed).toBe(original)
      }
    }
  })
})

describe('what is not replaced', () => {
  const card = '```card\nfold: side\ncloosed: 5 x 7 in\n```\n'.replace('cloosed', 'closed')
  const fixed = (body: string): string => {
    const before = `---\ntitle: Shells\nunits: in\n---\n\n${card}\n${body}`
    return fixLesson(before).text.slice(before.length - body.length)
  }
  test.each([
    ['1. Cut the base to 10 x 7 in.', '1. Cut the base to {base.size}.'],
    ['1. Cut the base to :meant[10 x 7 in].', '1. Cut the base to :meant[10 x 7 in].'],
    ['1. Cut the base to `10 x 7 in`.', '1. Cut the base to `10 x 7 in`.'],
    ['1. Cut the base to 10 **x** 7 in.', '1. Cut the base to 10 **x** 7 in.'],
    ['1. Cut the base to **10 x 7 in**.', '1. Cut the base to **{base.size}**.'],
    ['1. Cut the base to 10 x 7&nbsp;in.', '1. Cut the base to {base.size}.'],
    ['1. Cut the base to 10 x\n   7 in.', '1. Cut the base to {base.size}.'],
    ['1. Cut the base to 10 x 6 in.', '1. Cut the base to 10 x 6 in.'],
    ['1. Cut the base to 254 x 178 mm.', '1. Cut the base to {base.size as mm}.'],
    ['1. ![Cut the base to 10 x 7 in](a.png)', '1. ![Cut the base to 10 x 7 in](a.png)'],
  ])('%s', (before, after) => expect(fixed(before)).toBe(after))
})
