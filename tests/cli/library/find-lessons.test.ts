import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { findLessons } from '../../../src/cli/library/find-lessons.ts'
import { inTurns } from '../../../src/cli/library/in-turns.ts'
import { small } from '../lessons.ts'
import { write } from './program.ts'

const root = mkdtempSync(join(tmpdir(), 'find-lessons-'))
afterAll(() => rmSync(root, { recursive: true }))
const folder = (): string => mkdtempSync(join(root, 'library-'))

const found = async (place: string, leftOut: readonly string[] = []) => {
  const { lessons, missed } = await findLessons(place, leftOut)
  return {
    lessons: lessons.map(({ path }) => path),
    missed: missed.map(({ path, error }) => [path, error.message, error.suggestion]),
  }
}

describe('a folder of lessons', () => {
  test('has thousands of them among many other files', async () => {
    const place = folder()
    for (let i = 0; i < 1000; i++) write(place, `week ${i % 50}/lesson ${i}.md`, small)
    for (let i = 0; i < 8000; i++) writeFileSync(join(place, `shell ${i}.txt`), '')
    const before = process.cpuUsage()
    expect((await found(place)).lessons).toHaveLength(1000)
    expect(process.cpuUsage(before).user / 1e6).toBeLessThan(10)
  }, 60_000)

  test('is not left by a link, nor gone round in a circle', async () => {
    const place = folder()
    write(place, 'sea/tide.md', small)
    symlinkSync(place, join(place, 'sea', 'round'))
    symlinkSync(root, join(place, 'up'))
    symlinkSync(root, join(place, 'up.md'))
    symlinkSync('nowhere.md', join(place, 'lost.md'))
    expect(await found(place)).toEqual({ lessons: ['sea/tide.md'], missed: [] })
  })

  test('tells what is too deep, and can leave it out', async () => {
    const place = folder()
    const deep = Array.from({ length: 41 }, () => 'd').join('/')
    write(place, `${deep.slice(2)}/here.md`, small)
    write(place, `${deep}/there.md`, small)
    expect(await found(place)).toEqual({
      lessons: [`${deep.slice(2)}/here.md`],
      missed: [
        [deep, 'Folders more than 40 deep are not looked into', expect.stringContaining('`leave out`')],
      ],
    })
    expect((await found(place, [deep])).missed).toEqual([])
  })

  test('tells what cannot be read', async () => {
    const place = folder()
    write(place, 'tide.md', small)
    write(place, 'film.md', '')
    truncateSync(join(place, 'film.md'), 20_000_001)
    symlinkSync('loop.md', join(place, 'loop.md'))
    const { lessons, missed } = await found(place)
    expect(lessons).toEqual(['tide.md'])
    expect(missed).toEqual([
      [
        'film.md',
        'Cannot read a file: more than 20 MB is no lesson',
        expect.stringContaining('another ending'),
      ],
      ['loop.md', 'Cannot read a file: its links lead round in a circle', expect.stringContaining('link')],
    ])
  })

  test.skipIf(process.getuid?.() === 0)('tells a folder that is not for everybody', async () => {
    const place = folder()
    mkdirSync(join(place, 'locked'), { mode: 0 })
    expect((await found(place)).missed).toEqual([
      ['locked', 'Cannot look into a folder: you may not', expect.stringContaining('Ask for the right')],
    ])
  })
})

test('so many are done at a time, all of them, in their order', async () => {
  let [now, most] = [0, 0]
  const results = await inTurns(
    Array.from({ length: 100 }, (_, i) => i),
    async (i) => {
      most = Math.max(most, ++now)
      await new Promise((done) => setTimeout(done, i % 3))
      now--
      return i * 2
    },
    7,
  )
  expect([most, results]).toEqual([7, Array.from({ length: 100 }, (_, i) => i * 2)])
  await expect(inTurns([1, 2, 3], () => Promise.reject(new Error('ebb')))).rejects.toThrow('ebb')
})
