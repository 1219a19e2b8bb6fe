import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { motionScript } from '../../src/publish/motion/script.ts'
import { OutsideError } from '../../src/publish/problems.ts'

const root = mkdtempSync(join(tmpdir(), 'motion-script-'))
afterAll(() => rmSync(root, { recursive: true }))

test('the program of the page is the one that was built; one that is missing says how to build it', async () => {
  const missing = await motionScript(root).catch((error) => error)
  expect(missing).toBeInstanceOf(OutsideError)
  expect([missing.message, missing.suggestion].join(' ')).toMatch(/motion-page\.js.*npm run build/)
  mkdirSync(join(root, 'dist'))
  writeFileSync(join(root, 'dist', 'motion-page.js'), 'run()')
  expect(await motionScript(root)).toBe('run()')
})
