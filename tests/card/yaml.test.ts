import { expect, test } from 'vitest'
import { readYaml } from '../../src/card/yaml.ts'

const read = (text: string) => readYaml({ text, place: { line: 10, column: 1, offset: 0 } })
const told = (text: string) =>
  read(text).findings.map(({ message, place }) => `${place?.line}:${place?.column} ${message}`)

test.each([
  ['an empty one', '"": {on: back}', '10:1 This key has no name'],
  ['blanks', 'a: b\n"  ": {on: back}', '11:1 This key has no name'],
  ['a list', 'layers:\n  ? [a, b]\n  : 3', '11:5 This key has no name'],
  ['one left out', '{a: b, : c}', '10:8 This key has no name'],
])('a key without a name is told in its place, and is not read: %s', (_, text, message) => {
  expect(told(text)).toEqual([message])
  expect([...read(text).top.value.fields.keys()]).not.toContain('')
})

test('keys that differ only in blanks or in how an accent is written are the same key', () => {
  expect(told('mat: 1\n" mat": 2')).toEqual(['11:1 The key `mat` is there twice'])
  expect(told('"mát": 1\n"ma\u0301t": 2')).toEqual(['11:1 The key `mát` is there twice'])
  // Once is enough where the library tells it.
  expect(told('mat: 1\nmat: 2')).toHaveLength(1)
})

test('a value may be left out', () => {
  expect(told('mat:\nframe: ~\npad: ""')).toEqual([])
})
