import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { RuleInput } from '../../../src/lesson/rules/rule.ts'
import {
  exampleTexts,
  followableNames,
  found,
  inOtherWords,
  inputOf,
  starterTexts,
  withSentences,
} from './courses.ts'
import { droppedSentences } from './mutants.ts'

const told = (input: RuleInput) =>
  found(input).map(({ rule, message, place }) => `${rule} ${place?.line}: ${message}`)
const examples = exampleTexts.map(([name, text]) => ({ name, text, input: inputOf(text) }))

describe('a lesson that can be followed is left alone', () => {
  test.each(examples)('$name', ({ input }) => expect(told(input)).toEqual([]))
  test.each(starterTexts)('the starter for %s', (_, text) => expect(told(inputOf(text))).toEqual([]))
})

const bodyOf = (text: string, reword: (line: string) => string): string =>
  text
    .split('\n')
    .map((line) => (/^\s*\d+\. /.test(line) ? reword(line) : line))
    .join('\n')

/** The same steps as other people write them. */
const rewordings: readonly (readonly [string, (line: string) => string])[] = [
  ...['adhere', 'glue', 'tape', 'attach', 'mount', 'fix', 'paste'].map(
    (word) =>
      [
        word,
        (line: string) =>
          line
            .replace(/(?<!glue )\bstick(?!s)\b/g, word)
            .replace(/\bStick\b/g, word[0]?.toUpperCase() + word.slice(1)),
      ] as const,
  ),
  [
    'the next step is to',
    (line) =>
      line.replace(
        /(?<=\d\. |\. )(Cut|Stick|Score|Fold)\b/g,
        (verb) => `The next step is to ${verb.toLowerCase()}`,
      ),
  ],
  [
    'now you',
    (line) =>
      line.replace(
        /(?<=\d\. |\. )(Cut|Stick|Score|Fold)\b/g,
        (verb) => `Now you carefully ${verb.toLowerCase()}`,
      ),
  ],
  ['then', (line) => line.replace(/, and (stick|cut|score|fold)\b/g, ', then $1')],
  [
    'American spelling',
    (line) => line.replaceAll('colour', 'color').replaceAll('centre', 'center').replaceAll('grey', 'gray'),
  ],
  [
    'crease for score',
    (line) => line.replace(/\bScore\b/g, 'Crease').replace(/\bscore (it|them|this|at|the)\b/g, 'crease $1'),
  ],
]

const reworded = (text: string, reword: (line: string) => string): string =>
  // A name of the card must stay what it is.
  bodyOf(text, (line) =>
    line.replace(/\{[^}]*\}|[^{]+/g, (part) => (part.startsWith('{') ? part : reword(part))),
  )

describe('and so it is in other words', () => {
  test.each(rewordings)('%s', (_, reword) => {
    for (const { name, text, input } of examples)
      expect([name, ...told(inOtherWords(input, reworded(text, reword)))]).toEqual([name])
  })
})

describe('other words are understood as well', () => {
  const lesson = examples.find(({ name }) => name === 'beach-hut-doors.md')
  const caught = (reword: (line: string) => string): number => {
    if (!lesson) return 0
    const input = inOtherWords(lesson.input, reworded(lesson.text, reword))
    const mutants = droppedSentences(input.prose.sentences())
    return mutants.filter(({ sentences }) => found(withSentences(input, sentences)).length > 0).length
  }
  const plain = caught((line) => line)
  test.each(rewordings)('%s', (_, reword) => {
    expect(plain).toBeGreaterThan(5)
    expect(caught(reword)).toBeGreaterThanOrEqual(plain - 1)
  })
})

describe('of tutorials with plain numbers only what is wrong with them is told', () => {
  const folder = new URL('../../data/hand-written/', import.meta.url)
  const read = (name: string) => inputOf(readFileSync(new URL(name, folder), 'utf8'))
  test.each(['fishing-boats.md', 'lamp-room.md', 'striped-awning.md'])('%s', (name) =>
    expect(told(read(name))).toEqual([]),
  )

  test('tide-table.md cuts a sky and never sticks it', () => {
    expect(found(read('tide-table.md')).map(({ rule, message }) => [rule, message])).toEqual([
      ['never-used', 'Step 5 cuts `sky`, and nothing is done with it'],
    ])
  })
})

test('a lesson in another language is not judged', () => {
  const [, text] = exampleTexts[0] ?? ['', '']
  const spoilt = text.replace('Cut the sea mat to {sea mat.size} and', 'Take the sea mat and')
  expect(told(inputOf(spoilt))).not.toEqual([])
  expect(told(inputOf(spoilt.replace('level:', 'lang: nl\nlevel:')))).toEqual([])
  expect(followableNames).toHaveLength(7)
})
