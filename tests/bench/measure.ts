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
  return { what: 'measure, cold', floor: 'node -e 0', goal: 3, ...times }
}
