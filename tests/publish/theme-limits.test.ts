import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { openCss } from '../../src/publish/open-css.ts'
import { compileTemplate } from '../../src/publish/template.ts'
import { loadTheme } from '../../src/publish/theme.ts'

const root = mkdtempSync(join(tmpdir(), 'theme-limits-'))
afterAll(() => rmSync(root, { recursive: true }))

/** A theme of these files. */
function themeOf(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(root, 'theme-'))
  mkdirSync(join(folder, 'partials'))
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
  return folder
}

const told = (message: string, cure: string) => ({
  name: 'ThemeError',
  message: expect.stringContaining(message),
  suggestion: expect.stringContaining(cure),
})

const view = { title: 'Tide table', list: Array.from({ length: 30 }, (_, i) => ({ n: i })) }

describe('a template that would never end is told where it goes on', () => {
  const file = (path: string, text: string) => ({ path, text })
  const fill = (text: string, partials: Readonly<Record<string, string>> = {}) =>
    compileTemplate(
      file('handout.hbs', text),
      new Map(Object.entries(partials).map(([name, own]) => [name, file(`partials/${name}.hbs`, own)])),
    )(view)

  test.each([
    [
      'a partial in itself',
      '{{> tide}}',
      { tide: 'a\n {{> tide}}' },
      'partials/tide.hbs:2:2: partials include',
    ],
    [
      'partials in a ring',
      '{{> tide}}',
      { tide: '{{> ebb}}', ebb: '\n\n{{> tide}}' },
      /partials\/(ebb\.hbs:3:1|tide\.hbs:1:1): partials include/,
    ],
    ['a partial twice in itself', '{{> tide}}', { tide: '{{> tide}}{{> tide}}' }, ': partials include'],
    [
      'a list within itself',
      `{{title}}\n${'{{#each @root.list}}'.repeat(9)}x${'{{/each}}'.repeat(9)}`,
      {},
      /handout\.hbs:2:\d+: the page becomes far longer/,
    ],
    [
      'a list within itself that says nothing',
      `${'{{#each @root.list}}'.repeat(9)}${'{{/each}}'.repeat(9)}`,
      {},
      /handout\.hbs:1:\d+: the page becomes far longer/,
    ],
    [
      'partials that fan out',
      '{{> a0}}',
      Object.fromEntries(
        Array.from({ length: 60 }, (_, i) => [`a${i}`, i < 59 ? `{{> a${i + 1}}}`.repeat(3) : 'x']),
      ),
      /partials\/a\d+\.hbs:1:1: the page becomes far longer/,
    ],
    [
      'a partial of its own in itself',
      '{{#*inline "tide"}}{{> tide}}{{/inline}}{{> tide}}',
      { tide: '' },
      'handout.hbs: it does not come',
    ],
    [
      'blocks too deep',
      `${'{{#if title}}'.repeat(9000)}${'{{/if}}'.repeat(9000)}`,
      {},
      'handout.hbs:1:651: more than 50 blocks',
    ],
  ])('%s', (_, text, partials, message) => {
    const before = process.cpuUsage()
    expect(() => fill(text, partials as Record<string, string>)).toThrow(message)
    expect(process.cpuUsage(before).user / 1e6).toBeLessThan(10)
  })

  test('a partial may include itself as deep as its list is', () => {
    const nested = (depth: number): object => (depth === 0 ? { more: false } : { more: nested(depth - 1) })
    const tide = { path: 'tide.hbs', text: '{{#with more}}x{{> tide}}{{/with}}' }
    expect(
      compileTemplate({ path: 'a.hbs', text: '{{> tide}}' }, new Map([['tide', tide]]))(nested(90)),
    ).toBe('x'.repeat(90))
  })

  test('the pages of a long lesson are not too long, one after the other', () => {
    const render = compileTemplate(
      file('handout.hbs', '{{#each list}}{{#each @root.list}}{{text}}{{/each}}{{/each}}'),
    )
    const long = { list: Array.from({ length: 20 }, () => ({ text: 'tide '.repeat(40_000) })) }
    for (const _ of [1, 2]) expect(render({ list: long.list.slice(0, 3) })).toHaveLength(9 * 200_000)
    expect(() => render({ list: long.list })).toThrow('handout.hbs:1:1')
  })
})

describe('a file that no theme needs is told by its name', () => {
  test.each([
    [
      'a long template',
      { 'handout.hbs': 'x'.repeat(100_001) },
      'handout.hbs: it has more than 100 kB',
      'partials',
    ],
    [
      'a long partial',
      { 'partials/intro.hbs': 'x'.repeat(100_001) },
      'intro.hbs: it has more than 100 kB',
      'partials',
    ],
    [
      'a long style sheet',
      { 'handout.css': ' '.repeat(10_000_001) },
      'handout.css: it has more than 10 MB',
      'font',
    ],
    [
      'long settings',
      { 'theme.yaml': ' '.repeat(100_001) },
      'theme.yaml: it has more than 100 kB',
      'settings',
    ],
    [
      'another encoding',
      { 'handout.css': Buffer.from('h1 {}', 'utf16le').swap16().fill(255, 0, 1) },
      'handout.css: it is not written in UTF-8',
      'Save',
    ],
    [
      'thousands of partials',
      Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`partials/p${i}.hbs`, 'x'])),
      'partials: there are more than 200 partials',
      'no template includes',
    ],
  ])('%s', async (_, files, message, cure) => {
    await expect(loadTheme(themeOf(files as Record<string, string>))).rejects.toMatchObject(
      told(message, cure),
    )
  })

  test('a style sheet with ten million characters of a font is read', async () => {
    const font = `@font-face { src: url(data:font/woff2;base64,${'A'.repeat(4_900_000)}) }\n`
    const quoted = `@font-face { src: url("data:font/woff2;base64,${'A'.repeat(4_900_000)}") }`
    expect((await loadTheme(themeOf({ 'handout.css': font + quoted }))).css).toContain(font)
    const whole = `@font-face { src: url("data:font/woff2;base64,${'A'.repeat(9_900_000)}") }`
    expect((await loadTheme(themeOf({ 'handout.css': whole }))).css).toContain(whole)
  })

  test.runIf(process.platform === 'linux')('a file without end', async () => {
    const folder = themeOf({})
    symlinkSync('/dev/zero', join(folder, 'handout.hbs'))
    await expect(loadTheme(folder)).rejects.toMatchObject(told('handout.hbs: it has more than', 'partials'))
  })
})

describe('a style sheet that is not closed', () => {
  test.each([
    ['h1 { color: green', '1:4: this bracket is never closed', '`}`'],
    ['h1 { color: green }\n@media print { h2 { color: red }', '2:14: this bracket is never closed', '`}`'],
    ['h1 { width: calc(3mm + 2mm; }', '1:17: this bracket is never closed', '`)`'],
    ['h1 {}\n  }', '2:3: this `}` closes nothing', 'Take it out'],
    ['h1 {}\n/* the sea', '2:1: this comment is never closed', '`*/`'],
    ['h1 {}\n/*/', '2:1: this comment is never closed', '`*/`'],
    ['h1 { content: "sea; }\np {}', '1:15: this text is not closed', '`"`'],
    ["h1 { content: 'sea; }", '1:15: this text is not closed', "`'`"],
    ['h1 { background: url(data:x; }', '1:18: this bracket is never closed', '`)`'],
    ['h1[lang { }', '1:3: this bracket is never closed', '`]`'],
  ])('%j is told at its place', async (css, message, cure) => {
    const folder = themeOf({ 'handout.css': css })
    const place = `${join(folder, 'handout.css')}:${message}`
    await expect(loadTheme(folder)).rejects.toMatchObject(told(place, cure))
  })

  test.each([
    'h1::before { content: "}"; } /* { */',
    "h1 { content: '\\'{'; background: url(data:a{b;c) }",
    'h1 { content: "two \\\nlines" } .a\\{b { width: calc((1mm + 2mm) * 3) } a[title="]"] {}',
    '',
  ])('%j is closed', (css) => expect(openCss(css)).toBeUndefined())

  test('those that come with foldlore are closed, and without any one of their brackets they are not', () => {
    const sheets = readdirSync('themes', { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.css'),
    )
    expect(sheets.length).toBeGreaterThan(8)
    for (const name of sheets) {
      const css = readFileSync(join('themes', name), 'utf8')
      expect(openCss(css)).toBeUndefined()
      const bare = css.replace(/\/\*[\s\S]*?\*\/|"[^"]*"|'[^']*'/g, (of) => of.replace(/[(){}[\]]/g, '.'))
      for (const { index } of [...bare.matchAll(/[(){}[\]]/g)].slice(0, 40))
        expect(openCss(bare.slice(0, index) + bare.slice(index + 1)), `${name} at ${index}`).toBeDefined()
    }
  })
})
