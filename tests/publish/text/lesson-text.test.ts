import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import type { Nodes, Root } from 'mdast'
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table'
import { gfmTable } from 'micromark-extension-gfm-table'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'
import { describe, expect, test } from 'vitest'
import type { FilledLesson } from '../../../src/lesson/lesson.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { unitsOf } from '../../../src/lesson/sizes/offered.ts'
import { type LessonText, lessonText, TooShortError } from '../../../src/publish/text/lesson-text.ts'
import { leftOutText, parts } from '../../../src/publish/text/parts.ts'
import { sizeChart } from '../../../src/workshop/size-chart.ts'
import { filled, pierText, plainLesson } from '../lesson.ts'

const folder = new URL('../../../lessons/', import.meta.url)
const lessons = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const)
const harbour = readFileSync(new URL('harbour-lights.md', folder), 'utf8')

/** Any other Markdown program. */
function parsed(text: string): Root {
  const processor = unified().use(remarkParse)
  const data = processor.data() as { micromarkExtensions?: unknown[]; fromMarkdownExtensions?: unknown[] }
  data.micromarkExtensions = [gfmTable()]
  data.fromMarkdownExtensions = [gfmTableFromMarkdown()]
  return processor.parse(text)
}

const wordsOf = (node: Nodes): string =>
  'value' in node ? node.value : 'children' in node ? node.children.map(wordsOf).join('') : ''

function strongIn(tree: Root): string[] {
  const found: string[] = []
  visit(tree, 'strong', (node) => {
    found.push(wordsOf(node))
  })
  return found
}

function measuresIn({ tree }: FilledLesson): string[] {
  const found: string[] = []
  visit(tree, 'measure', ({ text }) => {
    found.push(text ?? '')
  })
  return found
}

describe.each(lessons)('%s', (_, source) => {
  test.each(['in', 'mm'] as const)(
    'in %s, another Markdown program reads the same measures and steps',
    (units) => {
      const lesson = filled(source, { units })
      const tree = parsed(lessonText(lesson, { as: 'md' }).text)
      const measures = measuresIn(lesson)
      expect(measures.length).toBeGreaterThan(3)
      expect(strongIn(tree).filter((text) => measures.includes(text))).toEqual(measures)
      const numbers: number[] = []
      visit(tree, 'list', ({ ordered, start, children }) => {
        if (ordered) numbers.push(...children.map((__, i) => (start ?? 1) + i))
      })
      expect(numbers).toEqual(lesson.steps.map(({ number }) => number))
    },
  )

  test('every piece stands in it with its size, and nothing of how a lesson is written', () => {
    const lesson = filled(source)
    for (const as of ['text', 'md'] as const) {
      const { text, leftOut } = lessonText(lesson, { as })
      expect(leftOut).toEqual([])
      for (const { card } of lesson.cards)
        for (const { name } of card.structure.pieces)
          expect(text).toMatch(new RegExp(`^[-*] ${name}(, \\d+ of them)?: \\d`, 'm'))
      expect(text).not.toMatch(/undefined|NaN|null|:::|::figure|:minutes|[{}]|[\u00a0\u202f\u2044]/)
    }
  })
})

describe('a limit', () => {
  const lesson = filled(harbour)
  const sizes = sizeChart(readLesson(harbour), lesson, unitsOf(lesson.frontMatter))
  const whole = lessonText(lesson, { as: 'text', sizes, chapters: true }).text
  const least = (): number => {
    try {
      lessonText(lesson, { as: 'text', sizes, chapters: true, limit: 1 })
      return 0
    } catch (error) {
      return (error as TooShortError).least
    }
  }

  const lines = whole.split('\n').map((line) => line.trim())
  /** Whether a line is one of the whole text, or as much of it as goes to the end of a sentence. */
  const isWhole = (line: string): boolean =>
    lines.includes(line) || (/[.!?]$/.test(line) && lines.some((other) => other.startsWith(`${line} `)))

  test('is kept; no sentence is cut, and no more is left out than must be', () => {
    const low = least()
    expect(low).toBeGreaterThan(500)
    fc.assert(
      fc.property(
        fc.integer({ min: low, max: whole.length + 50 }),
        fc.constantFrom('text', 'md'),
        (limit, as) => {
          let told: LessonText
          try {
            told = lessonText(lesson, { as, sizes, chapters: true, limit })
          } catch (error) {
            expect(error).toBeInstanceOf(TooShortError)
            return as === 'md' && (error as TooShortError).least > limit
          }
          const { text, characters, leftOut } = told
          expect([text.length, text.length <= limit]).toEqual([characters, true])
          expect(text.includes('Left out here')).toBe(leftOut.length > 0)
          // Without the steps their cautions stand under a heading.
          const own = [
            leftOutText(leftOut, lesson.wording),
            'Take care',
            'Local rules and the maker’s instructions come first.',
          ]
          if (as === 'text')
            for (const line of text.split('\n'))
              expect(own.includes(line) || isWhole(line.trim()), line).toBe(true)
          return true
        },
      ),
      { numRuns: 25 },
    )
  })

  test('leaves the parts out in their order; where all fits, nothing', () => {
    const left = (limit: number) => lessonText(lesson, { as: 'text', limit }).leftOut
    const { length } = lessonText(lesson, { as: 'text' }).text
    expect(left(length)).toEqual([])
    expect(left(length - 1).length).toBeGreaterThan(0)
    const order = left(3000)
    expect(order).toEqual([...order].sort((a, b) => parts.indexOf(a) - parts.indexOf(b)))
    expect(order).toContain('tips')
    expect(lessonText(lesson, { as: 'text', limit: length - 200 }).text).toMatch(
      /\nLeft out here: the captions of the figures/,
    )
  })

  test('never leaves out a piece or a caution, of the lesson or of its tools', () => {
    const children = filled(harbour.replace('level: improver', 'level: improver\nfor: children'))
    expect(children.cautions.length).toBeGreaterThan(1)
    let low = 0
    try {
      lessonText(children, { as: 'text', limit: 10 })
    } catch (error) {
      low = (error as TooShortError).least
    }
    const { text, leftOut } = lessonText(children, { as: 'text', limit: low })
    expect(leftOut).toEqual(expect.arrayContaining(['steps', 'supplies', 'summary']))
    for (const caution of children.cautions) expect(text).toContain(caution.text)
    for (const own of [
      'sharp blade against the steel ruler',
      'rollers of the machine',
      'choke a small child',
    ])
      expect(text).toContain(own)
    expect(text).toContain('Local rules and the maker’s instructions come first.')
    expect(text).toContain('base: 8 1/2 × 5 in')
    expect(text).not.toContain('Lay the sea wall across')
  })
})

test('the chart of sizes: tables in Markdown, and for plain text a list for each size', () => {
  const lesson = filled(harbour)
  const sizes = sizeChart(readLesson(harbour), lesson, ['in'])
  const md = lessonText(lesson, { as: 'md', sizes }).text
  const tables: string[][] = []
  visit(parsed(md), 'table', ({ children }) => {
    tables.push(...children.map((row) => row.children.map(wordsOf)))
  })
  expect(tables[0]).toEqual(['piece', '7 × 5 in', '6 × 6 in', 'A6 landscape', '180 × 120 mm'])
  expect(tables).toContainEqual([
    'base (dark blue card)',
    '8 1/2 × 5',
    '7 1/2 × 6',
    '7 5/16 × 4 1/8',
    '8 9/16 × 4 11/16',
  ])
  const text = lessonText(lesson, { as: 'text', sizes }).text
  expect(text).toMatch(/\n6 × 6 in, in inches\n\n- shut card: 6 × 6\n- base \(dark blue card\): 7 1\/2 × 6\n/)
})

test('call-outs say what they are, links where they lead, and drying what waits for it', () => {
  const lesson = plainLesson(
    '1. Glue it as in [the film](https://example.com/film). :drying[20 min]\n\n   :::tip[Neat corners]\n   Press.\n   :::\n\n2. Then *wait*. <b>x</b>\n\n   | a | b |\n   |---|---|\n   | 1 | 2 |\n',
  )
  expect(lessonText(lesson, { as: 'text' }).text).toContain(
    '1. Glue it as in the film (https://example.com/film).\n   Tip, Neat corners: Press.\n   Dries 20 min before step 2.\n\n2. Then wait. x\n   a | b\n   1 | 2\n',
  )
  const md = lessonText(lesson, { as: 'md' }).text
  expect(md).toContain('[the film](https://example.com/film)')
  expect(md).toContain('**Tip, Neat corners:** Press.')
})

test('what looks like Markdown in the words is the same words again', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[A-Za-z][A-Za-z *_#`.>[\]()!|~-]{0,30}[A-Za-z]$/), (words) => {
      const lesson = plainLesson(`1. ${words.replace(/[^A-Za-z ]/g, '\\$&')}`)
      const read = parsed(lessonText(lesson, { as: 'md' }).text)
      expect(wordsOf(read).replace(/\s+/g, ' ')).toContain(words.replace(/\s+/g, ' '))
    }),
    { numRuns: 60 },
  )
})

test('a lesson with everything in it is told', () => {
  const lesson = filled(pierText)
  expect(lessonText(lesson, { as: 'text', chapters: true }).text).not.toMatch(/undefined|NaN|null/)
})
