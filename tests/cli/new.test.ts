import { expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { isRefused } from '../card/sizes.ts'
import { foldlore } from './memory.ts'

test.each([...foldStyles.keys()])('the starter lesson for %s checks clean', async (fold) => {
  const made = await foldlore(['new', fold, 'a.md'])
  expect([made.code, made.out, made.err]).toEqual([0, '', 'Wrote a.md\n'])
  const { code, out } = await foldlore(['check', 'a.md'], { 'a.md': made.text('a.md') })
  expect([code, out]).toEqual([0, 'No findings in 1 lesson.\n'])
})

test.each(['6 x 6 in', 'A6 landscape'])('and at %s, in millimetres', async (closed) => {
  for (const fold of foldStyles.keys()) {
    if (isRefused({ name: fold }, closed)) continue
    const { text } = await foldlore(['new', fold, 'a.md'])
    const argv = ['check', 'a.md', '--closed', closed, '--units', 'mm', '--quiet']
    expect(await foldlore(argv, { 'a.md': text('a.md') }), fold).toMatchObject({ code: 0, out: '' })
  }
})

test('without a file it is named after the fold; --quiet does not say so', async () => {
  const { code, err, text } = await foldlore(['new', 'bridge', '--quiet'])
  expect([code, err]).toEqual([0, ''])
  expect(text('bridge.md')).toContain('fold: bridge\n')
})

test('a lesson is never overwritten without --force', async () => {
  const files = { 'bridge.md': 'my own' }
  const refused = await foldlore(['new', 'bridge'], files)
  expect([refused.code, refused.text('bridge.md')]).toEqual([2, 'my own'])
  expect(refused.err).toContain('overwrite it with `--force`')
  const forced = await foldlore(['new', 'bridge', '--force'], files)
  expect([forced.code, forced.text('bridge.md').startsWith('---\ntitle: Bridge card\n')]).toEqual([0, true])
})

test('a fold that does not exist: exit code 2 and the nearest one, nothing written', async () => {
  const { code, err, disk } = await foldlore(['new', 'gaet', 'a.md'])
  expect([code, err, disk.size]).toEqual([2, 'foldlore: Unexpected fold `gaet`\n  Write `gate`\n', 0])
})

test('a fold of one’s own has a starter too, and it checks without a word', async () => {
  const { code, disk } = await foldlore(['new', 'free', 'own.md'], {})
  expect(code).toBe(0)
  const lesson = new TextDecoder().decode(disk.get('own.md'))
  expect(lesson).toContain('fold: free')
  expect(await foldlore(['check', 'own.md'], { 'own.md': lesson })).toMatchObject({
    code: 0,
    out: 'No findings in 1 lesson.\n',
  })
})
