import { expect, test } from 'vitest'
import { definitionsIn, proseHtml } from '../../src/publish/prose.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { filled, plainLesson } from './lesson.ts'

const html = (markdown: string) => {
  const { tree } = plainLesson(markdown)
  return proseHtml(tree.children, {
    wording: wordingOf('en', 'in'),
    definitions: definitionsIn(tree),
    picture: () => undefined,
    figure: () => undefined,
    scan: () => ({ type: 'text', value: '' }),
    level: () => undefined,
    hideMinutes: true,
  }).trim()
}

test('raw HTML of a lesson is left out, its text stays', () => {
  expect(html('Cut <b onclick="steal()">here</b>.')).toBe('<p>Cut here.</p>')
  expect(html('<script>steal()</script>\n\nCut.')).toBe('<p>Cut.</p>')
  expect(html('<iframe src="https://far.example"></iframe>\n\n<style>*{display:none}</style>\n\nCut.')).toBe(
    '<p>Cut.</p>',
  )
})

test('what only looks like HTML is text', () => {
  expect(html('A gap \\<b\\> of `<i>`')).toBe('<p>A gap &#x3C;b> of <code class="kept">&#x3C;i></code></p>')
})

test('a short line to be typed stays in one piece, a long one may break', () => {
  expect(html('Write `tongue: 120 mm`.')).toContain('<code class="kept">tongue: 120 mm</code>')
  expect(html('Write `border: {sides: 1/16 in, ends: 0 in}`.')).toContain('<code>border:')
})

test.each([
  'javascript:steal()',
  'JavaScript:steal()',
  'data:text/html;base64,PHNjcmlwdD4=',
  'file:///etc/hostname',
  'vbscript:steal()',
])('a link to %s stays text', (url) => {
  expect(html(`[see](<${url}>)`)).toBe('<p>see</p>')
  expect(html(`[see][there]\n\n[there]: <${url}>`)).toBe('<p>see</p>')
})

test('links to pages and mail addresses are kept', () => {
  expect(html('[see](https://quillhaven.example/a)')).toBe(
    '<p><a href="https://quillhaven.example/a">see</a></p>',
  )
  expect(html('[see][there]\n\n[there]: mailto:a@quillhaven.example')).toContain(
    'href="mailto:a@quillhaven.example"',
  )
})

test('a picture that cannot be shown leaves its words', () => {
  expect(html('![a gull](gull.png)')).toBe('<p><span class="missing">Picture missing: a gull</span></p>')
})

test('minutes are taken out, with the space before them', () => {
  expect(html('1. Fold. :minutes[5]')).toContain('<li>Fold.</li>')
  expect(html('1. Fold.\n\n   :minutes[5]')).not.toContain('<p></p>')
})

test('a call-out says what it is, and may have a title', () => {
  expect(html(':::caution[Blades]\nMind your fingers.\n:::')).toBe(
    '<div class="callout callout-caution" role="note" aria-label="Take care"><p class="callout-word"><span class="callout-mark" aria-hidden="true"></span>Take care<span class="callout-title">Blades</span></p><div class="callout-body"><p>Mind your fingers.</p></div></div>',
  )
})

test('a heading inside a step is a bold line', () => {
  expect(html('1. Fold.\n\n   # Then')).toContain('<p class="minor"><strong>Then</strong></p>')
})

test('a measure that could not be worked out shows what was written', () => {
  const { tree } = filled('---\ntitle: A\nlevel: beginner\nunits: in\n---\n\nCut {bakdrop.size}.\n')
  const context = {
    wording: wordingOf('en', 'in'),
    definitions: definitionsIn(tree),
    picture: () => undefined,
    figure: () => undefined,
    scan: () => ({ type: 'text' as const, value: '' }),
    level: () => undefined,
    hideMinutes: true,
  }
  expect(proseHtml(tree.children, context)).toContain('<span class="unfilled">{bakdrop.size}</span>')
})
