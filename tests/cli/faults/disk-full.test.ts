import { describe, expect, test } from 'vitest'
import { harbour, small } from '../lessons.ts'
import { folderOf, withProgram } from '../library/program.ts'
import { noDisk, onDisk } from './small-disk.ts'

const { program } = withProgram()
const folder = folderOf({
  'small.md': small,
  'harbour.md': harbour,
  'class.yaml': 'lesson: small.md\npeople: 4\nsheets:\n  white card: A4\n  patterned paper: A4\n',
})
const lesson = `${folder}/small.md`

/** Each command that writes files, and what it is to write into. */
const commands: readonly (readonly [string, readonly string[]])[] = [
  ['handout', ['handout', lesson, '-o', 'DISK/made']],
  ['kit', ['kit', lesson, '--people', '3', '-o', 'DISK/made']],
  ['class', ['class', `${folder}/class.yaml`, '-o', 'DISK/made', '--within', '1 s']],
  ['text', ['text', lesson, '-o', 'DISK/made/small.txt']],
  ['screen', ['screen', lesson, '-o', 'DISK/made']],
  ['export', ['export', lesson, '--as', 'svg', '-o', 'DISK/made']],
  ['library', ['library', folder, '-o', 'DISK/made']],
]

describe.skipIf(noDisk !== undefined)('a disk that is full', () => {
  test.each(commands)('%s says so, and leaves no part of a file', (_, argv) => {
    const { code, said, left } = onDisk(
      { size: '64k', before: 'dd if=/dev/zero of=DISK/other bs=4k 2>/dev/null' },
      program(),
      argv,
    )
    expect(said).toMatch(
      /foldlore: Cannot write `DISK\/made[^`]*`: the disk is full\n {2}Make some room and try again\n/,
    )
    expect(code).toBe(3)
    expect(said).not.toMatch(/^ +at /m)
    // A library notes small things on the way; none of them is in part.
    expect(
      Object.keys(left).filter((name) => !/^made\/\.foldlore-library\.json$|^other$/.test(name)),
    ).toEqual([])
  })

  test('what was there before is there as it was', () => {
    const { code, said, left } = onDisk(
      {
        size: '1m',
        before: `"$@" > /dev/null 2>&1; dd if=/dev/zero of=DISK/other bs=4k 2>/dev/null; cat DISK/small.html > /dev/null`,
      },
      program(),
      ['handout', lesson, '-o', 'DISK/small.html'],
    )
    expect([code, said]).toEqual([
      3,
      'foldlore: Cannot write `DISK/small.html`: the disk is full\n  Make some room and try again\n',
    ])
    expect(Object.keys(left).sort()).toEqual(['other', 'small.html'])
    expect(left['small.html']).toBeGreaterThan(10_000)
  })

  test('a class whose last file has no room writes none of them', () => {
    const argv = commands.find(([name]) => name === 'class')?.[1] ?? []
    const { code, said, left } = onDisk({ size: '300k' }, program(), argv)
    expect([code, /the disk is full/.test(said), left]).toEqual([3, true, {}])
  })
})

describe.skipIf(noDisk !== undefined)('a disk that can only be read', () => {
  test.each(commands)('%s says so', (_, argv) => {
    const { code, said, left } = onDisk({ size: '64k', readOnly: true }, program(), argv)
    expect(said).toMatch(
      /foldlore: Cannot write (into )?`DISK\/made[^`]*`: that disk can only be read\n {2}Choose a folder on another disk\n/,
    )
    expect([code, left]).toEqual([3, {}])
  })
})

test.runIf(noDisk !== undefined)('disks that are full cannot be tried here', ({ skip }) => {
  skip(noDisk)
})
