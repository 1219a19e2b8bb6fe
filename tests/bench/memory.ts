import { spawnSync } from 'node:child_process'
import type { Ratio } from './ratio.ts'

/** Tells how much memory a program has had at most when it ends. */
const telling = `data:text/javascript,${encodeURIComponent(
  "process.on('exit',()=>process._rawDebug('most '+process.resourceUsage().maxRSS))",
)}`

/** Megabytes that a program has had at most, without the browser that it starts. */
export function mostMemory(...args: string[]): number {
  const { status, stderr } = spawnSync(process.execPath, ['--import', telling, ...args], { encoding: 'utf8' })
  const most = /most (\d+)/.exec(stderr)?.[1]
  if (status !== 0 || most === undefined) throw new Error(stderr)
  return Number(most) / 1024
}

/** What the commands take of memory, against Node that does nothing. */
export function benchMemory(lesson: string, out: string): Ratio[] {
  const floor = mostMemory('-e', '0')
  const of = (what: string, ...argv: string[]): Ratio => ({
    what,
    against: 'node -e 0',
    ours: mostMemory('dist/foldlore.js', ...argv, '--quiet'),
    floor,
    unit: 'MB',
    runs: 1,
  })
  return [of('measure', 'measure', lesson), of('handout', 'handout', lesson, '-o', out)]
}
