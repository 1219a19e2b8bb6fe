#!/usr/bin/env node
import process from 'node:process'
import { machine } from './machine.ts'
import { run } from './run.ts'

// A reader that has seen enough, such as `head`, closes the pipe; that is no mistake.
process.stdout.on('error', (error: { code?: string }) => {
  if (error.code !== 'EPIPE') throw error
})
process.exitCode = await run(process.argv.slice(2), machine)
