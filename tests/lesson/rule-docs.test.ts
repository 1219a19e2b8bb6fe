import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { exampleLesson } from '../../src/lesson/rules/example.ts'
import { ruleDocs } from '../../src/lesson/rules/rules.ts'

const findingsOf = (text: string) => fillLesson(readLesson(text)).findings
const allowing = (text: string, name: string): string =>
  text.replace('---\n', `---\nallow: {${name}: "It is meant so."}\n`)

describe.each(ruleDocs.map((doc) => [doc.name, doc] as const))(
  'the example of %s in the manual',
  (name, doc) => {
    const text = exampleLesson(doc)
    const findings = findingsOf(text)
    const own = findings.filter(({ rule }) => rule === name)

    test('breaks its rule, and has no other mistake', () => {
      expect(own.length).toBeGreaterThan(0)
      const errors = findings.filter(({ severity }) => severity === 'error')
      expect(errors.filter(({ rule }) => rule !== name)).toEqual([])
    })

    test('is told where, and how to cure it', () => {
      for (const { place, suggestion } of own) {
        expect(place?.line).toBeGreaterThan(0)
        expect(suggestion?.length).toBeGreaterThan(10)
      }
    })

    test('can be allowed with a reason, unless it is an error', () => {
      const left = findingsOf(allowing(text, name))
      const errors = own.filter(({ severity }) => severity === 'error')
      expect(left.filter(({ rule }) => rule === name)).toHaveLength(errors.length)
      expect(left.filter(({ rule }) => rule === 'unknown-rule')).toEqual([])
    })
  },
)

test('every rule has a name of its own, and is described in a sentence', () => {
  expect(new Set(ruleDocs.map(({ name }) => name)).size).toBe(ruleDocs.length)
  for (const { name, about } of ruleDocs) {
    expect(name).toMatch(/^[a-z]+(?:-[a-z]+)*$/)
    expect(about).toMatch(/^[A-Z].*\.$/)
  }
})
