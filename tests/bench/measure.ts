import { spawnSync } from 'node:child_process'
import { inTurn, type Ratio } from './ratio.ts'

const node = (...args: string[]) => {
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
}

/** The built command from nothing to the table of measures, against starting Node and doing nothing. */
export async function benchMeasure(lesson: string, runs: number): Promise<Ratio> {
  const ours = () => node('dist/foldlore.js', 'measure', lesson, '--quiet')
  const times = await inTurn(runs, ours, () => node('-e', '0'))
  return { what: 'measure, cold', against: 'node -e 0', goal: { atMost: 3 }, ...times }
}

/** The help, which loads no lesson, against the same. */
export async function benchHelp(runs: number): Promise<Ratio> {
  const times = await inTurn(
    runs,
    () => node('dist/foldlore.js', '--help'),
    () => node('-e', '0'),
  )
  return { what: 'the help, cold', against: 'node -e 0', ...times }
}
