import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'

const folder = mkdtempSync(join(tmpdir(), 'kept-'))
const cache = join(folder, 'cache')
const store = join(cache, 'foldlore', `code-${process.version}-${process.arch}`)
const kept = join(store, 'part-sum.cjs')

const callable = (text: string): string => `((function(exports,require,module){${text}}))`
const run = (env: NodeJS.ProcessEnv = {}) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(folder, 'start.cjs')], {
    encoding: 'utf8',
    env: { ...process.env, XDG_CACHE_HOME: cache, ...env },
  })
  return [status, stdout, stderr]
}
const answer = [0, '5050 exit\n', '']

beforeAll(async () => {
  await build({
    entryPoints: ['src/cli/kept-code.ts'],
    bundle: true,
    platform: 'node',
    format: 'cjs',
    outfile: join(folder, 'kept-code.cjs'),
  })
  const files = {
    'start.cjs': `require('./kept-code.cjs').runKept(require.resolve('./program.cjs'))`,
    'program.cjs': callable(
      `const { sum } = require('./part-sum.cjs'); console.log(sum(100), require('node:path').basename('/exit'))`,
    ),
    'part-sum.cjs': callable(`exports.sum = (n) => (n > 0 ? n + exports.sum(n - 1) : 0)`),
  }
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
})
beforeEach(() => rmSync(cache, { recursive: true, force: true }))
afterAll(() => rmSync(folder, { recursive: true }))

test('what is compiled of a part is kept for this user alone, and used the next time', () => {
  expect(run()).toEqual(answer)
  expect(readdirSync(store)).toEqual(['part-sum.cjs'])
  expect(statSync(kept).mode & 0o077).toBe(0)
  const before = statSync(kept)
  expect(run()).toEqual(answer)
  expect(statSync(kept).ino).toBe(before.ino)
})

test('a kept file that is not whole is not run, and is kept anew', () => {
  run()
  const whole = readFileSync(kept)
  const spoilt = [0, 8, 40, whole.length >> 1, whole.length - 1].map((at) => {
    const other = Buffer.from(whole)
    other[at] = (other[at] ?? 0) ^ 0xff
    return other
  })
  for (const other of [
    ...spoilt,
    whole.subarray(0, whole.length >> 1),
    whole.subarray(0, 3),
    Buffer.alloc(whole.length),
  ]) {
    writeFileSync(kept, other)
    expect(run()).toEqual(answer)
    expect(readFileSync(kept).equals(other)).toBe(false)
    const mended = statSync(kept).ino
    expect(run()).toEqual(answer)
    expect(statSync(kept).ino).toBe(mended)
  }
})

test('another content by the same name is compiled anew', () => {
  run()
  const other = join(folder, 'part-sum.cjs')
  const text = readFileSync(other, 'utf8')
  writeFileSync(other, text.replace('n + exports', 'n * 2 + exports'))
  try {
    expect(run()).toEqual([0, '10100 exit\n', ''])
  } finally {
    writeFileSync(other, text)
  }
})

test('nothing is kept where nothing can be written, or where Node was told to keep nothing', () => {
  writeFileSync(cache, 'a file, not a folder')
  expect(run()).toEqual(answer)
  rmSync(cache)
  expect(run({ NODE_DISABLE_COMPILE_CACHE: '1' })).toEqual(answer)
  expect(readdirSync(folder)).not.toContain('cache')
})

test('what is old is thrown away when something is kept', () => {
  run()
  const old = join(store, 'part-old.cjs')
  writeFileSync(old, '')
  const longAgo = Date.now() / 1000 - 15 * 24 * 3600
  utimesSync(old, longAgo, longAgo)
  run()
  expect(readdirSync(store)).toContain('part-old.cjs')
  rmSync(kept)
  run()
  expect(readdirSync(store)).toEqual(['part-sum.cjs'])
})
