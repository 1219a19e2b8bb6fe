import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import process from 'node:process'
import { count, words } from '../../src/workshop/listing.ts'
import { listingText } from '../../src/workshop/listing-text.ts'

// Run in the project's folder, behind `npm run build`: how fast a library is printed. Prints ratios, and fails nothing.
const [lessons, cores] = [Number(process.argv[2] ?? 12), availableParallelism()]
const program = resolve(process.argv[3] ?? 'dist/foldlore.js')
const folder = mkdtempSync(join(tmpdir(), 'bench-library-'))
const text = readFileSync('lessons/harbour-lights.md', 'utf8').replace(/^sizes:.*$/m, 'sizes: [6 x 6 in]')

/** Seconds for one library, on so many cores only where the system can say that. */
function seconds(name: string, on: number): number {
  const pinned = process.platform === 'linux' && spawnSync('taskset', ['--version']).status === 0
  const argv = [process.execPath, program, 'library', join(folder, 'in'), '-o', join(folder, name)]
  const line = [...(pinned ? ['taskset', '-c', `0-${on - 1}`] : []), ...argv, '--quiet', '--jobs', String(on)]
  const start = performance.now()
  const { status, stderr } = spawnSync(line[0] ?? '', line.slice(1), { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
  return (performance.now() - start) / 1000
}

function write(n: number): void {
  rmSync(join(folder, 'in'), { recursive: true, force: true })
  mkdirSync(join(folder, 'in'))
  for (let i = 0; i < n; i++)
    writeFileSync(join(folder, 'in', `lights-${i}.md`), text.replace('lights', `lights ${i}`))
}

try {
  write(lessons)
  const one = seconds('one', 1)
  const all = seconds('all', cores)
  const again = seconds('all', cores)
  write(2 * lessons)
  const twice = seconds('twice', cores)
  const row = (what: string, ratio: number, goal: string): string[] => [what, ratio.toFixed(2), goal]
  console.log(
    listingText({
      title: 'How fast a library is printed',
      intro: `${lessons} lessons in 2 sizes: ${one.toFixed(1)} s on one core, ${all.toFixed(1)} s on ${cores}, ${again.toFixed(2)} s when nothing has changed`,
      sections: [
        {
          heading: 'Ratios',
          columns: [words('what'), count('times'), words('goal')],
          rows: [
            row(`${cores} cores against one`, one / all, `at least ${(0.85 * cores).toFixed(2)}`),
            row('first time against unchanged', all / again, 'at least 20'),
            row('twice the lessons', twice / all, 'at most 2'),
          ],
        },
      ],
    }),
  )
} finally {
  rmSync(folder, { recursive: true, force: true })
}
