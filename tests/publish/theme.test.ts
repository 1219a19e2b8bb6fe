import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { packageRoot } from '../../src/publish/package-root.ts'
import { loadTheme } from '../../src/publish/theme.ts'
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
    for (const said of ['Gulls over', 'What you need', 'For a winter pier', 'envelope'])
      expect(body).toContain(said)
    expect(theme.body(handoutView(plainLesson('1. Fold.'), drawStub).view)).toContain('Fold.')
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

test('a folder without a style sheet is told', async () => {
  rmSync(join(folder, 'handout.css'), { force: true })
  await expect(loadTheme(folder)).rejects.toMatchObject({
    name: 'ThemeError',
    message: `The theme in \`${folder}\` has no \`handout.css\``,
  })
})

test.each(['stepsheet', '../secret', '/none', ''])('%j is no theme', async (name) => {
  await expect(loadTheme(name)).rejects.toMatchObject({
    name: 'ThemeError',
    suggestion: expect.stringContaining('`step-sheet`'),
  })
})
