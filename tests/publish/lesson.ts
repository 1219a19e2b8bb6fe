import { readFileSync } from 'node:fs'
import type { Figure } from '../../src/draw/figure.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import type { FilledLesson, Wishes } from '../../src/lesson/lesson.ts'
import { readLesson } from '../../src/lesson/read.ts'
import type { Draw } from '../../src/publish/figure.ts'

/** A lesson with everything that a handout can show. */
export const pierText = readFileSync(new URL('fixtures/pier.md', import.meta.url), 'utf8')

export const filled = (text: string, wishes?: Wishes): FilledLesson => fillLesson(readLesson(text), wishes)
export const pier = (wishes?: Wishes): FilledLesson => filled(pierText, wishes)

/** A lesson without a card: front matter, with more lines if need be, then `body`. */
export const plainLesson = (body: string, front = ''): FilledLesson => {
  const lesson = filled(`---\ntitle: Plain\nlevel: beginner\nunits: in\n${front}---\n\n${body}\n`)
  // What such a lesson lacks has been told, and does not matter here.
  return { ...lesson, findings: [] }
}

/** A figure of a size, drawn by nobody. */
export const stubFigure = (width: number, height: number, id = 'a'): Figure => ({
  svg: {
    type: 'element',
    tagName: 'svg',
    properties: {
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': id,
    },
    children: [
      {
        type: 'element',
        tagName: 'title',
        properties: { id },
        children: [{ type: 'text', value: 'A figure' }],
      },
      {
        type: 'element',
        tagName: 'rect',
        properties: { width: String(width), height: String(height), fill: `url(#${id})` },
        children: [],
      },
    ],
  },
  width,
  height,
  alternative: 'A figure',
})

/** Draws everything as large as it may be. */
export const drawStub: Draw = (_show, _of, { maxWidth, maxHeight }) => stubFigure(maxWidth, maxHeight)
