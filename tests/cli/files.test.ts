import { expect, test } from 'vitest'
import { readText } from '../../src/cli/read-text.ts'
import { writeText } from '../../src/cli/write-text.ts'
import { htmlMark } from '../../src/publish/our-marks.ts'
import { NotOursError, OutsideError } from '../../src/publish/problems.ts'
import { failure, memory } from './memory.ts'

test('a page that foldlore made is made again; anything else needs --force', async () => {
  const { outside, text } = memory({ 'page.html': `<!doctype html>${htmlMark}`, 'mine.html': '<p>My own' })
  await writeText('page.html', 'new', {}, outside)
  await expect(writeText('mine.html', 'new', {}, outside)).rejects.toThrow(NotOursError)
  expect([text('page.html'), text('mine.html')]).toEqual(['new', '<p>My own'])
  await writeText('mine.html', 'new', { force: true }, outside)
  expect(text('mine.html')).toBe('new')
})

test('a folder is never overwritten', async () => {
  const { outside } = memory({ 'in/a.md': '' })
  await expect(writeText('in', '', { force: true }, outside)).rejects.toThrow(
    'Cannot write `in`: it is a folder',
  )
})

test('a disk that fills up leaves nothing half written, and the old file as it was', async () => {
  const { outside, disk, text } = memory({ 'page.html': `<!doctype html>${htmlMark}` })
  const full = {
    ...outside,
    create: async (path: string) => {
      disk.set(path, new Uint8Array(3))
      throw failure('ENOSPC')
    },
  }
  await expect(writeText('page.html', 'new', {}, full)).rejects.toThrow(
    'Cannot write `page.html`: the disk is full',
  )
  expect([[...disk.keys()], text('page.html')]).toEqual([['page.html'], `<!doctype html>${htmlMark}`])
})

test('a file that is no UTF-8 text is told as that', async () => {
  const { outside } = memory({ 'a.md': new Uint8Array([0x54, 0xff, 0xfe]) })
  await expect(readText('a.md', outside)).rejects.toThrow(OutsideError)
  await expect(readText('a.md', outside)).rejects.toThrow('it is not UTF-8 text')
})
