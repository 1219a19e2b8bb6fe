import { expect, test } from 'vitest'
import { figuresOf } from '../../../src/publish/figures-of.ts'
import { handoutHtml } from '../../../src/publish/html.ts'
import { codesFor } from '../../../src/publish/scan.ts'
import { loadTheme } from '../../../src/publish/theme.ts'
import { themeNames } from '../../../src/publish/theme-folder.ts'
import { handoutView } from '../../../src/publish/view.ts'
import { type Foreign, foreign, invented } from './invented.ts'
import { saidIn, strange } from './words.ts'

const names = await themeNames()

async function page(theme: string, lang: Foreign, units: 'in' | 'mm'): Promise<string> {
  const lesson = invented(lang, units)
  const look = await loadTheme(theme)
  const codes = await codesFor(lesson)
  const { view } = handoutView(lesson, figuresOf(lesson), new Map(), codes, look.print.rooms)
  return handoutHtml(view, look, { paper: 'a4', half: look.print.pages === 'half' })
}

test.each(names.flatMap((name) => foreign.map((lang) => [name, lang] as const)))(
  '%s in %s has no word of another language',
  async (name, lang) => {
    const html = await page(name, lang, name === 'booklet' ? 'in' : 'mm')
    expect(html).toContain(`<html lang="${lang}">`)
    const said = saidIn(html)
    expect(said).toContain('Zwemba')
    expect(strange(said, lang)).toEqual([])
  },
)

test('a word of another language is found where there is one', async () => {
  const html = await page('step-sheet', 'de', 'mm')
  expect(strange(saidIn(html.replace('Zuschnitt', 'Pieces to cut')), 'de')).toEqual(['pieces', 'to', 'cut'])
})
