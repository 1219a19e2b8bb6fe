import process from 'node:process'
import { machine } from './machine.ts'
import { exitCodes } from './problems.ts'
import { run } from './run.ts'
import { told } from './told.ts'

let isLost = false

// A reader that has seen enough, such as `head`, closes the pipe; that is no mistake.
process.stdout.on('error', (error: { code?: string }) => {
  if (error.code === 'EPIPE' || isLost) return
  isLost = true
  process.exitCode = exitCodes.outside
  void import('../publish/write.ts').then(({ plainError }) => {
    machine.stderr(`foldlore: ${told(plainError(error, 'Cannot write the answer'))}\n`)
  })
})
void run(process.argv.slice(2), machine).then((code) => {
  process.exitCode = isLost ? exitCodes.outside : code
})
