import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Edit } from '../../../src/desk/engine/engine.ts'
import { changeCard } from '../../../src/desk/engine/form/change.ts'
import type { FormChange } from '../../../src/desk/engine/form.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { type Leaf, leavesOf, lessonTexts } from './lesson-texts.ts'

/** The text after a change; it must not be refused. */
function changed(text: string, change: FormChange, card = 'card'): string {
  const edits = changeCard(readLesson(text), card, change)
  if ('refused' in edits) throw new Error(`${edits.refused}: ${JSON.stringify(change)}`)
  return applied(text, edits)
}

const applied = (text: string, edits: readonly Edit[]): string =>
  edits
    .toSorted((a, b) => b.from - a.from)
    .reduce((all, { from, to, insert }) => all.slice(0, from) + insert + all.slice(to), text)

const lesson = fc.constantFrom(...lessonTexts)
const value = fc
  .oneof(
    fc.constantFrom(
      '3/4 in',
      '20 mm',
      'closed.width / 8',
      '7 x 5 in',
      'dark blue card',
      'left tab',
      'true',
      '~',
    ),
    fc.string({ minLength: 1, maxLength: 12 }).map((text) => text.replace(/\s+/g, ' ').trim()),
    fc.stringMatching(/^[-:#,[\]{}"'&*!|>%@` \\a]{1,8}$/).map((text) => text.replace(/\s+/g, ' ').trim()),
  )
  .filter((text) => text !== '')

test('a value that is set is that value, and nothing else of the file is another', () => {
  fc.assert(
    fc.property(lesson, fc.nat(), value, ({ text }, pick, to) => {
      const leaves = leavesOf(text)
      const leaf = leaves[pick % leaves.length]
      if (!leaf) throw new Error('A lesson without a card')
      const after = changed(text, { kind: 'set', path: leaf.path, text: to })
      expect(leavesOf(after).map(({ path, text: now }) => [path, now])).toEqual(
        leaves.map(({ path, text: was }) => [path, path === leaf.path ? to : was]),
      )
      expect(after.startsWith(text.slice(0, leaf.from))).toBe(true)
      expect(after.endsWith(text.slice(leaf.to))).toBe(true)
    }),
    { numRuns: 50 },
  )
})

test('a value that is set and set back leaves the file as it was', () => {
  fc.assert(
    fc.property(lesson, fc.nat(), value, ({ text }, pick, to) => {
      const leaves = leavesOf(text).filter((one) => !/^[>|]/.test(text.slice(one.from, one.to)))
      const leaf = leaves[pick % leaves.length]
      if (!leaf || leaf.text === '') return
      // Quotation marks that are not needed are kept from value to value, unless one of them needs other ones.
      const marked = /^["']/.test(text.slice(leaf.from))
      fc.pre(!marked || /^\w[\w /]*$/.test(to))
      const there = changed(text, { kind: 'set', path: leaf.path, text: to })
      expect(changed(there, { kind: 'set', path: leaf.path, text: leaf.text })).toBe(text)
    }),
    { numRuns: 40 },
  )
})

test('a key that is new goes again without a trace', () => {
  const added = fc.constantFrom<readonly string[]>(
    ['base', 'direction'],
    ['base', 'bulk'],
    ['envelope', 'flap'],
    ['spine'],
    ['pieces', 'gull', 'size'],
    ['layers', 'a gull: one', 'on'],
    ['spans', 'beam', 'weight'],
  )
  fc.assert(
    fc.property(lesson, added, value, ({ text }, path, to) => {
      const leaves = leavesOf(text)
      const said = (own: readonly string[]) => leaves.some((leaf) => leaf.path.join('/') === own.join('/'))
      const under = (own: readonly string[]) =>
        leaves.some((leaf) => leaf.path.join('/').startsWith(`${own.join('/')}/`))
      // A part is new as a whole; an envelope is there, with keys, before it gets another one.
      fc.pre(!said(path) && !said([path[0] ?? '']) && !(path.length === 3 && under(path.slice(0, 2))))
      fc.pre(path[0] !== 'envelope' || under(['envelope']))
      const there = changed(text, { kind: 'set', path, text: to })
      const now = leavesOf(there)
      expect(now.filter((leaf) => leaf.path.join('/') === path.join('/')).map((leaf) => leaf.text)).toEqual([
        to,
      ])
      expect(now.length).toBe(leaves.length + 1)
      if (text.includes('\r\n')) expect(there).not.toMatch(/(?<!\r)\n/)
      const isPart = path.length === 3
      const out: FormChange = isPart ? { kind: 'remove', path: path.slice(0, 2) } : { kind: 'clear', path }
      expect(changed(there, out)).toBe(text)
    }),
    { numRuns: 50 },
  )
})

test('what is taken out is out, and nothing else', () => {
  fc.assert(
    fc.property(lesson, fc.nat(), ({ text }, pick) => {
      const inOneLine = ({ from, to }: Leaf) => !text.slice(from, to).includes('\n')
      const leaves = leavesOf(text).filter(
        (own) => inOneLine(own) && !own.path.some((key) => /^\d+$/.test(key)),
      )
      const leaf = leaves[pick % leaves.length]
      if (!leaf) throw new Error('A lesson without a card')
      const edits = changeCard(readLesson(text), 'card', { kind: 'clear', path: leaf.path })
      if ('refused' in edits) throw new Error(edits.refused)
      const after = applied(text, edits)
      const kept = leavesOf(text).filter(({ path }) => path.join('/') !== leaf.path.join('/'))
      const now = leavesOf(after)
      expect(now.filter((one) => one.text !== '').map((one) => one.text)).toEqual(
        kept.filter((one) => one.text !== '').map((one) => one.text),
      )
      const out = edits.map(({ from, to }) => text.slice(from, to)).join('')
      expect(out.split('\n').length).toBeLessThanOrEqual(3)
    }),
    { numRuns: 40 },
  )
})
