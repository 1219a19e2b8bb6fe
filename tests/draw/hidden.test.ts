import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { cameraAt, frontLeft } from '../../src/draw/camera.ts'
import { facesOf } from '../../src/draw/face/face.ts'
import { paintOrder } from '../../src/draw/sort.ts'
import type { Pose } from '../../src/fold/pose.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { cardOf } from './cards.ts'
import { wronglyHidden } from './rays.ts'

const lessons = readdirSync('lessons')
  .filter((file) => file.endsWith('.md'))
  .flatMap((file) =>
    fillLesson(readLesson(readFileSync(`lessons/${file}`, 'utf8'))).cards.map((card) => ({
      title: `${card.card.name} of ${file}`,
      ...card,
    })),
  )
const starters = [...foldStyles.values()].map(({ name, starter }) => ({ title: name, ...cardOf(starter) }))
const cards = [...lessons, ...starters]

const cameras = { 'the front left': frontLeft, above: cameraAt(36, 60), 'the back': cameraAt(216, 19) }

test('all lessons and all folds are looked at', () => {
  expect(lessons.length).toBeGreaterThanOrEqual(9)
  expect(starters.length).toBe(foldStyles.size)
})

test.each(cards)(
  'nothing hides what is nearer, from shut to standing, from three sides: $title',
  ({ card: { structure }, proof }) => {
    const poses: [string, Pose | undefined][] = [
      ['standing', proof.standing?.pose],
      ...[0, 1, 2, 3, 4, 5, 6, 7, 8].map((k): [string, Pose | undefined] => [`${k}/8`, proof.between(k / 8)]),
    ]
    const wrong = poses.flatMap(([moment, pose]) =>
      Object.entries(cameras).flatMap(([side, camera]) => {
        const painted = paintOrder(facesOf(structure, pose ?? new Map()), structure, camera, proof.closed)
        // Depths are exact to less than the thinnest film; planes run into one another by what paper gives way.
        const looking = { most: 0.02, grid: 60, givesWay: 0.6, closed: proof.closed }
        return wronglyHidden(painted, camera, looking).map((pair) => `${moment} from ${side}: ${pair}`)
      }),
    )
    expect(wrong).toEqual([])
  },
)
