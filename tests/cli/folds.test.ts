import { expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { foldlore } from './memory.ts'

test('the catalogue names every fold with what it is', async () => {
  const { code, out, err } = await foldlore(['folds'])
  expect([code, err]).toEqual([0, ''])
  for (const { name, summary } of foldStyles.values())
    expect(out.split('\n').some((line) => line.startsWith(`  ${name} `) && line.includes(summary))).toBe(true)
  expect(out).toContain('`fold: free`')
})

test('one fold tells its lengths, what they usually are, and its panels', async () => {
  const { code, out } = await foldlore(['folds', 'bridge'])
  expect(code).toBe(0)
  expect(out).toMatch(/\n {2}leg +1 in +height of the two legs/)
  expect(out).toMatch(/\n {2}tab +leg +width of the tabs/)
  expect(out).toMatch(/\n {2}left tab +inside\n/)
})

test('a fold that does not exist gets the nearest one', async () => {
  const { code, out, err } = await foldlore(['folds', 'brigde'])
  expect([code, out]).toEqual([2, ''])
  expect(err).toBe('foldlore: Unexpected fold `brigde`\n  Write `bridge`\n')
})

test('--json gives the same to programs', async () => {
  const { out } = await foldlore(['folds', 'bridge', '--json'])
  expect(JSON.parse(out)).toEqual({
    folds: [
      {
        name: 'bridge',
        summary: foldStyles.get('bridge')?.summary,
        parameters: [
          { name: 'leg', usual: '1 in', help: expect.any(String) },
          { name: 'tab', usual: 'leg', help: expect.any(String) },
        ],
        panels: expect.arrayContaining([{ name: 'left tab', side: 'face' }]),
      },
    ],
  })
})
