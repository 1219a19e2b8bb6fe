import { expect, test } from 'vitest'
import { small } from './lessons.ts'
import { foldlore } from './memory.ts'

test('--json says what was written and what was found', async () => {
  const { code, out } = await foldlore(['handout', 'small.md', '-o', 'page.html', '--json'], {
    'small.md': small,
  })
  expect(code).toBe(0)
  expect(JSON.parse(out)).toEqual({ written: ['page.html'], findings: [] })
})
