import process from 'node:process'
import { machine } from '../../src/cli/machine.ts'
import { run } from '../../src/cli/run.ts'

/** `foldlore desk` of a folder in a process of its own, with a page that need not be built. */
const read = async () => new TextEncoder().encode('<title>The desk</title>')
process.exitCode = await run(['desk', ...process.argv.slice(2)], { ...machine, read })
