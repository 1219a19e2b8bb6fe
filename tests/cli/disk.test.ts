import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { diskAt } from '../../src/cli/disk.ts'
import { OutsideError } from '../../src/cli/problems.ts'

let folder: string
const disk = diskAt('/')
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'disk-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

test('a file is written whole, in a folder that was not there, and nothing else is left', async () => {
  const path = join(folder, 'a', 'b', 'page.html')
  await disk.write(path, 'first')
  await disk.write(path, 'second')
  expect([readFileSync(path, 'utf8'), readdirSync(join(folder, 'a', 'b'))]).toEqual(['second', ['page.html']])
})

test('a write that fails leaves the old content and no half of a file', async () => {
  mkdirSync(join(folder, 'taken'))
  await expect(disk.write(join(folder, 'taken'), 'text')).rejects.toThrow(OutsideError)
  writeFileSync(join(folder, 'file'), 'kept')
  await expect(disk.write(join(folder, 'file', 'below'), 'text')).rejects.toThrow(
    /Cannot write .*: part of the path is a file, not a folder/,
  )
  expect([readdirSync(folder).sort(), readFileSync(join(folder, 'file'), 'utf8')]).toEqual([
    ['file', 'taken'],
    'kept',
  ])
})

test('a file that is not there, and a folder, cannot be read', async () => {
  await expect(disk.read(join(folder, 'none.md'))).rejects.toThrow(
    /Cannot read .*none\.md`: there is no such file/,
  )
  await expect(disk.read(folder)).rejects.toThrow(/Cannot read .*: it is a folder/)
})

test('what stands at a path', async () => {
  const file = join(folder, 'file')
  writeFileSync(file, '')
  expect(await Promise.all([disk.exists(file), disk.exists(folder), disk.exists(join(file, 'x'))])).toEqual([
    'file',
    'folder',
    undefined,
  ])
})
