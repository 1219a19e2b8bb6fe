import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { figuresOf } from './figures.ts'
import { lessonNamed, lessonNames } from './lesson-cards.ts'
import { attribute, elements } from './svg.ts'

test.each(lessonNames)('every path of every figure of %s begins somewhere', (name) => {
  const figures = fillLesson(lessonNamed(name)).cards.flatMap((card) => figuresOf(card))
  const paths = figures.flatMap(({ figure }) =>
    elements(figure.svg).filter(({ tagName }) => tagName === 'path'),
  )
  expect(paths.length).toBeGreaterThan(20)
  expect(paths.map((path) => attribute(path, 'd')).filter((d) => !/^M-?[\d.]/.test(d))).toEqual([])
})
