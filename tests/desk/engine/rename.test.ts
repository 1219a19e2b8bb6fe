import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Edit } from '../../../src/desk/engine/engine.ts'
import { referencesIn } from '../../../src/desk/engine/rename/references.ts'
import { renamableAt, renameAt } from '../../../src/desk/engine/rename/rename.ts'
import { applyEdits } from '../../../src/lesson/edits.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { formatValue } from '../../../src/lesson/measure.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { ruleDocs } from '../../../src/lesson/rules/rules.ts'

const lessons = new URL('../../../lessons/', import.meta.url)
const texts = readdirSync(lessons)
  .filter((name) => name.endsWith('.md'))
  .map((name) => [name, readFileSync(new URL(name, lessons), 'utf8')] as const)
const harbour = readFileSync(new URL('harbour-lights.md', lessons), 'utf8')

const made = (text: string, edits: readonly Edit[]): string =>
  applyEdits(
    text,
    edits.map(({ from, to, insert }) => ({ start: from, end: to, text: insert })),
  )

function renamed(text: string, at: number, to: string): string {
  const edits = renameAt(text, at, to)
  if (!Array.isArray(edits)) throw new Error(JSON.stringify(edits))
  return made(text, edits)
}

/** Every measure of a lesson with its value, and every finding that is not about its words. */
function saidBy(text: string): { measures: Map<string, string>; findings: string[] } {
  const { cards, findings, unit } = fillLesson(readLesson(text))
  const aboutWords = new Set(ruleDocs.map(({ name }) => name))
  return {
    measures: new Map(
      cards.flatMap(({ card }) =>
        card.names
          .paths()
          .map(
            (path) =>
              [
                `${card.name}: ${path}`,
                formatValue(card.names.lookup(path.split('.'), { start: 0, end: 0 }), unit),
              ] as const,
          ),
      ),
    ),
    findings: findings
      .filter(({ rule }) => !aboutWords.has(rule))
      .map(({ rule, message }) => `${rule} ${message}`),
  }
}

describe('a name is given anew everywhere', () => {
  test.each(texts)('%s has the same measures and findings afterwards but for the name', (_, text) => {
    const before = saidBy(text)
    const seen = new Set<string>()
    for (const { name, from, card } of referencesIn(readLesson(text))) {
      if (seen.has(`${card} ${name}`)) continue
      seen.add(`${card} ${name}`)
      // Only a few of each lesson: reading it again takes its time.
      if (seen.size > 2) break
      const after = saidBy(renamed(text, from, 'quay marker'))
      const swap = (said: string): string => said.replaceAll('quay marker', name)
      expect(new Map([...after.measures].map(([path, value]) => [swap(path), swap(value)]))).toEqual(
        new Map([...before.measures].map(([path, value]) => [path, value])),
      )
      expect(after.findings.map(swap)).toEqual(before.findings)
    }
    expect(seen.size).toBeGreaterThan(0)
  })

  test('with its ordinary words changed too it is the same lesson in other words', () => {
    const at = harbour.indexOf('lighthouse: {size')
    const after = renamed(harbour, at, 'buoy').replace(/lighthouse/g, 'buoy')
    const findings = (text: string): string[] =>
      fillLesson(readLesson(text)).findings.map(({ rule, message }) => `${rule} ${message}`)
    expect(findings(after)).toEqual(findings(harbour.replace(/lighthouse/g, 'buoy')))
  })

  test('it is found from wherever it stands, and all places are changed', () => {
    const places = [...harbour.matchAll(/(?<=\{|="?|on: |^ {2})sea wall(?=[.:"\n])/gm)].map(
      ({ index }) => index,
    )
    expect(places.length).toBeGreaterThan(3)
    const results = new Set(places.map((at) => renamed(harbour, at + 2, 'mole')))
    expect(results.size).toBe(1)
    const [text = ''] = results
    expect(text.match(/(?<=\{|="|=|on: |^ {2})sea wall/gm)).toBeNull()
    expect(text).toContain('{mole.size}')
    // The words are the teacher's.
    expect(text).toContain('Lay the sea wall across in the same way')
  })

  test('a part of it stands for it', () => {
    const at = harbour.indexOf('{sea wall.size}') + '{sea wall.si'.length
    expect(renamableAt(harbour, at)?.name).toBe('sea wall')
    expect(renamableAt(harbour, harbour.indexOf('{closed.size}') + 9)).toBeUndefined()
  })

  test('and back again gives the very same text, but for quotation marks that a name once needed', () => {
    const at = harbour.indexOf('sea wall: {')
    const there = renamed(harbour, at, 'north pier')
    expect(renamed(there, there.indexOf('north pier: {'), 'sea wall')).toBe(harbour)
  })

  test('a figure gets quotation marks for a name of several words', () => {
    const at = harbour.indexOf('beam: {')
    expect(renamed(harbour, at, 'light beam')).toContain('{show=place of="light beam"}')
  })

  test('in lines that end with CR LF, in quotation marks and in supplies', () => {
    const text = harbour
      .replace('beam: {height', '"beam": {height')
      .replace('pearl dots: 5', 'ribbon: beam.width * 2')
      .replaceAll('\n', '\r\n')
    const after = renamed(text, text.indexOf('"beam"') + 2, 'ray')
    expect(after).toContain('"ray": {height')
    expect(after).toContain('ribbon: ray.width * 2')
    expect(after.replaceAll('\r\n', '')).not.toContain('\n')
  })

  test('of two cards with a piece of one name only the one that is meant changes', () => {
    const box = '```card box\nfold: side\nclosed: 3 x 4 in\npieces:\n  beam: {size: 1 x 1 in}\n```\n'
    const text = harbour
      .replaceAll('{beam.size}', '{card.beam.size}')
      .replaceAll('of=beam}', 'of=card.beam}')
      .replace('## The base', `${box}\nCut {box.beam.size}.\n\n## The base`)
    const after = renamed(text, text.indexOf('beam: {size'), 'lid')
    expect(after).toContain('{box.lid.size}')
    expect(after).toContain('{card.beam.size}')
    expect(after).toContain('of=card.beam}')
    expect(after).toContain('  beam: {height')
  })
})

describe('it is refused', () => {
  const at = harbour.indexOf('lighthouse: {size')
  test.each([
    ['floor', 'already'],
    ['beam', 'already'],
    ['name', 'already'],
    ['base', 'already'],
    ['card', 'already'],
    ['envelope', 'already'],
    ['', 'empty'],
    ['x', 'cannot be a name'],
    ['a: b', 'cannot be a name'],
    ['7 up', 'cannot be a name'],
    ['wall + sea', 'cannot be a name'],
    ['{wall}', 'cannot be a name'],
  ])('to be called `%s`', (name, why) => {
    const answer = renameAt(harbour, at, name)
    expect(answer).toHaveProperty('refused')
    expect('refused' in answer && answer.refused).toContain(why)
  })

  test('where nothing of the card is named', () => {
    const words = harbour.indexOf('Two legs fold up')
    expect(renamableAt(harbour, words)).toBeUndefined()
    expect(renameAt(harbour, words, 'pier')).toHaveProperty('refused')
    expect(renamableAt(harbour, harbour.indexOf('floor\n'))).toBeUndefined()
  })

  test('a name that it has already changes nothing', () => {
    expect(renameAt(harbour, at, ' lighthouse ')).toEqual([])
  })
})
