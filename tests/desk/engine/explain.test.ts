import { readFileSync } from 'node:fs'
import { visit } from 'unist-util-visit'
import { describe, expect, test } from 'vitest'
import type { Settings } from '../../../src/desk/engine/engine.ts'
import { explainAt } from '../../../src/desk/engine/explain/explain-at.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const settings: Settings = { paper: 'a4', theme: 'step-sheet', people: 1, spare: 0 }
const harbour = readFileSync(new URL('../../../lessons/harbour-lights.md', import.meta.url), 'utf8')

const at = (words: string, into = 0, text = harbour): ReturnType<typeof explainAt> => {
  expect(text).toContain(words)
  return explainAt(text, text.indexOf(words) + into, settings)
}

describe('a measure', () => {
  test('every one of a lesson is explained with the very text that is printed', () => {
    let count = 0
    visit(fillLesson(readLesson(harbour)).tree, 'measure', ({ text, position }) => {
      const found = explainAt(harbour, (position?.start.offset ?? 0) + 2, settings)
      expect(found?.value).toBe(text)
      count++
    })
    expect(count).toBeGreaterThan(15)
  })

  test('has its value in both units, and where it comes from', () => {
    const found = at('{backdrop.border.left}', 4)
    expect(found).toMatchObject({ value: '1/16 in', other: '1.588 mm' })
    const line = harbour.slice(0, harbour.indexOf('border: {sides: 1/16 in')).split('\n').length
    expect(found?.lines).toContain(`Written in line ${line} as \`1/16 in\`.`)
    expect(harbour.slice(found?.from, found?.to)).toBe('backdrop.border.left')
  })

  test('of a print in millimetres is in those first', () => {
    const found = explainAt(harbour, harbour.indexOf('{closed.size}') + 3, {
      ...settings,
      closed: 'A6 landscape',
      units: 'mm',
    })
    expect(found).toMatchObject({ value: '148 × 105 mm', other: '5.827 × 4.134 in' })
    expect(found?.lines.join()).toContain('Asked for in this print')
  })

  test('says what it follows', () => {
    // The floor takes what legs and tabs leave of the shut width: all three are added up by hand here.
    const text = harbour.replace('{base.size}', '{floor.width}')
    const found = at('{floor.width}', 3, text)
    expect(found?.value).toBe('5 1/2 in')
    expect(found?.lines.join(' ')).toContain('It follows the width of the shut card.')
  })

  test('that is a sum has the value of the part that is pointed at', () => {
    const text = harbour.replace('{base.size}', '{base.width + 1/4 in}')
    expect(at('{base.width + 1/4 in}', 3, text)?.value).toBe('8 1/2 in')
    expect(at('{base.width + 1/4 in}', 15, text)?.value).toBe('8 3/4 in')
  })
})

describe('in the card block', () => {
  test('a fold and a key say what they are', () => {
    expect(at('bridge\nclosed', 2)?.lines[0]).toContain('A floor between two legs')
    expect(at('leg: 3/4', 1)?.lines[0]).toContain('Height of the two legs')
    expect(at('on: floor', 1)?.lines[0]).toContain('What it sits on')
  })

  test('a length that is worked out has its value, and each name in it has its own', () => {
    expect(at('height: closed.height / 2', 2)?.value).toBe('2 1/2 in')
    expect(at('closed.height / 2', 3)?.value).toBe('5 in')
  })

  test('a piece says how large it is', () => {
    expect(at('lighthouse: {', 3)?.value).toBe('1 × 3 1/2 in')
  })
})

test('words behind colons, attributes and kinds of figures say what they are', () => {
  expect(at(':minutes[4]', 3)?.lines).toEqual(['How long the step takes.'])
  expect(at('show=folding', 6)?.lines).toEqual(['How it folds, in stages.'])
  expect(at('show=folding', 1)?.lines).toEqual(['What is drawn.'])
  expect(at('level: improver', 1)?.lines).toEqual(['For whom it is.'])
})

test('plain words say nothing, and no place makes it fail', () => {
  expect(at('Two legs fold', 5)).toBeUndefined()
  for (let i = 0; i <= harbour.length; i += 11) {
    const found = explainAt(harbour, i, settings)
    if (found) expect(found.from <= i && i <= found.to).toBe(true)
    expect(JSON.stringify(found) ?? '').not.toMatch(/undefined|NaN|null/)
  }
})
