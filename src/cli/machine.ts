import { stat } from 'node:fs/promises'
import process from 'node:process'
import { once } from '../length/once.ts'
import { disk } from '../publish/outside.ts'
import type { Outside } from './outside.ts'
import { stopped } from './stopped.ts'

/** Begun when there is something to tell. Where nothing can be told, the exit code still says it. */
const stderr = once(() => process.stderr.on('error', () => {}))

/** The real outside: this machine's disk and terminal. */
export const machine: Outside = {
  ...disk,
  env: process.env,
  isFolder: (path) =>
    stat(path).then(
      (found) => found.isDirectory(),
      // Whatever is wrong with it, reading or writing it tells better.
      () => false,
    ),
  stdout: (text) => void process.stdout.write(text),
  stderr: (text) => {
    if (text !== '') stderr().write(text)
  },
  openAddress: async (address) => (await import('./open-address.ts')).openAddress(address),
  stopped,
}
