import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { browserUnderWay } from '../../src/publish/launch.ts'
import { NoBrowserError } from '../../src/publish/problems.ts'

const folder = mkdtempSync(join(tmpdir(), 'under-way-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** A program that says when it runs and then never answers. */
function silent(name: string): { program: string; note: string } {
  const [program, note] = [join(folder, name), join(folder, `${name}.note`)]
  writeFileSync(program, `#!/bin/sh\necho $$ > '${note}'\nexec sleep 60\n`, { mode: 0o755 })
  return { program, note }
}

const isRunning = (pid: number): boolean => {
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}

test.skipIf(process.platform === 'win32')(
  'it starts while the caller works on without a pause, and is ended while it starts',
  async () => {
    const { program, note } = silent('slow')
    const { browser, stop } = await browserUnderWay(program)
    browser.catch(() => {})
    const end = performance.now() + 5000
    // A loop that gives nobody else a turn in this program.
    while (!existsSync(note) && performance.now() < end);
    while (readFileSync(note, 'utf8') === '' && performance.now() < end);
    const pid = Number(readFileSync(note, 'utf8'))
    expect(isRunning(pid)).toBe(true)
    await stop()
    await expect(browser).rejects.toThrow(NoBrowserError)
    // It has been told to end, which takes the system a moment.
    await expect.poll(() => isRunning(pid)).toBe(false)
  },
)

test('one that is not there is told by whoever waits for it', async () => {
  const { browser, stop } = await browserUnderWay(join(folder, 'none'))
  await expect(browser).rejects.toThrow(NoBrowserError)
  await stop()
})
