import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { shapeOf } from '../../../src/card/shape.ts'
import { evaluateLength, type Lookup } from '../../../src/length/evaluate.ts'
import { formatLength } from '../../../src/length/format.ts'
import { type Length, minus, mm, type Size, type Unit } from '../../../src/length/length.ts'
import { parseMeasure } from '../../../src/length/parse.ts'
import type { Explained } from '../../../src/workshop/explain/explained.ts'
import { explained } from './explained.ts'

const folder = fileURLToPath(new URL('../../../lessons/', import.meta.url))
const units: readonly Unit[] = ['in', 'mm']
const cases = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .flatMap((name) => units.map((unit) => [name, unit] as const))

/** What a formula comes to when the names in it are looked up there. */
const comesTo = (text: string, lookup: Lookup): Length =>
  evaluateLength(parseMeasure(text).expression, lookup)

describe.each(cases)('%s in %s', (name, unit) => {
  const cards = explained(readFileSync(folder + name, 'utf8'), unit)

  test('every formula comes to its number, rounded as it says', () => {
    for (const { card, numbers } of cards) {
      const formed = numbers.filter(({ source }) => source.kind === 'formula')
      expect(formed.length).toBeGreaterThan(5)
      for (const { name, value, source, rounding } of formed) {
        if (source.kind !== 'formula') continue
        const off = minus(value, comesTo(source.text, card.names.lookup))
        const isClose = off.abs().lt(card.grid)
        const happened = off.equals(0) ? 'none' : isClose ? (off.s < 0n ? 'down' : 'up') : 'rest'
        expect([name, source.text, happened]).toEqual([name, source.text, rounding])
      }
    }
  })

  test('and over the exact lengths to the exact number', () => {
    for (const { numbers } of cards) {
      const exact = new Map(numbers.map((one) => [one.name, one.exact]))
      const lookup: Lookup = (path) => {
        const value = exact.get(path.join('.'))
        if (!value) throw new Error(path.join('.'))
        return { kind: 'length', value }
      }
      for (const { name, exact: wanted, source } of numbers)
        if (source.kind === 'formula' && wanted)
          expect([name, Number(comesTo(source.text, lookup))]).toEqual([name, Number(wanted)])
    }
  })

  test('a length without names in it is off by less than a mark, and to the side it says', () => {
    for (const { card, numbers } of cards)
      for (const { name, value, exact, source, rounding } of numbers) {
        if (!exact || source.kind !== 'parameter' || !isPlain(source.text)) continue
        const off = minus(value, exact)
        const side = off.equals(0) ? 'none' : off.s < 0n ? 'down' : 'up'
        expect([name, off.abs().lt(card.grid)]).toEqual([name, true])
        expect([name, rounding === 'nearest' ? 'nearest' : side]).toEqual([name, rounding])
      }
  })

  test('what is fixed stays, and what follows one side stays when only the other changes', () => {
    const side = fc.integer({ min: 180, max: 320 })
    for (const { card, numbers, at } of cards) {
      const asked = numbers.filter(({ name, follows }) => follows && isNamed(name))
      // With its spine on the short side a card that stands the other way is another one.
      const standing = (size: Size) => (shapeOf(size) === shapeOf(card.closed) ? at(size) : undefined)
      fc.assert(
        fc.property(side, side, (w, h) => {
          const closed = { width: mm(w), height: mm(h) }
          const both = standing(closed)
          fc.pre(both !== undefined)
          for (const one of asked) {
            if (isFree(one)) expect(said(one, both)).toEqual(said(one, card))
          }
          const wider = standing({ width: closed.width, height: card.closed.height })
          for (const one of asked)
            if (wider && !follows(one, 'width')) expect(said(one, wider)).toEqual(said(one, card))
          const higher = standing({ width: card.closed.width, height: closed.height })
          for (const one of asked)
            if (higher && !follows(one, 'height')) expect(said(one, higher)).toEqual(said(one, card))
        }),
        { numRuns: 12, seed: 7 },
      )
    }
  })
})

/** Marks of cuts have no name to ask for; marks of scores change their places among each other. */
const isNamed = (name: string): boolean => !name.includes(',') && !/ (width|height)$/.test(name)

const isFree = ({ follows }: Explained): boolean => follows?.every(({ of }) => of === 'thickness') ?? false

const follows = ({ follows }: Explained, side: 'width' | 'height'): boolean =>
  follows?.some(({ of }) => of === side || of === 'size' || of === 'ruler') ?? true

/** A length as it is written, such as `3/4 in`: neither worked out nor the name of a sheet. */
const isPlain = (text: string): boolean => /^[\d ./]+(in|mm)$/.test(text)

/** A number as a card prints it, with its name. */
function said({ name }: Explained, card: { names: { lookup: Lookup }; unit: Unit } | undefined): string {
  const value = card?.names.lookup(name.split('.'), { start: 0, end: 0 })
  return `${name}: ${value?.kind === 'length' ? formatLength(value.value, 'mm') : value?.kind}`
}
