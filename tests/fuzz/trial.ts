import { type ChildProcess, fork } from 'node:child_process'
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { build } from 'esbuild'

/** A second program that tries texts, so that one which never ends can be ended. */
export interface Trial {
  /** What is wrong with what is said about a text; undefined when all is well. */
  readonly of: (entry: string, text: string) => Promise<string | undefined>
  readonly end: () => unknown
}

/** @param limit how long one text may take, in ms. */
export async function startTrial(limit: number): Promise<Trial> {
  const folder = 'node_modules/.cache/foldlore'
  await mkdir(folder, { recursive: true })
  const outfile = join(folder, 'fuzz-worker.js')
  await build({
    entryPoints: ['tests/fuzz/worker.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    outfile,
    logLevel: 'warning',
  })
  const start = (): ChildProcess =>
    fork(outfile, { execArgv: ['--max-old-space-size=1500'], stdio: ['ignore', 'ignore', 'inherit', 'ipc'] })
  let program = start()
  const ask = async (question: object): Promise<string> => {
    const wrong = await answer(program, question, limit)
    if (program.exitCode !== null || program.signalCode !== null || program.killed) program = start()
    return wrong
  }
  const late = `It takes longer than ${limit / 1000} s`
  return {
    of: async (entry, text) => {
      const wrong = await ask({ entry, text })
      // A computer with too much to do makes one text late, and hardly the same one again.
      const sure = wrong === late ? await ask({ entry, text }) : wrong
      return sure === '' ? undefined : sure
    },
    end: () => program.kill('SIGKILL'),
  }
}

/** What the program answers; when it says nothing in time, or ends, that is what is wrong. */
const answer = (program: ChildProcess, question: object, limit: number): Promise<string> =>
  new Promise((resolve) => {
    const done = (text: string): void => {
      clearTimeout(timer)
      program.off('message', done).off('exit', died)
      resolve(text)
    }
    const died = (code: number | null, signal: string | null): void =>
      done(`It ends the program: ${signal ?? `exit code ${code}`}`)
    const timer = setTimeout(() => {
      program.kill('SIGKILL')
      done(`It takes longer than ${limit / 1000} s`)
    }, limit)
    program.on('message', done).on('exit', died)
    program.send(question)
  })
