import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import type { ListItem, Nodes } from 'mdast'
import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../../src/card/fold-styles.ts'
import { applyEdits } from '../../../src/lesson/edits.ts'
import { lineBelow } from '../../../src/lesson/figures/edit.ts'
import { putFiguresIn } from '../../../src/lesson/figures/put-in.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import type { FigureNode } from '../../../src/lesson/nodes.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { starterLesson } from '../../../src/workshop/starter.ts'

const folder = new URL('../../../lessons/', import.meta.url)
const lessons = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
const starters = ['side', 'gate', 'bridge', 'easel', 'tunnel', 'v-fold', 'joy'].map((name) => {
  const style = foldStyles.get(name)
  if (!style) throw new Error(`There is no fold ${name}`)
  return starterLesson(style)
})

const put = (text: string) => putFiguresIn(text, () => true)
const findings = (text: string) =>
  fillLesson(readLesson(text)).findings.map(({ rule, severity }) => `${severity} ${rule}`)

function figuresIn(node: Nodes, step?: number): { step: number | undefined; figure: FigureNode }[] {
  if (node.type === 'figure') return [{ step, figure: node }]
  const own = node.type === 'listItem' ? node.data?.step : undefined
  return 'children' in node ? node.children.flatMap((child) => figuresIn(child as Nodes, own ?? step)) : []
}

/** A file in its lines, each with its ending. */
const linesOf = (text: string): string[] => text.match(/[^\r\n]*(?:\r\n|\r|\n)|[^\r\n]+$/g) ?? []

/** The lines that have come in, if all others are there as they were, byte for byte. */
function newLines(before: string, after: string): string[] {
  const old = linesOf(before)
  let next = 0
  const come: string[] = []
  for (const line of linesOf(after)) {
    const isLast = next === old.length - 1 && line.replace(/[\r\n]+$/, '') === old[next]
    if (next < old.length && (line === old[next] || isLast)) next++
    else come.push(line)
  }
  expect(next).toBe(old.length)
  return come
}

/** Ways in which a lesson may be written; its steps stay what they are. */
const ways = {
  'its own figures gone': (text: string) => text.replace(/^[ \t]*::figure.*\n\n?/gm, ''),
  'every second figure gone': (text: string) => {
    let n = 0
    return text.replace(/^[ \t]*::figure.*\n\n?/gm, (all) => (n++ % 2 === 0 ? '' : all))
  },
  'tabs behind the numbers': (text: string) =>
    text.replace(/^(\d)\. /gm, '$1.\t').replace(/^ {3}(?=\S)/gm, '\t'),
  'tight lists': (text: string) => text.replace(/\n\n(?=\d+\. )/g, '\n'),
  'brackets behind the numbers': (text: string) => text.replace(/^(\d+)\. /gm, '$1) '),
  'spaces at the ends of lines': (text: string) => text.replace(/(:minutes\[\d+\])$/gm, '$1 '),
  'long lines broken': (text: string) => text.replace(/^(\d+\. \S+ \S+ \S+) (?=[a-z])/gm, '$1\n   '),
  'lazy lines': (text: string) => text.replace(/^(\d+\. \S+ \S+ \S+) (?=[a-z])/gm, '$1\n'),
  'lists pushed in': (text: string) => text.replace(/^(\d\. )/gm, ' $1').replace(/^ {3}(?=\S)/gm, '    '),
  'no line at the end': (text: string) => text.trimEnd(),
  CRLF: (text: string) => text.replaceAll('\n', '\r\n'),
  CR: (text: string) => text.replaceAll('\n', '\r'),
  'a byte order mark': (text: string) => `\ufeff${text}`,
}

test('the lessons and starters have all the figures that their steps are offered', () => {
  for (const text of [...lessons, ...starters]) expect(put(text)).toEqual({ text, placed: [] })
})

test('figures go in below their steps, every other byte stays, and a second time nothing is left to do', () => {
  const names = Object.keys(ways) as (keyof typeof ways)[]
  const text = fc.constantFrom(...starters, ...lessons)
  fc.assert(
    fc.property(text, fc.subarray(names), fc.boolean(), (whole, chosen, all) => {
      const some = all ? ['its own figures gone' as const, ...chosen] : chosen
      const before = names.filter((name) => some.includes(name)).reduce((t, name) => ways[name](t), whole)
      const { text: after, placed } = put(before)
      const come = newLines(before, after).filter((line) => line.replace(/[\s>]/g, '') !== '')
      expect(come).toHaveLength(placed.length)
      for (const line of come) expect(line).toMatch(/^[ \t]+::figure\[.*\]\{show=.*\}[\r\n]*$/)
      const [was, is] = [before, after].map((one) => figuresIn(readLesson(one).tree))
      expect(is).toHaveLength((was?.length ?? 0) + placed.length)
      for (const { step, show, of } of placed) {
        const own = is?.filter((one) => one.step === step).map(({ figure }) => [figure.show, figure.of])
        expect(own).toEqual([[show, of]])
      }
      expect(put(after)).toEqual({ text: after, placed: [] })
      // Nothing else is wrong with it than before.
      expect(findings(after)).toEqual(findings(before).filter((told) => told !== 'hint step-without-figure'))
    }),
    { numRuns: 12 },
  )
}, 120_000)

test('what cannot be drawn is left out', () => {
  const bare = ways['its own figures gone'](starters[1] ?? '')
  const { placed } = putFiguresIn(bare, ({ show }) => show !== 'flat')
  expect(put(bare).placed.map(({ show }) => show)).toContain('flat')
  expect(placed.map(({ show }) => show)).not.toContain('flat')
})

test('names with marks of Markdown in them come back as they are', () => {
  const name = 'a "b" & [c]_d_'
  const text = [
    '---\ntitle: Names\n---\n',
    `\`\`\`card\nfold: bridge\nclosed: 7 x 5 in\nspans:\n  '${name}': {height: 1 in, at: top, stock: paper}\n\`\`\`\n`,
    '1. Cut the base to {base.size} and score it at {base.scores}.',
    `2. Stick the ${name.replace(/[[\]_&]/g, '\\$&')} on the tabs.\n`,
  ].join('\n')
  const { text: after, placed } = put(text)
  expect(placed.map(({ step, of }) => [step, of])).toEqual([
    [1, 'base'],
    [2, name],
  ])
  expect(figuresIn(readLesson(after).tree).map(({ figure }) => figure.of)).toEqual(['base', name])
})

describe('a line below a step in quotations and lists', () => {
  const items = (node: Nodes): ListItem[] =>
    node.type === 'listItem'
      ? [node, ...node.children.flatMap(items)]
      : 'children' in node
        ? node.children.flatMap((child) => items(child as Nodes))
        : []
  const within = (node: Nodes): number => figuresIn(node).length

  test.each([
    ['> 1. a\n> 2. b\n'],
    ['> 1. a\n>\n>    :::tip\n>    b\n>    :::\n'],
    ['> > 1.\ta\n> > 2.\tb\n'],
    ['- x\n  1. a\n  2. b\n'],
    ['> - 1. a\n>   2. b'],
    ['1.\ta\n\tb\n2.\tc\n'],
    ['1.\n   a\n2. c\n'],
    ['>\t1.\ta\n>\t2.\tb\n'],
    ['1. > a\n2. b\n'],
    ['1. a\n   - b\n   - c\n2. d\n'],
    ['1. a   \r\n2. b\r\n'],
  ])('%j', (body) => {
    const text = `---\ntitle: Shells\n---\n\n${body}`
    const { tree } = readLesson(text)
    for (const [i, item] of items(tree).entries()) {
      if (item.children[0]?.type === 'list') continue
      const edit = lineBelow(text, item, '::figure[x]{show=standing}')
      expect(edit).toBeDefined()
      const after = applyEdits(text, edit ? [edit] : [])
      newLines(text, after)
      const again = items(readLesson(after).tree)
      expect(again).toHaveLength(items(tree).length)
      expect(again[i] && within(again[i])).toBe(1)
      expect(figuresIn(readLesson(after).tree)).toHaveLength(1)
    }
  })
})
