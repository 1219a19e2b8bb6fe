import { execFileSync } from 'node:child_process'
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, expect, test, vi } from 'vitest'
import { packagedBrowser } from '../../src/publish/packaged-browser.ts'

const cache = mkdtempSync(join(tmpdir(), 'cache-'))
vi.stubEnv('XDG_CACHE_HOME', cache)
afterAll(() => rmSync(cache, { recursive: true }))

const installed = (() => {
  try {
    return (
      process.platform === 'linux' &&
      process.arch === 'x64' &&
      createRequire(import.meta.url).resolve('@sparticuz/chromium')
    )
  } catch {
    return false
  }
})()

test.runIf(installed)(
  'the browser of the package is unpacked once, whole, where only this user can change it',
  async () => {
    const [path = '', again] = await Promise.all([packagedBrowser(), packagedBrowser()])
    expect(again).toBe(path)
    expect(dirname(path)).toBe(join(cache, 'foldlore'))
    expect(readdirSync(dirname(path))).toHaveLength(1)
    expect(execFileSync(path, ['--version'], { encoding: 'utf8' })).toMatch(/^Chromium \d+/)
  },
)

test.runIf(!installed)('without the package there is none', async () => {
  expect(await packagedBrowser()).toBeUndefined()
})
