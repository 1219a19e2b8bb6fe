import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import process from 'node:process'
import { findBrowser } from '../../../src/publish/browser.ts'

const real = await findBrowser()

/** A setting for a browser that notes its process in a file when it is started, and is then the real one. */
export function noting(folder: string, file: string): Readonly<Record<string, string>> {
  return { FOLDLORE_BROWSER: script(folder, `echo $$ >> '${file}'\nexec '${real}' "$@"`) }
}

/** The same of one that, the first time, does everything but print: it is asked to, and never answers. */
export function mute(folder: string, file: string): Readonly<Record<string, string>> {
  const between = join(folder, 'between.mjs')
  writeFileSync(between, silence)
  const lines = [
    `echo $$ >> '${file}'`,
    `if [ "$(wc -l < '${file}')" -gt 1 ]; then exec '${real}' "$@"; fi`,
    `exec '${process.execPath}' '${between}' '${real}' "$@"`,
  ]
  return { FOLDLORE_BROWSER: script(folder, lines.join('\n')) }
}

/** Stands between foldlore and a browser, hands on what each says, and keeps back that a page is to be printed. */
const silence = `
import { spawn } from 'node:child_process'
import { Socket } from 'node:net'
const [real, ...args] = process.argv.slice(2)
const browser = spawn(real, args, { stdio: ['ignore', 'inherit', 'inherit', 'pipe', 'pipe'] })
let rest = ''
new Socket({ fd: 3 }).setEncoding('utf8').on('data', (text) => {
  const asked = (rest + text).split('\\0')
  rest = asked.pop()
  for (const one of asked) if (!one.includes('"Page.printToPDF"')) browser.stdio[3].write(one + '\\0')
})
browser.stdio[4].pipe(new Socket({ fd: 4, writable: true }))
browser.on('exit', (code) => process.exit(code ?? 1))
`

/** A program of a few lines for the shell. */
export function script(folder: string, lines: string): string {
  const place = join(folder, 'browser.sh')
  writeFileSync(place, `#!/bin/sh\n${lines}\n`)
  chmodSync(place, 0o755)
  return place
}

/** The processes that were noted, in their order. */
export const pidsIn = (file: string): number[] =>
  existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n').map(Number) : []

/** Comes when a process is gone, and not even waits to be told of its end. */
export async function gone(pid: number, most = 5000): Promise<void> {
  const end = Date.now() + most
  while (isThere(pid)) {
    if (Date.now() > end) throw new Error(`Process ${pid} is still there`)
    await new Promise((done) => setTimeout(done, 20))
  }
}

const isThere = (pid: number): boolean => {
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}
