import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { small } from '../lessons.ts'
import { filesIn, folderOf, withProgram } from './program.ts'

const { start } = withProgram()

test('lessons that are not UTF-8 are told as a check tells them, and nothing is printed of them', async () => {
  const folder = folderOf({})
  writeFileSync(join(folder, 'latin.md'), Buffer.from(`${small}\nA caf\u00e9 by the sea\n`, 'latin1'))
  const utf16 = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(small, 'utf16le')])
  writeFileSync(join(folder, 'utf16.md'), utf16)
  writeFileSync(join(folder, 'utf16-big.md'), Buffer.from(utf16).swap16())
  // They do not come as far as the browser.
  const { code, err } = await start(['library', folder, '--quiet'], { FOLDLORE_BROWSER: '/none/chrome' })
    .ended
  expect(code).toBe(3)
  const line = small.split('\n').length + 1
  expect(err).toContain(
    `Cannot read \`latin.md\`: it is not UTF-8 text: the letter at ${line}:6 is written in another way\n  Save it as UTF-8 in your editor`,
  )
  for (const name of ['utf16.md', 'utf16-big.md'])
    expect(err).toContain(`Cannot read \`${name}\`: it is UTF-16 text, not UTF-8\n`)
  expect(filesIn(join(folder, 'prints')).filter((path) => /step-sheet/.test(path))).toEqual([])
}, 120_000)
