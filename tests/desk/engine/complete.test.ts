import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../../src/card/fold-styles.ts'
import { completionsAt } from '../../../src/desk/engine/complete/completions.ts'
import type { Settings } from '../../../src/desk/engine/engine.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const settings: Settings = { paper: 'a4', theme: 'step-sheet', people: 1, spare: 0 }
const harbour = readFileSync(new URL('../../../lessons/harbour-lights.md', import.meta.url), 'utf8')

/** What is offered where `|` stands in a text. */
function offered(marked: string): { label: string; insert: string; from: number; detail?: string }[] {
  const at = marked.indexOf('|')
  return [...completionsAt(marked.slice(0, at) + marked.slice(at + 1), at, settings)]
}
const labels = (marked: string): string[] => offered(marked).map(({ label }) => label)
/** The lesson of the harbour with a stretch of it in the place of another, and the cursor in it. */
const put = (old: string, marked: string): string => {
  expect(harbour).toContain(old)
  return harbour.replace(old, marked)
}

describe('in a card block', () => {
  test('every fold of the catalogue is offered behind `fold:`', () => {
    const found = labels(put('fold: bridge', 'fold: br|'))
    for (const name of [...foldStyles.keys(), 'free']) expect(found).toContain(name)
  })

  test('keys of the block are those of this fold, and not those that it has already', () => {
    const found = labels(put('leg: 3/4 in\n', 'leg: 3/4 in\nt|\n'))
    expect(found).toContain('tab')
    expect(found).toContain('apertures')
    expect(found).not.toContain('leg')
    expect(found).not.toContain('raise')
  })

  test.each([
    [
      'a layer on a line',
      '    direction: upright\n',
      '    direction: upright\n    r|\n',
      ['raise', 'bulk'],
      'letters',
    ],
    ['a span in brackets', 'stock: vellum}', 'stock: vellum, |}', ['raise', 'from'], 'letters'],
    ['lettering', '    margin: 1/4 in\n', '    margin: 1/4 in\n    |\n', ['raise'], 'border'],
    ['an envelope', 'clearance: 1/4 in,', 'clearance: 1/4 in, f|,', ['flap', 'seam'], 'raise'],
    ['a border', 'ends: 0 in}', 'ends: 0 in, |}', ['left', 'top'], 'stock'],
    ['the base', 'weight: 300 gsm}', 'weight: 300 gsm, |}', ['bulk', 'caliper'], 'on'],
  ])('keys of %s are known by their place', (_, old, marked, some, none) => {
    const found = labels(put(old, marked))
    expect(found).toEqual(expect.arrayContaining(some))
    expect(found).not.toContain(none)
  })

  test('panels and other pieces are offered behind `on:`, but not the piece itself', () => {
    const found = labels(put('    on: floor\n', '    on: |\n'))
    expect(found).toEqual(expect.arrayContaining(['floor', 'left tab', 'right leg', 'side strip', 'beam']))
    expect(found).not.toContain('backdrop')
    expect(labels(put('on: [left tab, right tab]', 'on: [left tab, ri|]'))).toContain('right tab')
  })

  test('stocks of the lesson are offered behind `stock:`', () => {
    expect(labels(put('stock: vellum}', 'stock: v|}'))).toEqual(
      expect.arrayContaining([
        'dark blue card',
        'patterned paper',
        'grey card',
        'white card',
        'envelope paper',
      ]),
    )
  })

  test('standard sizes are offered standing and lying, with their measure', () => {
    const found = offered(put('closed: 7 x 5 in', 'closed: A6|'))
    expect(found.find(({ label }) => label === 'A6 landscape')?.detail).toBe('5.827 × 4.134 in')
    expect(found.map(({ label }) => label)).toContain('Half Letter portrait')
  })

  test('a length may be worked out from names, whose values stand beside them', () => {
    const found = offered(put('height: closed.height / 2,', 'height: closed.height / |,'))
    expect(found.find(({ label }) => label === 'closed.width')?.detail).toBe('7 in')
    expect(labels(put('at: top,', 'at: |,'))).toEqual(
      expect.arrayContaining(['top', 'middle', 'closed.height']),
    )
  })

  test('no number is taken for the beginning of a name', () => {
    expect(labels(put('leg: 3/4 in', 'leg: 3|'))).toEqual([])
  })
})

describe('in the words', () => {
  test('every name that a measure can ask for is offered in braces, with the value that is printed', () => {
    const marked = put('Cut the base to {base.size}', 'Cut the base to {|}')
    const found = offered(marked)
    const card = fillLesson(readLesson(harbour)).cards[0]?.card
    expect(new Set(found.map(({ label }) => label))).toEqual(new Set(card?.names.paths()))
    expect(found.find(({ label }) => label === 'base.size')?.detail).toBe('8 1/2 × 5 in')
  })

  test('a name with a space is taken up from its beginning, also behind a sign', () => {
    const marked = put('{sea wall.size}', '{beam.width + sea w|}')
    const found = offered(marked).find(({ label }) => label === 'sea wall.width')
    expect(marked.slice(found?.from, marked.indexOf('|'))).toBe('sea w')
  })

  test('figures know their attributes, kinds, pieces and labels', () => {
    const figure = '{show=flat of=base}\n\n3.'
    expect(labels(put(figure, '{show=flat |}\n\n3.'))).toEqual(['of', 'label'])
    expect(labels(put(figure, '{show=|}\n\n3.'))).toContain('standing')
    expect(labels(put(figure, '{show=flat label=|}\n\n3.'))).toContain('valleys')
    const pieces = offered(put(figure, '{show=flat of=|}\n\n3.'))
    expect(pieces.find(({ label }) => label === 'sea wall')?.insert).toBe('"sea wall"')
    expect(pieces.map(({ label }) => label)).toContain('backdrop')
    expect(
      offered(put(figure, '{show=flat of="|}\n\n3.')).find(({ label }) => label === 'sea wall')?.insert,
    ).toBe('sea wall')
  })

  test('colons offer what can stand there', () => {
    expect(labels(put('flush with the bottom. :minutes[3]', 'flush with the bottom. :|'))).toEqual([
      ':minutes',
      ':drying',
      ':meant',
    ])
    expect(labels(put(':::variation', ':::|'))).toEqual([':::tip', ':::caution', ':::ahead', ':::variation'])
    expect(labels(put(':::variation', '::|'))).toContain('::figure')
    expect(labels(put('about=punches', 'about=|'))).toContain('hot-glue')
  })

  test('plain words offer nothing', () => {
    expect(labels(put('with the pattern upright', 'with the pat| upright'))).toEqual([])
    expect(labels(`${harbour}\nat 7:|`)).toEqual([])
  })
})

describe('in the front matter', () => {
  test('keys, words, sizes and the advice that may be left', () => {
    expect(labels(put('level: improver', 'le|'))).toContain('level')
    expect(labels(put('level: improver', 'level: |'))).toEqual(['beginner', 'improver', 'advanced'])
    expect(labels(put('sizes: [6 x 6 in', 'sizes: [A|, 6 x 6 in'))).toContain('A6 landscape')
    expect(labels(put('level: improver', 'allow:\n  |'))).toContain('crowded-step')
    expect(labels(put('level: improver', 'lang: |'))).toEqual(['en-GB', 'en-US', 'de', 'fr', 'es'])
    expect(labels(put('level: improver', 'brand:\n  |'))).toEqual(expect.arrayContaining(['logo', 'accent']))
  })
})

test('no place of a lesson makes it fail, nor is anything offered behind the cursor', () => {
  for (let at = 0; at <= harbour.length; at += 7)
    for (const { from } of completionsAt(harbour, at, settings)) expect(from).toBeLessThanOrEqual(at)
})
