import fc from 'fast-check'
import { expect, test } from 'vitest'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { quoted } from '../../src/publish/page-css.ts'
import { withSetting } from '../../src/publish/page-html.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { isOurs } from '../../src/publish/write.ts'
import { filled, pier, pierText } from './lesson.ts'

const lesson = pier()
const theme = await loadTheme('step-sheet')
const { view } = handoutView(lesson, figuresOf(lesson))
const html = await handoutHtml(view, theme, { paper: 'a4' })

test('the page fetches nothing', () => {
  // Links that a reader may follow, and the names of formats, are no fetching.
  const rest = html.replace(/<a href="[^"]*"/g, '').replace(/xmlns(:xlink)?="[^"]*"/g, '')
  const sources = [
    ...rest.matchAll(/(?:src|srcset|href|data|action|poster|content)\s*=\s*["']?([^"'\s>]*)/gi),
  ].map(([, url]) => url)
  expect(sources.filter((url) => url && /^(https?:|file:|\/\/)/.test(url))).toEqual([])
  expect(
    [...rest.matchAll(/url\(\s*["']?([^"')]*)/g)].filter(([, url]) => !/^(data:|#)/.test(url ?? '')),
  ).toEqual([])
  expect(rest).not.toMatch(/@import|<link|<script|<iframe|<object|<embed/i)
})

test('it says that nothing may be fetched or run', () => {
  expect(html).toContain(
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'">`,
  )
  // Only what stands behind it is bound by it.
  expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.indexOf('<style>'))
})

test('it names its language, its title and its maker', () => {
  expect(html).toMatch(/^<!doctype html>\n<html lang="en-GB">/)
  expect(html).toContain('<title>Gulls over the “pier” &amp; &lt;sand&gt;</title>')
  expect(isOurs(Buffer.from(html))).toBe(true)
})

test('a script in a lesson is gone', async () => {
  const hostile = filled(
    pierText
      .replace('title: Gulls', 'title: </title><script>steal()</script> Gulls')
      .replace('summary: A', 'summary: <img src=x onerror=steal()> A')
      .replace('lang: en-GB', 'lang: en-GB')
      .replace('sand card', 'sand <script>steal()</script> card')
      .replace('pearl dots:', '<svg onload=steal()>:')
      .replace(
        '3. Fold.',
        '3. Fold. <script>steal()</script><img src=x onerror=steal()> [x](javascript:steal())',
      )
      .replace('[All scores of the base]', '[All <b onmouseover=steal()>scores</b>]'),
  )
  const page = await handoutHtml(handoutView(hostile, figuresOf(hostile)).view, theme, { paper: 'a4' })
  expect(page).toContain('Gulls over')
  const tags = [...page.matchAll(/<[a-z][^>]*>/gi)].map(([tag]) => tag)
  expect(tags.filter((tag) => /^<(script|iframe|object)|\son[a-z]+\s*=|javascript:/i.test(tag))).toEqual([])
  const css = page.slice(0, page.indexOf('<body>'))
  expect(css.match(/<\/style>/g)).toHaveLength(2)
  expect(css.match(/<script/g)).toBeNull()
})

test('a text in the foot cannot leave its quotes', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const css = quoted(text)
      expect(css.slice(1, -1)).not.toMatch(/["'<>\n\r\f{}]|\\$|\*\//)
      // Read back as CSS does: a number in base 16 behind a backslash, up to a space.
      const back = css
        .slice(1, -1)
        .replace(/\\([0-9a-f]+) /g, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)))
      expect(back).toBe(text)
    }),
  )
})

test.each([
  ['a4', 'size:210mm 297mm'],
  ['letter', 'size:215.9mm 279.4mm'],
] as const)('%s has its size', async (paper, size) => {
  expect(await handoutHtml(view, theme, { paper })).toContain(size)
})

test('holes get room on the left, when asked for', async () => {
  expect(html).not.toContain('margin-left:24mm')
  expect(await handoutHtml(view, theme, { paper: 'a4', punched: true })).toContain('margin-left:24mm')
})

test('another setting is a class of the root', () => {
  expect(withSetting(html, 'tight')).toContain('<html class="tight" lang="en-GB">')
})
