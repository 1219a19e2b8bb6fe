import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Unit } from '../../src/length/length.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { resizeLesson } from '../../src/lesson/resize.ts'

const folder = new URL('../../lessons/', import.meta.url)
const folders = { de: 'deutsch', fr: 'francais', es: 'espanol' } as const
const files = Object.entries(folders).flatMap(([lang, name]) =>
  readdirSync(new URL(`${name}/`, folder)).map((file) => [lang, `${name}/${file}`] as const),
)
const units: Unit[] = ['mm', 'in']
const textOf = (path: string) => readFileSync(new URL(path, folder), 'utf8')
const english = ['harbour-lights.md', 'low-tide-z-card.md'].map((path) => readLesson(textOf(path)))

test('each language has two lessons', () => expect(files).toHaveLength(6))

describe.each(files)('in %s: %s', (lang, path) => {
  const text = textOf(path)
  const lesson = readLesson(text)
  const own = fillLesson(lesson)
  const fold = (one: typeof lesson) => /fold: (\w+)/.exec(one.cards[0]?.text ?? '')?.[1]

  test('says so, and is metric', () => {
    expect([own.frontMatter.lang, own.unit, own.wording.locale]).toEqual([lang, 'mm', lang])
  })

  test('has nothing to complain about, in any size and unit', () => {
    for (const closed of [undefined, ...lesson.frontMatter.sizes.map(({ size }) => size)])
      for (const unit of units)
        expect(fillLesson(lesson, { units: unit, ...(closed && { closed }) }).findings).toEqual([])
  })

  test('has the same steps as the English one, with their times and figures', () => {
    const other = english.find((one) => fold(one) === fold(lesson))
    expect(lesson.steps.map(({ minutes }) => minutes)).toEqual(other?.steps.map(({ minutes }) => minutes))
    const figures = (one: string) => one.match(/\{show=\w+/g)
    expect(figures(text)).toEqual(figures(other?.source.text ?? ''))
    expect(own.cards.map(({ card }) => card.structure.pieces.map(({ count }) => count))).toEqual(
      (other ? fillLesson(other) : undefined)?.cards.map(({ card }) =>
        card.structure.pieces.map(({ count }) => count),
      ),
    )
  })

  test('gives its own cautions, so that none is added', () => {
    expect(own.cautions).toEqual([])
    expect(fillLesson(readLesson(text.replace(/:::caution/g, ':::tip'))).cautions.length).toBe(
      fold(lesson) === 'bridge' ? 3 : 0,
    )
  })

  test('in another size only its size is another', () => {
    const [size] = lesson.frontMatter.sizes
    const resized = resizeLesson(text, { ...(size && { closed: size.size }) }).text
    const [before, after] = [text.split('\n'), resized.split('\n')]
    expect(before.filter((line, i) => line !== after[i])).toEqual(['closed: 180 x 120 mm'])
  })

  test('accents may be characters of their own', () => {
    const apart = fillLesson(readLesson(text.normalize('NFD')))
    expect(apart.findings).toEqual([])
    expect(apart.cards.map(({ card }) => card.structure.pieces.map(({ name }) => name))).toEqual(
      own.cards.map(({ card }) => card.structure.pieces.map(({ name }) => name)),
    )
  })
})

describe('names of pieces', () => {
  const lesson = (name: string, asked = name) =>
    readLesson(
      `---\ntitle: x\nlang: de\n---\n\n\`\`\`card\nfold: side\nclosed: 120 x 150 mm\nlayers:\n  ${name}: {on: front, border: 2 mm}\n\`\`\`\n\n## x\n\n1. {${asked}.width - 1 mm} {${asked}.size} :minutes[1]\n\n   ::figure[x]{show=place of="${asked}"}\n`,
    )

  test.each([
    'Übergröße außen',
    'Straße',
    'bande d’angle',
    "bord d'eau",
    'arrière-plan',
    'vœu',
    'ñandú',
    'ÉTÉ 2',
  ])('%s is asked for as it is written', (name) => {
    for (const asked of [name, name.normalize('NFD')]) {
      const { findings, tree } = fillLesson(lesson(name, asked))
      expect(findings).toEqual([])
      expect(JSON.stringify(tree)).toContain('"text":"116 × 146 mm"')
      expect(JSON.stringify(tree)).toContain('"text":"115 mm"')
    }
  })

  test('another letter is another name, with the nearest as the cure', () => {
    const told = fillLesson(lesson('Größe', 'Grösse')).findings.filter(({ rule }) => rule === 'unknown-name')
    expect(told[0]?.suggestion).toBe('Write `Größe.width`')
  })
})

test('a decimal comma is told how to be written', () => {
  const { findings } = fillLesson(
    readLesson('---\ntitle: x\nlang: de\n---\n\n```card\nfold: side\nclosed: 120 x 148,5 mm\n```\n'),
  )
  expect(findings.find(({ rule }) => rule === 'expression')?.suggestion).toMatch(
    /^Decimals have a point here/,
  )
})
