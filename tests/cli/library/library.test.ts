import { readFileSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { small } from '../lessons.ts'
import { brokenFiles, filesIn, folderOf, withProgram, write } from './program.ts'

const { run, start } = withProgram()
const named = (title: string): string => small.replace('Low tide', title)
const wrong = small.replace('{base.scores}', '{base.scors}')

test('prints each lesson, again only what has changed, and takes away what no lesson has any more', async () => {
  const folder = folderOf({
    'sea/low tide.md': small,
    'gulls.md': named('Gulls'),
    'notes.md': '# Notes\n\nBuy card.\n',
  })
  const out = join(folder, 'prints')
  const answer = async (code: number) => {
    const { code: got, out: said, err } = await run('library', folder, '--json')
    expect([got, err]).toEqual([code, ''])
    return JSON.parse(said)
  }
  const first = await answer(0)
  expect([first.made, first.kept, first.removed]).toEqual([2, 0, 0])
  expect(first.lessons.map(({ lesson }: { lesson: string }) => lesson)).toEqual([
    'gulls.md',
    'sea/low tide.md',
  ])
  const all = filesIn(out)
  expect(all).toEqual([
    '.foldlore-library.json',
    'gulls/card.svg',
    'gulls/gulls-in-a4-step-sheet.html',
    'gulls/gulls-in-a4-step-sheet.pdf',
    'gulls/index.html',
    'index.html',
    'report.html',
    'sea/low tide/card.svg',
    'sea/low tide/index.html',
    'sea/low tide/low tide-in-a4-step-sheet.html',
    'sea/low tide/low tide-in-a4-step-sheet.pdf',
  ])
  expect(brokenFiles(out)).toEqual([])
  // Nothing has changed: no file is touched.
  const times = () => filesIn(out).map((path) => statSync(join(out, path)).mtimeMs)
  const before = times()
  expect(await answer(0)).toMatchObject({ made: 0, kept: 2, removed: 0 })
  expect(times()).toEqual(before)
  // One has changed.
  write(folder, 'gulls.md', named('Gulls and terns'))
  expect(await answer(0)).toMatchObject({ made: 1, kept: 1, removed: 0 })
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toContain(' terns')
  // A mistake is told, and the print of before stays, as what it is.
  write(folder, 'gulls.md', wrong)
  const broken = await answer(1)
  expect(broken).toMatchObject({ made: 0, kept: 1, removed: 0 })
  const [gulls] = broken.lessons
  expect([gulls.prints.length, gulls.older.length, gulls.findings[0].line]).toEqual([0, 1, 27])
  expect(readFileSync(join(out, 'gulls/index.html'), 'utf8')).toContain('Prints of an earlier text')
  expect(readFileSync(join(out, 'report.html'), 'utf8').includes('<code>scors</code>')).toBe(true)
  // One is gone; what is not ours stays.
  write(out, 'gulls/gulls-in-my-hand.html', 'mine')
  rmSync(join(folder, 'gulls.md'))
  expect(await answer(0)).toMatchObject({ made: 0, kept: 1, removed: 2 })
  expect(filesIn(out).filter((path) => path.startsWith('gulls'))).toEqual(['gulls/gulls-in-my-hand.html'])
  // A print that was thrown away comes back.
  rmSync(join(out, 'sea/low tide/low tide-in-a4-step-sheet.pdf'))
  expect(await answer(0)).toMatchObject({ made: 1, kept: 0 })
  expect(brokenFiles(out).filter((path) => !path.includes('my-hand'))).toEqual([])
}, 300_000)

test('a library file asks for more prints, and one with a mistake prints nothing', async () => {
  const folder = folderOf({
    'tide.md': small,
    'old/left.md': small,
    'library.yaml': 'title: At the harbour\nsizes: [own, A6]\nunits: [in, mm]\nleave out: [old]\n',
  })
  const { code, err } = await run('library', folder, '-o', join(folder, 'out'))
  expect(code, err).toBe(0)
  expect(err).toContain('1 of 1: Low tide, 4 prints\n1 lesson: 4 prints made, 0 as they were\n')
  const prints = filesIn(join(folder, 'out')).filter((path) => path.endsWith('.pdf'))
  expect(prints).toEqual([
    'tide/tide-a6-in-a4-step-sheet.pdf',
    'tide/tide-a6-mm-a4-step-sheet.pdf',
    'tide/tide-in-a4-step-sheet.pdf',
    'tide/tide-mm-a4-step-sheet.pdf',
  ])
  write(folder, 'library.yaml', 'themes: [step-shet]\n')
  const wrongTheme = await run('library', folder, '-o', join(folder, 'out'))
  expect(wrongTheme.code).toBe(1)
  expect(wrongTheme.err).toMatch(
    /library\.yaml:1:10 error Unexpected theme `step-shet`.*\(theme\)\n {2}Write `step-sheet`/,
  )
  expect(filesIn(join(folder, 'out')).filter((path) => path.endsWith('.pdf'))).toEqual(prints)
}, 300_000)

test('without a browser the pages are there, and what is missing is told once', async () => {
  const folder = folderOf({ 'a.md': small, 'b.md': small })
  const { code, err } = await start(['library', folder, '--quiet'], { FOLDLORE_BROWSER: '/none/chrome' })
    .ended
  expect(code).toBe(3)
  expect(err.match(/There is no browser at/g)).toHaveLength(1)
  expect(err).toContain('Concerns a.md, b.md')
  expect(filesIn(join(folder, 'prints')).filter((path) => /step-sheet/.test(path))).toEqual([
    'a/a-in-a4-step-sheet.html',
    'b/b-in-a4-step-sheet.html',
  ])
}, 120_000)

test('a file of somebody else in the place of a print stays, and is told', async () => {
  const folder = folderOf({ 'a.md': small, 'prints/a/a-in-a4-step-sheet.pdf': 'mine' })
  const { code, err } = await run('library', folder, '--quiet')
  expect(code).toBe(2)
  expect(err).toContain(
    'was not made by foldlore, so it is not overwritten\n  Move it away, or overwrite it with `--force`',
  )
  expect(readFileSync(join(folder, 'prints/a/a-in-a4-step-sheet.pdf'), 'utf8')).toBe('mine')
}, 120_000)

test.each([
  [['none'], 3, 'there is no such folder'],
  [['.', '-o', '.'], 3, 'the lessons are in it'],
  [['.', '--watch', '--json'], 2, '`--watch` does not end'],
  [['.', '--jobs', '0'], 2, 'expected a whole number from 1 up'],
])('library %j is refused in plain words', async (argv, code, message) => {
  const told = await run('library', ...argv)
  expect(told.code).toBe(code)
  expect(told.err).toContain(message)
})
