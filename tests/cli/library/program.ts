import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import process from 'node:process'
import { build } from 'esbuild'
import { afterAll, beforeAll } from 'vitest'

/** The program in a process of its own: threads and signals are real. */
export function withProgram() {
  const place = resolve('node_modules/.cache/foldlore', `library-${process.pid}-${Math.random()}`)
  const running = new Set<ChildProcess>()
  beforeAll(async () => {
    await build({
      entryPoints: ['src/cli/program.ts'],
      bundle: true,
      splitting: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      outdir: place,
      logLevel: 'warning',
    })
  })
  afterAll(() => {
    for (const child of running) child.kill('SIGKILL')
    rmSync(place, { recursive: true, force: true })
  })
  /** Starts the program. `ended` comes with all that it said. */
  const start = (argv: readonly string[], env: Readonly<Record<string, string>> = {}) => {
    const child = spawn(process.execPath, [join(place, 'program.js'), ...argv], {
      env: { ...process.env, ...env },
    })
    running.add(child)
    let [out, err] = ['', '']
    child.stdout.on('data', (text) => {
      out += text
    })
    child.stderr.on('data', (text) => {
      err += text
    })
    const ended = new Promise<{ code: number | null; out: string; err: string }>((done) =>
      child.on('close', (code) => {
        running.delete(child)
        done({ code, out, err })
      }),
    )
    return { child, ended, said: () => out + err }
  }
  return { start, run: (...argv: string[]) => start(argv).ended, program: () => join(place, 'program.js') }
}

/** A folder with these files, taken away at the end. */
export function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'library-'))
  for (const [path, text] of Object.entries(files)) write(folder, path, text)
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

export function write(folder: string, path: string, text: string): void {
  const place = join(folder, path)
  mkdirSync(dirname(place), { recursive: true })
  writeFileSync(place, text)
}

/** All files below a folder, hidden ones too, sorted. */
export const filesIn = (folder: string): string[] =>
  (existsSync(folder) ? readdirSync(folder, { recursive: true, withFileTypes: true }) : [])
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort()

/** Files that people see and that are not whole. */
export const brokenFiles = (folder: string): string[] =>
  filesIn(folder).filter((path) => {
    const text = readFileSync(join(folder, path), 'latin1')
    if (/(^|\/)\.[^/]*\.part$/.test(path)) return false
    if (path.endsWith('.pdf')) return !/^%PDF-.*%%EOF\s*$/s.test(text)
    if (path.endsWith('.html')) return !/^<!doctype html>.*<\/html>\s*$/s.test(text)
    if (path.endsWith('.svg')) return !/^<svg.*<\/svg>\s*$/s.test(text)
    if (path.endsWith('.json')) return !isJson(text)
    return !path.endsWith('.lock')
  })

function isJson(text: string): boolean {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

/** Waits for something to become true. */
export async function until(what: () => boolean, most = 60_000): Promise<void> {
  const end = Date.now() + most
  while (!what()) {
    if (Date.now() > end) throw new Error('It did not happen in time')
    await new Promise((done) => setTimeout(done, 20))
  }
}
