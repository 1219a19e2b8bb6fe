import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { freeKeys } from '../../src/card/folds/free.ts'
import { type CatalogueFold, catalogue, groupsOf } from '../../src/workshop/catalogue.ts'
import { catalogueText } from '../../src/workshop/catalogue-text.ts'
import { foldText } from '../../src/workshop/fold-text.ts'
import { provenStarter } from '../../src/workshop/starter-card.ts'
import { units } from '../card/sizes.ts'

const folds = [...catalogue.values()]
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => [...line].length))

test('it has every fold, and last the one for a card of one’s own with all its keys', () => {
  expect(folds.map(({ name }) => name)).toEqual([...foldStyles.keys(), 'free'])
  expect(Object.keys(catalogue.get('free')?.parts ?? {}).toSorted()).toEqual([...freeKeys].toSorted())
})

test('every fold stands under what it has in common with others, in the order of the catalogue', () => {
  const groups = groupsOf(folds)
  expect(groups.map(({ title }) => title)).not.toContain('Other folds')
  expect(groups.flatMap((group) => group.folds.map(({ name }) => name))).toEqual(
    folds.map(({ name }) => name),
  )
})

test('a new fold that nobody has sorted yet is not lost', () => {
  const fold: CatalogueFold = { ...(folds[0] as CatalogueFold), name: 'fan' }
  expect(
    groupsOf([...folds, fold])
      .map(({ title }) => title)
      .slice(-2),
  ).toEqual(['Other folds', 'A card of your own'])
})

describe('a terminal of 80 columns shows', () => {
  const text = catalogueText(folds)
  test('the whole catalogue', () => expect(widest(text)).toBeLessThanOrEqual(80))

  test('every fold with all its words, and a drawing of at least three lines', () => {
    for (const { name, summary } of folds) {
      const entry = text.split(`\n  ${name}\n`)[1]?.split(/\n\n/)[0] ?? ''
      const lines = entry.split('\n')
      const words = lines.map((line) => line.slice(4).split(/ {2,}/).at(-1) ?? '').join(' ')
      for (const word of summary.split(' ')) expect(words, name).toContain(word)
      expect(lines.filter((line) => /^ {4}[ +|\-:!]*[+|]/.test(line)).length, name).toBeGreaterThan(2)
    }
  })

  test.each(folds.flatMap((fold) => units.map((unit) => ({ fold, unit, name: fold.name }))))(
    '$name in $unit',
    ({ fold, unit }) => expect(widest(foldText(fold, provenStarter(fold, unit)))).toBeLessThanOrEqual(80),
  )
})
