import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { formAt } from '../../../src/desk/engine/form/card-form.ts'
import type { CardForm, Field } from '../../../src/desk/engine/form.ts'
import { catalogue } from '../../../src/workshop/catalogue.ts'
import { leavesOf, lessonTexts } from './lesson-texts.ts'

function formOf(text: string, card = 'card'): CardForm {
  const form = formAt(text, card)
  if ('refused' in form) throw new Error(form.refused)
  return form
}

const withCard = (block: string): string =>
  `---\ntitle: Quay\nunits: in\n---\n\n\`\`\`card\n${block}\n\`\`\`\n`
const fieldsOf = (form: CardForm): Field[] => form.groups.flatMap(({ fields }) => fields)
const field = (form: CardForm, path: string): Field | undefined =>
  fieldsOf(form).find((one) => one.path.join('/') === path && one.kind !== 'shape')

// The line endings change no value, and the folds' own starters come below.
const written = lessonTexts.filter(({ name }) => name === 'all ways' || name.endsWith('.md'))

test.each(written)('every value of $name is a field as it is written, or only in the text', ({ text }) => {
  const form = formOf(text)
  for (const leaf of leavesOf(text)) {
    const [key = ''] = leaf.path
    if (form.onlyInText.includes(key)) continue
    const of = leaf.path.join('/')
    const panels = field(form, leaf.path.slice(0, -1).join('/'))
    const said = panels?.kind === 'panels' ? panels.items?.[Number(leaf.path.at(-1))] : field(form, of)?.text
    expect([of, said]).toEqual([of, leaf.text])
  }
})

test.each([...catalogue.values()])('the form of $name has a field for all that it can be told', (fold) => {
  const form = formOf(lessonTexts.find(({ name }) => name === fold.name)?.text ?? '')
  const { parameters, counts = {}, choices = {} } = fold
  const keys = [...Object.keys(parameters), ...Object.keys(counts), ...Object.keys(choices)]
  for (const key of keys) {
    expect([key, field(form, key)?.help]).toEqual([key, expect.any(String)])
    const { text, usual } = field(form, key) ?? {}
    expect([key, text !== '' || (usual ?? '') !== '']).toEqual([key, true])
  }
  // The steps are cut off, so only what is wrong with the card itself counts.
  const told = form.groups.flatMap(({ trouble, fields }) => [
    ...trouble,
    ...fields.flatMap((one) => one.trouble),
  ])
  expect(told.filter(({ severity }) => severity === 'error')).toEqual([])
})

test('an expression stays one, with what it comes to beside it', () => {
  const form = formOf(readFileSync('lessons/harbour-lights.md', 'utf8'))
  expect(field(form, 'spans/beam/height')).toMatchObject({ text: 'closed.height / 2', comes: '2 1/2 in' })
  expect(field(form, 'leg')).not.toHaveProperty('comes')
  expect(field(form, 'tab')).toMatchObject({ text: '', usual: '3/4 in' })
  expect(form.groups.find(({ title }) => title === 'backdrop')).toMatchObject({ comes: '5 3/8 × 5 in' })
})

test('what is wrong is told at its field, once', () => {
  const form = formOf(
    withCard(
      'fold: gate\nclosed: 5 x 7 in\nleg: 1 in\nlayers:\n  mat: {on: flor, border: back.widt, stok: red}',
    ),
  )
  const told = fieldsOf(form).flatMap(({ path, trouble }) => trouble.map(() => path.join('/')))
  expect(told.toSorted()).toEqual(['layers/mat/border', 'layers/mat/on', 'layers/mat/stok', 'leg'])
  expect(field(form, 'layers/mat/on')?.trouble[0]?.message).toContain('`flor`')
  expect(form.groups.find(({ kind }) => kind === 'other')?.fields.map(({ path }) => path)).toEqual([['leg']])
})

test('a layer without a panel has that told where its name is', () => {
  const form = formOf(withCard('fold: side\nclosed: 5 x 7 in\nlayers:\n  mat: {border: 1/8 in}'))
  expect(form.groups.find(({ title }) => title === 'mat')?.trouble).toMatchObject([
    { message: expect.stringContaining('does not say what it is on') },
  ])
})

test('a block that cannot be read shows what can be read, says so, and changes nothing', () => {
  const form = formOf(
    withCard('fold: gate\nclosed: 5 x 7 in\nbase: {stock: red card\nlayers:\n  mat: {on: back}'),
  )
  expect(form.editable).toBe(false)
  expect(form.fold).toBe('gate')
  expect(form.trouble.length).toBeGreaterThan(0)
  expect(field(form, 'closed')).toMatchObject({ text: '5 x 7 in' })
})

test('the parts of a free card that have no field are named', () => {
  const form = formOf(readFileSync('lessons/ferry-day.md', 'utf8'))
  expect(form.onlyInText).toEqual(expect.arrayContaining(['strips', 'sheets', 'bonds', 'stand']))
})

test('a lesson without such a card says so', () => {
  expect(formAt('1. Cut.\n', 'card')).toMatchObject({ refused: expect.stringContaining('no card') })
})
