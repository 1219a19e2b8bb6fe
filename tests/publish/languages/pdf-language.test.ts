import { expect, test } from 'vitest'
import { figuresOf } from '../../../src/publish/figures-of.ts'
import { handoutHtml } from '../../../src/publish/html.ts'
import { printPdf } from '../../../src/publish/pdf.ts'
import { loadTheme } from '../../../src/publish/theme.ts'
import { handoutView } from '../../../src/publish/view.ts'
import { openPdf, pageTexts, tags } from '../pdf-reading.ts'
import { withBrowser } from '../with-browser.ts'
import { foreign, invented } from './invented.ts'

const browser = withBrowser()

test.each(foreign)('a PDF says that it is in %s, to whoever reads it aloud', async (lang) => {
  const lesson = invented(lang)
  const { view } = handoutView(lesson, figuresOf(lesson))
  const html = await handoutHtml(view, await loadTheme('step-sheet'), { paper: 'a4' })
  const pdf = await openPdf(await printPdf(html, browser()))
  const { info } = await pdf.getMetadata()
  expect(info).toMatchObject({ Language: lang, Title: 'Zwemba' })
  const roles = (await tags(pdf)).map(({ role }) => role)
  for (const role of ['H1', 'H2', 'Table', 'TH', 'L', 'Figure']) expect(roles).toContain(role)
  const foot = { de: 'Seite 1 von', fr: 'page 1 sur', es: 'página 1 de' }[lang]
  expect((await pageTexts(pdf))[0]).toContain(foot)
})
