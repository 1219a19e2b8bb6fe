import { readdirSync, readFileSync } from 'node:fs'
import type { Nodes } from 'mdast'
import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import type { FilledLesson } from '../../src/lesson/lesson.ts'
import type { MeasureNode } from '../../src/lesson/nodes.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { lineAndColumn } from './line-and-column.ts'

/** What is written by hand beside each lesson: place, rule, the words at that place, and the cure. */
interface Expected {
  findings: [place: string, rule: string, at: string, suggestion?: string][]
  measures: (string | null)[]
  steps: [number: number, stage: string | null, minutes: number | null][]
}

const folder = new URL('fixtures/', import.meta.url)
const read = (path: string): string => readFileSync(new URL(path, folder), 'utf8')

const measuresIn = (node: Nodes): MeasureNode[] =>
  node.type === 'measure' ? [node] : 'children' in node ? node.children.flatMap(measuresIn) : []

const found = ({ findings }: FilledLesson, text: string, like: Expected['findings']) =>
  findings.map(({ place, rule, suggestion }, i) => {
    const at = text.slice(place?.offset, place?.end).replaceAll(/\r\n?/g, '\n')
    const told = [`${place?.line}:${place?.column}`, rule, at]
    return like[i]?.length === 3 ? told : [...told, suggestion]
  })

const variants: [string, (text: string) => string][] = [
  ['as it is', (text) => text],
  ['with CRLF', (text) => text.replaceAll('\n', '\r\n')],
  ['with CR', (text) => text.replaceAll('\n', '\r')],
  ['with a byte order mark', (text) => `\ufeff${text}`],
  ['with both', (text) => `\ufeff${text.replaceAll('\n', '\r\n')}`],
]

describe.each(readdirSync(folder))('fixtures/%s', (name) => {
  const expected: Expected = JSON.parse(read(`${name}/expected.json`))
  test.each(variants)('%s', (_, vary) => {
    const text = vary(read(`${name}/lesson.md`))
    const filled = fillLesson(readLesson(text))
    for (const { place } of filled.findings)
      expect(lineAndColumn(text, place?.offset ?? -1)).toEqual([place?.line, place?.column])
    expect(found(filled, text, expected.findings)).toEqual(expected.findings)
    expect(measuresIn(filled.tree).map((node) => node.text ?? null)).toEqual(expected.measures)
    expect(filled.steps.map((s) => [s.number, s.stage ?? null, s.minutes ?? null])).toEqual(expected.steps)
  })
})
