import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { curesOf } from '../../../src/desk/engine/cures.ts'
import type { Cure } from '../../../src/desk/engine/engine.ts'
import { errorsIn, type Finding } from '../../../src/length/finding.ts'
import { applyEdits } from '../../../src/lesson/edits.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { exampleLesson } from '../../../src/lesson/rules/example.ts'
import { ruleDocs } from '../../../src/lesson/rules/rules.ts'

const folder = (path: string): string[] => {
  const from = new URL(`../../../${path}/`, import.meta.url)
  return readdirSync(from)
    .filter((name) => name.endsWith('.md'))
    .map((name) => readFileSync(new URL(name, from), 'utf8'))
}
/** A short lesson with something of everything. */
const harbour = `---
title: Harbour wall
level: improver
---

\`\`\`card
fold: bridge
closed: 7 x 5 in
leg: 3/4 in
base: {stock: blue card, weight: 300 gsm}
layers:
  backdrop:
    on: floor
    border: {sides: 1/16 in, ends: 0 in}
    stock: patterned paper
    direction: upright
  side strip: {on: [left tab, right tab], border: 0 in, stock: patterned paper}
spans:
  sea wall: {height: 1 1/4 in, stock: vellum}
  beam: {height: 1 in, at: middle, stock: vellum}
lettering:
  name: {on: sea wall, letters: HARBOUR, widths: 5/8 in, margin: 1/4 in}
pieces:
  lighthouse: {size: 1 x 3 1/2 in, stock: white card}
envelope: {make: diagonal, clearance: 1/4 in}
\`\`\`

1. Cut the base to {base.size} and the backdrop to {backdrop.size}. :minutes[4]

   ::figure[The base]{show=flat of=base label=size}

   :::caution{about=blades}
   Keep the holding hand behind the blade.
   :::

2. Cut the lighthouse, {lighthouse.size}. :minutes[5]

   :::tip
   Heavy card cracks at the others.
   :::
`

const lookedAt = (text: string) => {
  const lesson = readLesson(text)
  return { lesson, filled: fillLesson(lesson) }
}

const made = (text: string, { edits }: Cure): string =>
  applyEdits(
    text,
    edits.map(({ from, to, insert }) => ({ start: from, end: to, text: insert })),
  )

const count = (findings: readonly Finding[], { rule, message }: Finding): number =>
  findings.filter((one) => one.rule === rule && one.message === message).length

/** Tries every cure of every finding of a lesson: what did not cure, and how many there were by rule. */
function tryAll(text: string): { failed: string[]; tried: Map<string, number> } {
  const kept = lookedAt(text)
  const failed: string[] = []
  const tried = new Map<string, number>()
  for (const finding of kept.filled.findings)
    for (const cure of curesOf(finding, text, kept)) {
      const after = lookedAt(made(text, cure)).filled.findings
      tried.set(finding.rule, (tried.get(finding.rule) ?? 0) + 1)
      const isGone = count(after, finding) < count(kept.filled.findings, finding)
      const more = errorsIn(after).filter((error) => count(kept.filled.findings, error) === 0)
      // A card that can be built at last may have mistakes that nobody could see before.
      const isWorse = kept.filled.cards.length === kept.lesson.cards.length && more.length > 0
      if (!isGone || isWorse)
        failed.push(
          `${finding.rule}: ${finding.message} (${finding.suggestion}) is not cured by ${cure.words}: ${after.map(({ message }) => message)}`,
        )
    }
  return { failed, tried }
}

/** Rules that a list of lessons is cured of; every cure of theirs is tried. */
function curedIn(texts: readonly string[]): Map<string, number> {
  const all = new Map<string, number>()
  for (const text of texts) {
    const { failed, tried } = tryAll(text)
    expect(failed).toEqual([])
    for (const [rule, times] of tried) all.set(rule, (all.get(rule) ?? 0) + times)
  }
  return all
}

describe('every cure cures', () => {
  test('of what the rules of the manual are told by', () => {
    const cured = curedIn(ruleDocs.map(exampleLesson))
    for (const rule of [
      'unknown-piece',
      'ambiguous-name',
      'unlisted-tool',
      'unused-supply',
      'class-time',
      'untimed-step',
      'step-without-figure',
      'loose-measure',
      'loose-time',
    ])
      expect(cured.get(rule), rule).toBeGreaterThan(0)
  })

  test('of the plain numbers of tutorials that were written by hand', () => {
    const cured = curedIn(folder('tests/data/hand-written').slice(0, 2))
    expect(cured.get('loose-measure')).toBeGreaterThan(5)
  })

  test('of every word of a lesson in which a letter was left out', () => {
    const cured = curedIn(slips())
    for (const rule of [
      'unknown-fold',
      'unknown-key',
      'unknown-name',
      'unknown-directive',
      'unknown-attribute',
      'unknown-figure',
      'unknown-piece',
      'unknown-hazard',
      'value',
    ])
      expect(cured.get(rule), rule).toBeGreaterThan(0)
  })

  test.each([
    ['a length without its unit', 'leg: 3/4 in', 'leg: 3', 'no-unit'],
    ['a leg that leaves no floor', 'leg: 3/4 in', 'leg: 4 in', 'impossible-size'],
    ['a border below nothing', 'border: 0 in', 'border: -1/8 in', 'sticks-out'],
    ['a span that is too high', 'height: 1 1/4 in,', 'height: 6 in,', 'sticks-out'],
    ['letters that are too wide', 'widths: 5/8 in', 'widths: 2 in', 'letters-too-wide'],
    ['a layer that would buckle', 'border: {sides: 1/16 in, ends: 0 in}', 'border: 0 in', 'setback'],
    [
      'a layer that would buckle at its sides',
      'border: {sides: 1/16 in, ends: 0 in}',
      'border: {sides: 0 in, ends: 0 in}',
      'setback',
    ],
    [
      'a call-out that is never closed',
      'cracks at the others.\n   :::\n',
      'cracks at the others.\n',
      'open-callout',
    ],
    ['a name for which there are several parts', '{lighthouse.size}', '{lighthouse.sise}', 'unknown-name'],
  ])('of %s', (_, old, wrong, rule) => {
    expect(harbour).toContain(old)
    const { failed, tried } = tryAll(harbour.replace(old, wrong))
    expect(failed).toEqual([])
    expect(tried.get(rule)).toBeGreaterThan(0)
  })
})

/** Lessons with a letter less in a word that means something to us. */
function slips(): string[] {
  const words = [
    ...harbour.matchAll(
      /(?<=[\s{,[]|^)[a-z]{4,}(?=:(?:\s|$))|(?<=\{)[a-z][a-z ]+(?=\.)|(?<=(?:show|of|about)="?)[a-z]{4,}|(?<=[{ ])(?:show|label|about)(?==)|(?<=: )(?:bridge|vellum|floor|diagonal|improver|middle|upright)|(?<=:::?)[a-z]{4,}/gm,
    ),
  ]
  const seen = new Set<string>()
  return words.flatMap(({ index, 0: word }) => {
    const kind = `${harbour[index - 1]}${word}`
    if (seen.has(kind)) return []
    seen.add(kind)
    return [harbour.slice(0, index + 1) + harbour.slice(index + 2)]
  })
}

test('a cure of a finding touches nothing but what it is about', () => {
  const wrong = harbour.replace('fold: bridge', 'fold: "brige"').replaceAll('\n', '\r\n')
  const kept = lookedAt(wrong)
  const [finding] = kept.filled.findings.filter(({ rule }) => rule === 'unknown-fold')
  const [cure] = finding ? curesOf(finding, wrong, kept) : []
  expect(cure?.words).toBe('Write `bridge`')
  expect(cure && made(wrong, cure)).toBe(wrong.replace('brige', 'bridge'))
})

test('an example in a suggestion is no cure', () => {
  const wrong = harbour.replace('leg: 3/4 in', 'leg: in')
  const kept = lookedAt(wrong)
  const errors = errorsIn(kept.filled.findings)
  expect(errors.length).toBeGreaterThan(0)
  for (const finding of errors) expect(curesOf(finding, wrong, kept)).toEqual([])
})
