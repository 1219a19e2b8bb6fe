import { tests } from 'commonmark-spec'
import { describe, expect, test } from 'vitest'
import { readLesson } from '../../src/lesson/read.ts'
import { htmlOf } from './html.ts'

/** Examples of the CommonMark specification, 0.31.2, that a lesson reads otherwise, and why. */
const excluded = new Map([
  [96, 'starts with what is front matter in a lesson'],
  [98, 'starts with what is front matter in a lesson'],
])

/** The specification writes `"` and `>` as references, and one line ending where two are the same. */
const normal = (html: string): string =>
  html.replaceAll('&quot;', '"').replaceAll('&gt;', '>').replaceAll(/\n+/g, '\n').trim()

/** The specification shows a tab as an arrow. */
const tabs = (text: string): string => text.replaceAll('→', '\t')

describe('CommonMark 0.31.2', () => {
  test('all 652 examples are here', () => {
    expect(tests).toHaveLength(652)
  })

  const included = tests.filter(({ number }) => !excluded.has(number))
  test.each(included)('example $number, $section', ({ markdown, html }) => {
    expect(normal(htmlOf(readLesson(tabs(markdown)).tree))).toBe(normal(tabs(html)))
  })

  test('an excluded example does differ', () => {
    const differing = tests.filter(
      ({ markdown, html }) => normal(htmlOf(readLesson(tabs(markdown)).tree)) !== normal(tabs(html)),
    )
    expect(differing.map(({ number }) => number)).toEqual([...excluded.keys()])
  })
})
