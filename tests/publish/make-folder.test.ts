import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { disk } from '../../src/publish/outside.ts'

const root = mkdtempSync(join(tmpdir(), 'make-folder-'))
afterAll(() => rmSync(root, { recursive: true }))

test('several make folders in a new folder at the same time', async () => {
  for (let i = 0; i < 300; i++) {
    const names = Array.from({ length: 8 }, (_, n) => join(root, `week ${i}`, `day ${n % 3}`, `lesson ${n}`))
    await Promise.all(names.map((name) => disk.makeFolder(name)))
    expect(names.filter((name) => !existsSync(name))).toEqual([])
  }
})

test.runIf(process.platform === 'linux')(
  'a folder that will not be made is refused, and not tried for ever',
  async () => {
    await expect(disk.makeFolder('/proc/tide/ebb')).rejects.toMatchObject({ code: 'ENOENT' })
  },
)
