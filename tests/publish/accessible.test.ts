import { expect, test } from 'vitest'
import { catalogueView } from '../../src/publish/catalogue-view.ts'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { loadCatalogueTheme, loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { catalogue } from '../../src/workshop/catalogue.ts'
import { axeFindings } from './axe.ts'
import { pier } from './lesson.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const broken = (html: string, width: number): Promise<string[]> => axeFindings(browser(), html, width)

test.each([1200, 390])('a screen %i px wide: axe-core finds nothing to complain of', async (width) => {
  const lesson = pier()
  const { view } = handoutView(lesson, figuresOf(lesson))
  expect(
    await broken(await handoutHtml(view, await loadTheme('step-sheet'), { paper: 'a4' }), width),
  ).toEqual([])
})

test.each([1200, 390])('the same of the catalogue of folds, %i px wide', async (width) => {
  const view = catalogueView([...catalogue.values()], 'in')
  const html = await handoutHtml(view, await loadCatalogueTheme('step-sheet'), { paper: 'a4' })
  expect(await broken(html, width)).toEqual([])
})

test('what is wrong would be found', async () => {
  const html =
    '<!doctype html><html lang="en"><title>A</title><main><h1>A</h1><img src="data:,"><p style="color:#aaa">Cut here</p>'
  expect((await broken(`${html}${'<p>C</p>'.repeat(3)}`, 900)).map((text) => text.split(':')[0])).toEqual([
    'color-contrast',
    'image-alt',
  ])
})
