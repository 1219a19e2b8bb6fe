import { expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { foldsShape } from '../workshop/contract.ts'
import { foldlore } from './memory.ts'

const json = async (...argv: string[]) => {
  const { code, out, err } = await foldlore(['folds', ...argv, '--json'])
  expect([code, err]).toEqual([0, ''])
  return foldsShape.parse(JSON.parse(out)).folds
}

test('the catalogue names every fold, a card of one’s own too, and draws it', async () => {
  const { code, out, err } = await foldlore(['folds'])
  expect([code, err]).toEqual([0, ''])
  for (const name of [...foldStyles.keys(), 'free']) expect(out.split('\n')).toContain(`  ${name}`)
  expect(out).toContain('\n    | ! :         : ! |')
})

test('one fold tells its lengths, what they usually are, its panels, and what its card comes to', async () => {
  const { code, out } = await foldlore(['folds', 'bridge'])
  expect(code).toBe(0)
  expect(out).toMatch(/\n {2}leg +1 in +height of the two legs/)
  expect(out).toMatch(/\n {2}tab +leg +width of the tabs/)
  expect(out).toMatch(/\n {2}left tab +inside\n/)
  // Floor 7 - 2 · 3/4 = 5 1/2 in, base 5 1/2 + 4 · 3/4.
  expect(out).toMatch(/\n {2}base +1 {2}8 1\/2 × 5 in\n/)
  expect(out).toMatch(/\n {2}shut +7 × 5 in\n/)
  expect(out).toMatch(/\n {2}standing depth +3\/4 in\n/)
  expect(out).toMatch(/\n {2}how it moves +moves as one: one crease leads the others\n/)
  expect(out).toContain('`foldlore new bridge` writes that lesson.\n')
})

test('counts with their range, words to choose from, and what a card of one’s own lists', async () => {
  const { out: accordion } = await foldlore(['folds', 'accordion'])
  expect(accordion).toMatch(/\n {2}panels +4 {2}2 to 12 +number of panels\n/)
  expect(accordion).toMatch(/\n {2}spine +left, top, long side or short side +where the fold is/)
  const { out: free } = await foldlore(['folds', 'free'])
  expect(free).toMatch(/\n {2}strips +several strips of one sheet/)
})

test('--units tells the same in millimetres', async () => {
  const { out } = await foldlore(['folds', 'bridge', '--units', 'mm'])
  expect(out).toMatch(/\n {2}shut +177 × 127 mm\n/)
  expect(out).toContain('Measured on a ruler of 1 mm.')
  const [bridge] = await json('bridge', '--units', 'mm')
  expect(bridge?.closed.width.text).toBe('177 mm')
})

test('a fold that does not exist gets the nearest one', async () => {
  const { code, out, err } = await foldlore(['folds', 'brigde'])
  expect([code, out]).toEqual([2, ''])
  expect(err).toBe('foldlore: Unexpected fold `brigde`\n  Write `bridge`\n')
})

test('--json gives the same to programs', async () => {
  const [bridge, ...others] = await json('bridge')
  expect(others).toEqual([])
  expect(bridge).toMatchObject({
    name: 'bridge',
    summary: foldStyles.get('bridge')?.summary,
    parameters: [
      { name: 'leg', usual: '1 in' },
      { name: 'tab', usual: 'leg' },
    ],
    counts: [],
    choices: [],
    panels: expect.arrayContaining([{ name: 'left tab', side: 'face' }]),
    pieces: [{ name: 'base', count: 1, width: { text: '8 1/2 in' }, height: { text: '5 in' } }],
    closed: { width: { text: '7 in' }, height: { text: '5 in' } },
    box: false,
    standing: { depth: { text: '3/4 in' } },
    freedom: 1,
  })
  const [accordion] = await json('accordion')
  expect(accordion?.counts).toEqual([
    { name: 'panels', usual: 4, least: 2, most: 12, help: 'number of panels' },
  ])
  expect(accordion?.choices).toMatchObject([
    { name: 'spine', words: ['left', 'top', 'long side', 'short side'] },
  ])
})

test('--json of all of them', async () => {
  const folds = await json()
  expect(folds.map(({ name }) => name)).toEqual([...foldStyles.keys(), 'free'])
  for (const fold of folds) expect([fold.name, fold.standing !== undefined]).toEqual([fold.name, true])
})

test('--html writes a page, folds.html unless it is named, and says so', async () => {
  const { code, out, err, text } = await foldlore(['folds', 'bridge', '--html'])
  expect([code, out, err]).toEqual([0, '', 'Wrote folds.html\n'])
  expect(text('folds.html')).toMatch(/^<!doctype html>[\s\S]*<h3 [^>]*>bridge<\/h3>/)
  const named = await foldlore(['folds', '--html', '-o', 'out/all.html', '--quiet'])
  expect([named.code, named.err, [...named.disk.keys()]]).toEqual([0, '', ['out/all.html']])
})

test('a page that foldlore did not make is not overwritten without --force', async () => {
  const files = { 'folds.html': 'my own' }
  const refused = await foldlore(['folds', 'side', '--html'], files)
  expect([refused.code, refused.text('folds.html')]).toEqual([2, 'my own'])
  expect(refused.err).toContain('--force')
  const forced = await foldlore(['folds', 'side', '--html', '--force'], files)
  expect([forced.code, forced.text('folds.html').startsWith('<!doctype html>')]).toEqual([0, true])
})

test('what cannot be: a page and JSON, or a page in a file of another kind', async () => {
  const both = await foldlore(['folds', '--html', '--json'])
  expect([both.code, both.err]).toEqual([
    2,
    'foldlore: `--html` and `--json` are two answers\n  Write one of them\n',
  ])
  const pdf = await foldlore(['folds', '--html', '-o', 'folds.pdf'])
  expect([pdf.code, pdf.err, pdf.disk.size]).toEqual([
    2,
    'foldlore: `folds.pdf` is no name for a page\n  Name a file that ends in `.html`\n',
    0,
  ])
})
