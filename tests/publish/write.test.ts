import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { htmlMark } from '../../src/publish/our-marks.ts'
import { disk, type Outside } from '../../src/publish/outside.ts'
import { isOurs, mayWrite, writeWhole } from '../../src/publish/write.ts'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'write-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const data = (text: string) => new TextEncoder().encode(text)
const files = (...names: string[]) =>
  names.map((name) => ({ path: join(folder, name), data: data(`new ${name}`) }))
const fails = (code: string) => () => Promise.reject(Object.assign(new Error(code), { code }))

test('a file and its folder appear', async () => {
  await writeWhole(files('a/b/c.html'), disk)
  expect(readFileSync(join(folder, 'a/b/c.html'), 'utf8')).toBe('new a/b/c.html')
  expect(readdirSync(join(folder, 'a/b'))).toEqual(['c.html'])
})

test('until it is whole, a file is not there under its name', async () => {
  const seen: string[][] = []
  const watched: Outside = {
    ...disk,
    async create(path, content) {
      seen.push(readdirSync(folder))
      await disk.create(path, content)
      seen.push(readdirSync(folder))
    },
  }
  await writeWhole(files('a.html', 'a.pdf'), watched)
  expect(seen.flat().filter((name) => name === 'a.html' || name === 'a.pdf')).toEqual([])
  expect(readdirSync(folder).sort()).toEqual(['a.html', 'a.pdf'])
})

test.each([
  ['ENOSPC', 'the disk is full', 'Make some room and try again'],
  ['EROFS', 'that disk can only be read', 'Choose a folder on another disk'],
  ['EACCES', 'you may not write there', 'Choose a folder of your own'],
])('%s half way: %s, nothing has changed, nothing is left lying about', async (code, why, cure) => {
  writeFileSync(join(folder, 'a.html'), 'old')
  let count = 0
  const full: Outside = {
    ...disk,
    async create(path, content) {
      if (++count === 1) return disk.create(path, content)
      // As a full disk does: some of it is there.
      await disk.create(path, content.subarray(0, 3))
      return fails(code)()
    },
  }
  await expect(writeWhole(files('a.html', 'a.pdf'), full)).rejects.toMatchObject({
    name: 'OutsideError',
    message: `Cannot write \`${join(folder, 'a.pdf')}\`: ${why}`,
    suggestion: cure,
  })
  expect(readdirSync(folder)).toEqual(['a.html'])
  expect(readFileSync(join(folder, 'a.html'), 'utf8')).toBe('old')
})

test('a folder that cannot be made is told', async () => {
  await expect(writeWhole(files('a.html'), { ...disk, makeFolder: fails('ENOTDIR') })).rejects.toMatchObject({
    message: `Cannot write \`${join(folder, 'a.html')}\`: part of the path is a file, not a folder`,
  })
})

test('what is ours is known by what is in it', () => {
  expect(isOurs(data(`<!doctype html><html lang="en"><head><meta charset="utf-8">${htmlMark}`))).toBe(true)
  expect(isOurs(data('%PDF-1.4\n1 0 obj\n<</Creator (foldlore)\n/Producer (Skia/PDF m147)>>'))).toBe(true)
  expect(isOurs(data('<!doctype html><title>Mine</title>'))).toBe(false)
  expect(isOurs(data('%PDF-1.4\n<</Creator (Writer)>>'))).toBe(false)
  // A page that tells about our pages is not one of them.
  expect(isOurs(data(`${'x'.repeat(3000)}${htmlMark}`))).toBe(false)
  expect(isOurs(data(''))).toBe(false)
})

test("another's file is not overwritten, unless forced", async () => {
  const path = join(folder, 'a.html')
  writeFileSync(path, 'mine')
  await expect(mayWrite(path, false, disk)).rejects.toMatchObject({ name: 'NotOursError', path })
  await mayWrite(path, true, disk)
  await mayWrite(join(folder, 'none.html'), false, disk)
  await expect(mayWrite(folder, false, disk)).rejects.toMatchObject({
    name: 'OutsideError',
    message: `Cannot look at \`${folder}\`: a folder has that name`,
  })
})
