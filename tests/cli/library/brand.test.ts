import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { small } from '../lessons.ts'
import { folderOf, withProgram, write } from './program.ts'

const { run } = withProgram()

test('a workshop file that comes or changes has its lessons printed again', async () => {
  const folder = folderOf({ 'low-tide.md': small })
  const made = async (): Promise<[number, boolean]> => {
    const { out, err } = await run('library', folder, '--json')
    expect(err).toBe('')
    const page = readFileSync(join(folder, 'prints/low-tide/low-tide-in-a4-step-sheet.html'), 'utf8')
    return [JSON.parse(out).made, page.includes('class="brand-footer">At the old lamp house')]
  }
  expect(await made()).toEqual([1, false])
  write(folder, 'workshop.yaml', 'footer: At the old lamp house\n')
  expect(await made()).toEqual([1, true])
  expect(await made()).toEqual([0, true])
}, 120_000)
