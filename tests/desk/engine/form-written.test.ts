import { expect, test } from 'vitest'
import { changeAt } from '../../../src/desk/engine/form/change.ts'
import type { FormChange } from '../../../src/desk/engine/form.ts'

const lessonWith = (block: string): string =>
  `---\ntitle: Quay\nunits: in\n---\n\n\`\`\`card\n${block}\n\`\`\`\n\n1. Cut.\n`

function after(block: string, change: FormChange): string {
  const text = lessonWith(block)
  const edits = changeAt(text, 'card', change)
  if ('refused' in edits) return `refused: ${edits.refused}`
  const changed = edits
    .toSorted((a, b) => b.from - a.from)
    .reduce((all, { from, to, insert }) => all.slice(0, from) + insert + all.slice(to), text)
  return changed.slice(changed.indexOf('card\n') + 5, changed.lastIndexOf('\n```'))
}

const set = (path: string, text: string): FormChange => ({ kind: 'set', path: path.split('/'), text })

test('a value keeps its quotation marks, its spaces and the note behind it', () => {
  expect(after('fold: bridge\nleg:   "3/4 in"   # as high as the boat', set('leg', '1 in'))).toBe(
    'fold: bridge\nleg:   "1 in"   # as high as the boat',
  )
})

test('a value that YAML would read otherwise gets quotation marks', () => {
  expect(after('fold: bridge\nbase: {stock: card}', set('base/stock', 'card, blue'))).toBe(
    'fold: bridge\nbase: {stock: "card, blue"}',
  )
  expect(after('fold: bridge\nbase:\n  stock: card', set('base/stock', 'card, blue'))).toBe(
    'fold: bridge\nbase:\n  stock: card, blue',
  )
})

test('a key that is new goes where it is usually written', () => {
  expect(after('fold: bridge\nclosed: 7 x 5 in\nbase: {stock: card}\n# notes', set('tab', '1 in'))).toBe(
    'fold: bridge\nclosed: 7 x 5 in\ntab: 1 in\nbase: {stock: card}\n# notes',
  )
  expect(after('fold: bridge\nbase: {weight: 300 gsm}', set('base/stock', 'red card'))).toBe(
    'fold: bridge\nbase: {stock: red card, weight: 300 gsm}',
  )
})

const layers =
  'fold: bridge\nclosed: 7 x 5 in\nlayers:\n  backdrop: # blue\n    on: floor\n    border: 1/8 in\n  # the rest'

test('a layer that is new is written like the one before it, on a panel that is free', () => {
  expect(after(layers, { kind: 'add', what: 'layer', name: 'mat' })).toBe(
    'fold: bridge\nclosed: 7 x 5 in\nlayers:\n  backdrop: # blue\n    on: floor\n    border: 1/8 in\n' +
      '  mat:\n    on: left tab\n    border: 1/8 in\n    stock: patterned paper\n  # the rest',
  )
  expect(
    after('fold: bridge\nclosed: 7 x 5 in\nlayers:\n  sky: {on: floor}', {
      kind: 'add',
      what: 'layer',
      name: 'mat',
    }),
  ).toBe(
    'fold: bridge\nclosed: 7 x 5 in\nlayers:\n  sky: {on: floor}\n' +
      '  mat: {on: left tab, border: 1/8 in, stock: patterned paper}',
  )
})

test('the first strip is written below a key of its own, before the envelope', () => {
  expect(
    after('fold: bridge\nclosed: 7 x 5 in\nenvelope: {make: diagonal}', {
      kind: 'add',
      what: 'span',
      name: 'rail',
    }),
  ).toBe(
    'fold: bridge\nclosed: 7 x 5 in\nspans:\n  rail: {height: closed.height / 4, at: bottom, stock: white card}\n' +
      'envelope: {make: diagonal}',
  )
})

test('a layer that is taken out takes its lines, and the last one its key', () => {
  expect(after(layers, { kind: 'remove', path: ['layers', 'backdrop'] })).toBe(
    'fold: bridge\nclosed: 7 x 5 in\n  # the rest',
  )
})

test('a layer is put on several panels and on one again', () => {
  const on = ['layers', 'backdrop', 'on']
  const two = after(layers, { kind: 'list', path: on, items: ['left tab', 'right tab'] })
  expect(two).toContain('    on: [left tab, right tab]\n')
  expect(after(two, { kind: 'list', path: on, items: ['floor'] })).toBe(layers)
})

test('a border is written for each edge, for two, and for all at once', () => {
  const path = ['layers', 'backdrop', 'border']
  const two = after(layers, { kind: 'shape', path, shape: 'two' })
  expect(two).toContain('    border: {sides: 1/8 in, ends: 1/8 in}\n')
  const four = after(two, { kind: 'shape', path, shape: 'four' })
  expect(four).toContain('    border: {left: 1/8 in, right: 1/8 in, top: 1/8 in, bottom: 1/8 in}\n')
  expect(after(four, { kind: 'shape', path, shape: 'one' })).toBe(layers)
})

test('an envelope that is its make alone takes another key', () => {
  expect(after('fold: gate\nenvelope: side seam', set('envelope/flap', '1 in'))).toBe(
    'fold: gate\nenvelope: {make: side seam, flap: 1 in}',
  )
})

test.each([
  ['front', 'is the name of another part'],
  ['2nd mat', 'cannot be a name'],
  ['mat: a', 'cannot be a name'],
  ['', 'needs a name'],
])('a part cannot be called %j', (name, why) => {
  expect(after('fold: side\nclosed: 5 x 7 in', { kind: 'add', what: 'layer', name })).toContain(why)
})

test('a block that cannot be read is left alone', () => {
  expect(after('fold: [side\nclosed: 5 x 7 in', set('closed', '6 x 6 in'))).toMatch(
    /^refused: .*leaves it alone/,
  )
})

test('a value that is repeated elsewhere is left to the text', () => {
  const block = 'fold: side\nclosed: &size 5 x 7 in\npieces:\n  tag: {size: *size}'
  expect(after(block, set('closed', '6 x 6 in'))).toMatch(/^refused/)
})
