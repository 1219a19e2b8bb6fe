import { describe, expect, test } from 'vitest'
import type { Beside, Settings } from '../../../src/desk/engine/engine.ts'
import { lookAt } from '../../../src/desk/engine/look.ts'
import { usualPrint } from '../../../src/publish/theme-print.ts'

const settings: Settings = { paper: 'a4', theme: 'step-sheet', people: 1, spare: 0 }
const theme = { css: '', body: () => '<main>the lesson</main>', print: usualPrint }
const themes = { handout: () => theme }
const logo = 'data:image/svg+xml;base64,PHN2Zy8+'
const lesson = (front = ''): string => `---\ntitle: Harbour\n${front}---\n\n1. Fold it.\n`

const look = async (text: string, beside: Beside) => {
  const { page, findings, pictures } = await lookAt(text, settings, beside, themes)
  const own = findings.filter(({ rule }) => /^(picture|brand|faint|long)/.test(rule))
  return { page, pictures, found: own.map(({ rule, line, message }) => ({ rule, line, message })) }
}

test('the `workshop.yaml` of the folder puts its logo, colours and footer on the page', async () => {
  const text =
    'logo: mark.svg\nname: Quillhaven paper table\naccent: "#1b5e6b"\nfooter: At the old lamp house\n'
  const { page, found } = await look(lesson(), {
    pictures: {},
    workshop: { path: 'workshop.yaml', text, logo },
  })
  expect(found).toEqual([])
  expect(page.css).toContain('--brand-accent:#1b5e6b')
  expect(page.body).toContain(`<img src="${logo}" alt="Quillhaven paper table">`)
  expect(page.foot.own).toBe('At the old lamp house')
})

test('the lesson wins key by key, and its logo is read like its pictures', async () => {
  const front = 'brand: {logo: own.svg, name: Own table}\n'
  const workshop = { path: 'workshop.yaml', text: 'logo: mark.svg\nfooter: Ours\n', logo: 'data:x' }
  const { page, pictures, found } = await look(lesson(front), { pictures: { 'own.svg': logo }, workshop })
  expect(found).toEqual([])
  expect(pictures).toEqual(['own.svg'])
  expect(page.body).toContain(`src="${logo}" alt="Own table"`)
  expect(page.foot.own).toBe('Ours')
})

describe('what is wrong is told', () => {
  test('in the lesson, at its place', async () => {
    const front = 'brand:\n  logo: own.svg\n  second: "#ffee00"\n'
    const { found } = await look(lesson(front), { pictures: { 'own.svg': '' } })
    expect(found).toEqual([
      expect.objectContaining({ rule: 'faint-colour', line: 5 }),
      expect.objectContaining({ rule: 'picture-missing', line: 4 }),
    ])
  })

  test('of the `workshop.yaml`, with the line in it', async () => {
    const workshop = { path: 'sea/workshop.yaml', text: 'name: Us\nlogo: ../mark.svg\n', logo: '' }
    const { found } = await look(lesson(), { pictures: {}, workshop })
    expect(found).toEqual([
      {
        rule: 'picture-outside',
        line: 1,
        message: expect.stringMatching(/^In `sea\/workshop\.yaml`, line 2, column 7: /),
      },
    ])
    const unread = await look(lesson(), { pictures: {}, workshop: { path: 'workshop.yaml' } })
    expect(unread.found).toMatchObject([{ rule: 'brand-unread' }])
  })

  test('of a picture of the lesson, once it was looked for in vain', async () => {
    const text = `${lesson()}\n![A gull](gull.png)\n\n![Far](https://example.org/gull.png)\n`
    const far = expect.objectContaining({ rule: 'picture-far', line: 9 })
    expect((await look(text, { pictures: {} })).found).toEqual([far])
    const { found } = await look(text, { pictures: { 'gull.png': '' } })
    expect(found).toEqual([expect.objectContaining({ rule: 'picture-missing', line: 7 }), far])
  })
})

test('the foot counts the pages in the language of the lesson', async () => {
  const { page } = await look(lesson('lang: de\n'), { pictures: {} })
  expect([page.lang, page.foot.number.replaceAll('\u00a0', ' ')]).toEqual(['de', 'Seite {page} von {pages}'])
})
