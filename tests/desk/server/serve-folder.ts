import process from 'node:process'
import { openDesk } from '../../../src/desk/server/serve.ts'

/** A desk in a process of its own, for a test that kills it. Tells its port and its token in one line. */
const page = async () => ({ html: '', policy: "default-src 'none'" })
const { port, token } = await openDesk({ folder: process.argv[2] ?? '', page, version: '0', port: 0 })
process.stdout.write(`${port} ${token}\n`)
