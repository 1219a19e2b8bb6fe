import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import process from 'node:process'
import { mostMemory } from './memory.ts'
import type { Ratio } from './ratio.ts'

/** How fast a library of so many lessons, each in three sizes and both units, is printed, and what it takes. */
export function benchLibrary(lesson: string, lessons: number): Ratio[] {
  const cores = availableParallelism()
  const folder = mkdtempSync(join(tmpdir(), 'bench-library-'))
  const text = readFileSync(lesson, 'utf8').replace(/^sizes:.*$/m, 'sizes: [6 x 6 in, A6 landscape]')
  const argv = (name: string, jobs: number): string[] => {
    const [from, to] = [join(folder, 'in'), join(folder, name)]
    return [resolve('dist/foldlore.js'), 'library', from, '-o', to, '--quiet', '--jobs', String(jobs)]
  }

  /** Seconds for the library, on so many cores only where the system can say that. */
  const seconds = (name: string, jobs: number): number => {
    const pinned = process.platform === 'linux' && spawnSync('taskset', ['--version']).status === 0
    const line = [
      ...(pinned ? ['taskset', '-c', `0-${jobs - 1}`] : []),
      process.execPath,
      ...argv(name, jobs),
    ]
    const start = performance.now()
    const { status, stderr } = spawnSync(line[0] ?? '', line.slice(1), { encoding: 'utf8' })
    if (status !== 0) throw new Error(stderr)
    return (performance.now() - start) / 1000
  }
  const write = (n: number): void => {
    rmSync(join(folder, 'in'), { recursive: true, force: true })
    mkdirSync(join(folder, 'in'))
    writeFileSync(join(folder, 'in', 'library.yaml'), 'units: [in, mm]\n')
    for (let i = 0; i < n; i++)
      writeFileSync(join(folder, 'in', `lights-${i}.md`), text.replace('lights', `lights ${i}`))
  }

  try {
    const half = Math.ceil(lessons / 2)
    write(half)
    const few = seconds('few', cores)
    const ofFew = mostMemory(...argv('memory', cores))
    write(2 * half)
    const all = seconds('all', cores)
    const again = seconds('all', cores)
    const one = seconds('one', 1)
    const ofAll = mostMemory(...argv('more-memory', cores))
    const row = { unit: 's', runs: 1 } as const
    const name = `${2 * half} lessons`
    return [
      {
        ...row,
        what: `${name} on one core`,
        ours: one,
        against: `on ${cores}`,
        floor: all,
        goal: { atLeast: 0.85 * cores },
      },
      {
        ...row,
        what: `${name}, first`,
        ours: all,
        against: 'unchanged',
        floor: again,
        goal: { atLeast: 20 },
      },
      { ...row, what: name, ours: all, against: `${half} lessons`, floor: few, goal: { atMost: 2 } },
      { ...row, what: `${name}, memory`, ours: ofAll, against: `${half} lessons`, floor: ofFew, unit: 'MB' },
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
