import { expect, test } from 'vitest'
import { ThemeError } from '../../src/publish/problems.ts'
import { compileTemplate } from '../../src/publish/template.ts'

const at = (text: string, path = 'theme/handout.hbs') => ({ path, text })
const partials = (entries: Record<string, string>) =>
  new Map(Object.entries(entries).map(([name, text]) => [name, at(text, `theme/partials/${name}.hbs`)]))

const failure = (make: () => unknown): ThemeError => {
  try {
    make()
  } catch (error) {
    if (error instanceof ThemeError) return error
    throw error
  }
  throw new Error('Expected a ThemeError')
}

test('text is escaped, HTML of our own is not', () => {
  const render = compileTemplate(at('{{title}} {{body}} {{#each list}}{{this}}{{/each}}'))
  expect(render({ title: '<b>', body: { html: '<p>x</p>' }, list: [{ html: '<i>' }, '<i>'] })).toBe(
    '&lt;b&gt; <p>x</p> <i>&lt;i&gt;',
  )
})

test('what looks like our HTML but has more to it is not let through', () => {
  expect(compileTemplate(at('{{x}}'))({ x: { html: '<b>', more: 1 } })).not.toContain('<b>')
})

test.each([
  [
    'three braces',
    'a\nb {{{title}}}',
    'theme/handout.hbs:2:3: three braces would let text through unescaped',
  ],
  ['an ampersand', '{{& title}}', 'theme/handout.hbs:1:1: three braces would let text through unescaped'],
  ['an open block', 'a\n{{#if title}}\nb\n', 'theme/handout.hbs:4:1: this is not well-formed'],
  ['a partial that is not there', 'a\n\n{{> stp}}', 'theme/handout.hbs:3:1: there is no partial `stp`'],
])('%s: file and line, before anything is printed', (_, text, message) => {
  const error = failure(() => compileTemplate(at(text), partials({ step: '' })))
  expect(error.message).toBe(message)
  expect(error.suggestion).toBeTruthy()
})

test('the nearest partial is suggested', () => {
  expect(failure(() => compileTemplate(at('{{> stp}}'), partials({ step: '' }))).suggestion).toBe(
    'Write `step`',
  )
})

test('a name that a handout does not have: file and line', () => {
  const render = compileTemplate(at('a\nb\n{{titel}}'))
  expect(failure(() => render({ title: 'A' })).message).toBe(
    'theme/handout.hbs:3:3: a handout has no `titel`',
  )
})

test('a mistake in a partial names the partial', () => {
  const broken = partials({ step: 'a\n{{#each steps}}' })
  expect(failure(() => compileTemplate(at('{{> step}}'), broken)).message).toMatch(
    /^theme\/partials\/step\.hbs:2:\d+: /,
  )
  const render = compileTemplate(at('{{#each list}}{{> step}}{{/each}}'), partials({ step: '\n{{numbr}}' }))
  expect(failure(() => render({ list: [{ number: 1 }] })).message).toMatch(
    /^theme\/partials\/step\.hbs:2:\d+: a handout has no `numbr`$/,
  )
})

test('a template reaches nothing but the view', () => {
  expect(compileTemplate(at('{{constructor}}'))({ title: 'A' })).toBe('')
})
