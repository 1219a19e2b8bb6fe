import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { packageRoot } from '../../src/publish/package-root.ts'
import { loadSizeChartTheme, loadStyle, loadTheme, loadTracingTheme } from '../../src/publish/theme.ts'
import { themeNames } from '../../src/publish/theme-folder.ts'
import { handoutView } from '../../src/publish/view.ts'
import { drawStub, pier, plainLesson } from './lesson.ts'

const folder = mkdtempSync(join(tmpdir(), 'theme-'))
afterAll(() => rmSync(folder, { recursive: true }))

test('every theme that comes with foldlore prints a full lesson and an empty one', async () => {
  const names = await themeNames()
  expect(names).toContain('step-sheet')
  for (const name of names) {
    const theme = await loadTheme(name)
    const body = theme.body(handoutView(pier(), drawStub).view)
    const whole = name === 'card' ? [] : ['For a winter pier']
    for (const said of ['Gulls over', 'What you need', 'envelope', ...whole]) expect(body).toContain(said)
    expect(theme.body(handoutView(plainLesson('1. Fold.'), drawStub).view)).toContain('Fold')
  }
})

test('a title is text, whatever it looks like', async () => {
  const { body } = await loadTheme('step-sheet')
  expect(body(handoutView(pier(), drawStub).view)).toContain(
    '<h1>Gulls over the “pier” &amp; &lt;sand&gt;</h1>',
  )
})

test('a folder may be a theme', async () => {
  cpSync(join(packageRoot(), 'themes/step-sheet'), folder, { recursive: true })
  writeFileSync(join(folder, 'handout.hbs'), '<p>{{title}}</p>')
  const { body } = await loadTheme(folder)
  expect(body(handoutView(pier(), drawStub).view)).toContain('<p>Gulls over')
})

test('what a folder does not have is taken from the step sheet, and its style sheet comes on top', async () => {
  const own = mkdtempSync(join(folder, 'own-'))
  writeFileSync(join(own, 'handout.css'), ':root { --rust: #084 }')
  const [mine, theirs] = await Promise.all([loadTheme(own), loadTheme('step-sheet')])
  expect(mine.css).toBe(`${theirs.css}\n:root { --rust: #084 }`)
  expect(mine.body(handoutView(pier(), drawStub).view)).toBe(theirs.body(handoutView(pier(), drawStub).view))
  expect((await loadTracingTheme(own)).css).toContain('--rust: #084')
  expect((await loadSizeChartTheme('card')).css).toBe(
    `${await loadStyle('card')}\n${(await loadSizeChartTheme('step-sheet')).css.slice(theirs.css.length + 1)}`,
  )
})

test('one partial of its own is enough of a theme', async () => {
  const own = mkdtempSync(join(folder, 'own-'))
  mkdirSync(join(own, 'partials'))
  writeFileSync(join(own, 'partials', 'intro.hbs'), '<p>Ahoy</p>')
  const { body } = await loadTheme(own)
  expect(body(handoutView(pier(), drawStub).view)).toContain('<p>Ahoy</p>')
})

test('a folder with nothing of a theme is none', async () => {
  const empty = mkdtempSync(join(folder, 'own-'))
  await expect(loadTheme(empty)).rejects.toMatchObject({
    name: 'ThemeError',
    message: `There is nothing of a theme in \`${empty}\``,
  })
})

test.each([
  ['pages: haf', '1:8: Unexpected `haf`', '`half`'],
  ['sheets: booklet', '1:9: Only half pages can be put on sheets', '`pages: half`'],
  ['pages: half\nsheet: pairs', '2:1: Unexpected key `sheet`', '`sheets`'],
  ['figures: {beside: 5}', '1:19: `5` is no room for a figure', '80 x 50 mm'],
  ['figures: {beside: 1 x 2 mm}', '1:19: `1 x 2 mm` is no room for a figure', '80 x 50 mm'],
  ['figures: [80, 50]', '1:10: `figures` wants the room of each', '80 x 50 mm'],
  ['foot: shrot', '1:7: Unexpected `shrot`', '`short`'],
  ['pages: [', '1:', ''],
])('a mistake in `theme.yaml`: %j', async (text, where, cure) => {
  const own = mkdtempSync(join(folder, 'own-'))
  writeFileSync(join(own, 'theme.yaml'), text)
  await expect(loadTheme(own)).rejects.toMatchObject({
    name: 'ThemeError',
    message: expect.stringContaining(`${join(own, 'theme.yaml')}:${where}`),
    suggestion: expect.stringContaining(cure),
  })
})

test.each(['stepsheet', '../secret', '/none', ''])('%j is no theme', async (name) => {
  await expect(loadTheme(name)).rejects.toMatchObject({
    name: 'ThemeError',
    suggestion: expect.stringContaining('`step-sheet`'),
  })
})
