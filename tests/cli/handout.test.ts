import { appendFile, cp, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
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

test('--theme takes a folder of the teacher’s own, and the page looks like it', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'theme-'))
  try {
    await cp(fileURLToPath(new URL('../../themes/step-sheet', import.meta.url)), folder, { recursive: true })
    await appendFile(join(folder, 'handout.css'), '\nh1 { letter-spacing: 0.123em; }\n')
    const page = async (more: readonly string[]) =>
      (await foldlore(['handout', 'small.md', '-o', 'page.html', ...more], { 'small.md': small })).text(
        'page.html',
      )
    expect(await page(['--theme', folder])).toContain('0.123em')
    expect(await page([])).not.toContain('0.123em')
  } finally {
    await rm(folder, { recursive: true })
  }
})
