import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import type { Size } from '../../src/length/length.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { collisions } from './collide.ts'
import { drawn, textsOf } from './figures.ts'

const folder = fileURLToPath(new URL('../../lessons/', import.meta.url))
const lessons = readdirSync(folder).filter((name) => name.endsWith('.md'))
const rooms = [
  {},
  { maxWidth: 60, maxHeight: 60 },
  { text: 12, maxWidth: 110 },
  { text: 18, maxWidth: 168, maxHeight: 120 },
]

test.each(lessons)(
  'no label of the shut card and its section touches anything, in any size and unit: %s',
  (name) => {
    const lesson = readLesson(readFileSync(folder + name, 'utf8'))
    const sizes: (Size | undefined)[] = [undefined, ...lesson.frontMatter.sizes.map(({ size }) => size)]
    for (const closed of sizes)
      for (const units of ['in', 'mm'] as const)
        for (const proven of fillLesson(lesson, { units, ...(closed && { closed }) }).cards)
          for (const room of closed ? rooms.slice(0, 1) : rooms)
            for (const show of ['edge', 'closed'] as const) {
              const { svg } = drawn(show, proven, undefined, units, room)
              expect(collisions(svg), `${show} ${units} ${JSON.stringify(room)}`).toEqual([])
              if (proven.proof.closed?.isFlat)
                expect(textsOf(svg, 'legend').join(' ')).toContain('as thick as they are')
            }
  },
)
