import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readLesson } from '../../src/lesson/read.ts'
import { resizeLesson } from '../../src/lesson/resize.ts'

const folder = new URL('../../lessons/', import.meta.url)
const lessons = readdirSync(folder).filter((name) => name.endsWith('.md'))

describe.each(lessons)('%s', (name) => {
  const text = readFileSync(new URL(name, folder), 'utf8')
  const { frontMatter, findings, steps, cards } = readLesson(text)

  test('is read without a finding, and has cards and timed steps', () => {
    expect(findings).toEqual([])
    expect(cards.length).toBeGreaterThan(0)
    expect(steps.filter((step) => step.minutes !== undefined && step.stage !== undefined)).not.toEqual([])
  })

  test.each(frontMatter.sizes.map((size) => size))('in $text only its size is another', ({ size }) => {
    const resized = resizeLesson(text, { closed: size }).text
    const [before, after] = [text.split('\n'), resized.split('\n')]
    const changed = before.flatMap((line, i) => (line === after[i] ? [] : [line.replace(/:.*/, '')]))
    expect([changed, after.length]).toEqual([['closed'], before.length])
    expect(resizeLesson(resized, { closed: size }).text).toBe(resized)
  })
})
