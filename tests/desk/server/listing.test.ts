import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { reach } from '../../../src/desk/server/list-files.ts'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { whatFile } from '../../../src/desk/server/what-file.ts'
import { ask, someDesk, someFolder } from './desk.ts'

const card = '```card\nfold: bridge\nclosed: 7 x 5 in\n```\n'
const lesson = (title: string) => `---\ntitle: ${title}\nlevel: beginner\n---\n\n${card}`

function write(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), text)
  }
}

const list = async (desk: OpenDesk) =>
  (await ask(desk, '/api/files')).json() as unknown as {
    files: { path: string; title: string; kind: string; changed: number }[]
    more: boolean
  }

test('lessons and class files are listed with their titles, the upper ones first, and nothing else is', async () => {
  const folder = someFolder()
  write(folder, {
    'sea/harbour.md': lesson('Harbour lights'),
    'plain-card.md': `# A card alone\n\n${card}`,
    'no_title-at.all.md': card,
    'bom.md': `\ufeff${lesson('With a mark').replaceAll('\n', '\r\n')}`,
    'Saturday.YAML': 'title: Saturday\nlessons:\n  - lesson: harbour.md\npeople: 14\n',
    'one.yml': 'lesson: sea/harbour.md\npeople: 3\n',
    'README.md': '# Notes\n\nBuy paper.\n',
    'blog.md': '---\ntitle: My week\ndate: today\n---\n\nWords\n',
    'other.yaml': 'name: something\n',
    'broken.yaml': '{{{',
    'harbour.txt': lesson('No'),
    '.hidden.md': lesson('No'),
    '.drafts/a.md': lesson('No'),
    'node_modules/a.md': lesson('No'),
    'large.md': lesson('No') + 'a'.repeat(2_000_000),
  })
  symlinkSync(folder, join(folder, 'again'))
  symlinkSync('/etc/hostname', join(folder, 'far.md'))
  const { files, more } = await list(await someDesk(folder))
  expect(files.map(({ path, title, kind }) => [path, title, kind])).toEqual([
    ['Saturday.YAML', 'Saturday', 'class'],
    ['bom.md', 'With a mark', 'lesson'],
    ['no_title-at.all.md', 'No title at.all', 'lesson'],
    ['one.yml', 'One', 'class'],
    ['plain-card.md', 'A card alone', 'lesson'],
    ['sea/harbour.md', 'Harbour lights', 'lesson'],
  ])
  expect(more).toBe(false)
  for (const { changed } of files) expect(Math.abs(changed - Date.now())).toBeLessThan(60_000)
})

test('a file that has changed is read again', async () => {
  const folder = someFolder()
  write(folder, { 'a.md': lesson('Before') })
  const desk = await someDesk(folder)
  const titles = async () => (await list(desk)).files.map(({ title }) => title)
  expect(await titles()).toEqual(['Before'])
  write(folder, { 'a.md': lesson('After!'), 'b.md': 'Words' })
  expect(await titles()).toEqual(['After!'])
  write(folder, { 'b.md': lesson('Second') })
  expect(await titles()).toEqual(['After!', 'Second'])
})

test('a folder without lessons is fine', async () => {
  expect(await list(await someDesk(someFolder()))).toEqual({ files: [], more: false })
})

test('the desk looks so deep and at so many files, and says that there are more', async () => {
  const deep = someFolder()
  const below = (depth: number) => `${'a/'.repeat(depth)}x.md`
  write(deep, { [below(reach.depth)]: lesson('Deep'), [below(reach.depth + 1)]: lesson('Too deep') })
  const { files, more } = await list(await someDesk(deep))
  expect([files.map(({ title }) => title), more]).toEqual([['Deep'], true])
  const many = someFolder()
  write(many, Object.fromEntries(Array.from({ length: reach.files + 1 }, (_, i) => [`${i}.md`, card])))
  const all = await list(await someDesk(many))
  expect([all.files.length, all.more]).toEqual([reach.files, true])
})

test('every example is what it is', async () => {
  const { files } = await list(await someDesk('lessons'))
  expect(files.filter(({ kind }) => kind === 'lesson').length).toBeGreaterThanOrEqual(9)
  expect(files.find(({ path }) => path === 'harbour-lights.md')?.title).toBe('Harbour lights')
})

test('what a file is goes by what is in it', () => {
  expect(whatFile('a.md', '  ```card small\nfold: side\n  ```')).toEqual({ kind: 'lesson', title: 'A' })
  expect(whatFile('a.md', '~~~card\nfold: side\n~~~')).toBeDefined()
  expect(whatFile('a.md', '```cardboard\n```')).toBeUndefined()
  expect(whatFile('a.md', 'The card is ```card``` here')).toBeUndefined()
  expect(whatFile('a.md', '---\ntitle: "Quoted: yes"\nunits: mm\n---\n')).toEqual({
    kind: 'lesson',
    title: 'Quoted: yes',
  })
  expect(whatFile('a.md', '')).toBeUndefined()
})
