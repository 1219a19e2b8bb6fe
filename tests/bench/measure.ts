import { spawnSync } from 'node:child_process'
import process from 'node:process'
import { inTurn, type Ratio } from './ratio.ts'

const node = (args: readonly string[], env: NodeJS.ProcessEnv = {}) => {
  const { status, stderr } = spawnSync(process.execPath, args, {
    encoding: 'utf8',
    env: { ...process.env, ...env },
  })
  if (status !== 0) throw new Error(stderr)
}
const nothing = () => node(['-e', '0'])

/** The built command from nothing to the table of measures, against starting Node and doing nothing. */
export async function benchMeasure(lesson: string, runs: number): Promise<Ratio> {
  const ours = () => node(['dist/foldlore.js', 'measure', lesson, '--quiet'])
  const times = await inTurn(runs, ours, nothing)
  return { what: 'measure, cold', against: 'node -e 0', goal: { atMost: 3 }, ...times }
}

/** The same as the first time, when nothing that Node has compiled is kept. */
export async function benchFirstMeasure(lesson: string, runs: number): Promise<Ratio> {
  const ours = () =>
    node(['dist/foldlore.js', 'measure', lesson, '--quiet'], { NODE_DISABLE_COMPILE_CACHE: '1' })
  const times = await inTurn(runs, ours, nothing)
  return { what: 'measure, the first time', against: 'node -e 0', ...times }
}

/** The help, which loads no lesson, against the same. */
export async function benchHelp(runs: number): Promise<Ratio> {
  const times = await inTurn(runs, () => node(['dist/foldlore.js', '--help']), nothing)
  return { what: 'the help, cold', against: 'node -e 0', ...times }
}
