import { beforeAll, describe, expect, test } from 'vitest'
import { foldloreIn, memory } from '../cli/memory.ts'
import { axeFindings } from './axe.ts'
import { pierText } from './lesson.ts'
import { openPdf } from './pdf-reading.ts'
import { allTags, type TagNode, tagTree, wordsIn } from './pdf-tags.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const workshop = 'name: Quillhaven paper table\naccent: "#1b5e6b"\nsecond: "#6a3d7c"\nfooter: Lamp house\n'
const saturday = `title: Saturday
lesson: pier.md
people: 3
start: 10:00
sheets:
  sand card: {size: 12 x 12 in}
  patterned paper: {size: 12 x 12 in}
  vellum: {size: 12 x 12 in}
  grey card: {size: 12 x 12 in}
  envelope paper: {size: 24 x 24 in}
`
const files = { 'pier.md': pierText, 'saturday.yaml': saturday, 'workshop.yaml': workshop }

/** Everything that is printed, by what makes it. */
const prints: readonly (readonly [name: string, ...argv: string[]])[] = [
  ...['step-sheet', 'large-print', 'ink-saver', 'booklet', 'card'].map(
    (theme) => [`handout, ${theme}`, 'handout', 'pier.md', '--theme', theme] as const,
  ),
  ['chart of sizes', 'sizes', 'pier.md'],
  ['kit list of a class', 'kit', 'saturday.yaml'],
  ['cutting plan', 'sheets', 'saturday.yaml'],
  ['run sheet', 'runsheet', 'saturday.yaml'],
  ['labels', 'labels', 'saturday.yaml'],
  ['templates', 'template', 'pier.md'],
]

describe.each(prints)('%s', (_, ...argv) => {
  let html: string
  let raw: string
  let pdf: Awaited<ReturnType<typeof openPdf>>
  let pages: TagNode[]
  beforeAll(async () => {
    const place = memory(files)
    expect([await foldloreIn(place, [...argv, '-o', 'out/', '--quiet']), place.err()]).toEqual([0, ''])
    const made = (ending: string) => [...place.disk.keys()].find((path) => path.endsWith(ending)) ?? ''
    html = place.text(made('.html'))
    const data = place.disk.get(made('.pdf')) ?? new Uint8Array()
    raw = Buffer.from(data).toString('latin1')
    pdf = await openPdf(data)
    pages = []
    for (let i = 1; i <= pdf.numPages; i++) pages.push(await tagTree(pdf, i))
  })
  // This reader takes the content of two pages on one sheet for the same, so their words cannot be told apart.
  const imposed = argv.includes('ink-saver') || argv.includes('booklet')
  const all = (): TagNode[] => pages.flatMap(allTags)
  const roles = (role: string): TagNode[] => all().filter((tag) => tag.role === role)

  // Pages of handouts are looked at theme by theme elsewhere.
  test.skipIf(argv[0] === 'handout').each([1200, 390])(
    'the page, %i px wide: axe-core finds nothing to complain of',
    async (width) => {
      expect(await axeFindings(browser(), html, width)).toEqual([])
    },
  )

  test('the PDF has tags, a language, and a title that its window shows', async () => {
    const { info } = await pdf.getMetadata()
    expect(info).toMatchObject({
      Title: /<title>([^<]+)/.exec(html)?.[1]?.replace(/&\w+;|&#\d+;/g, unescaped),
    })
    expect(info).toMatchObject({ Language: expect.stringMatching(/^en/) })
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true })
    expect(await pdf.getViewerPreferences()).toMatchObject({ DisplayDocTitle: true })
  })

  test('its headings begin with the first level and leave none out, and its bookmarks are them', async () => {
    const headings = all().filter(
      ({ role, ...tag }) => /^H\d$/.test(role) && wordsIn({ role, ...tag }) !== '',
    )
    const levels = headings.map(({ role }) => Number(role[1]))
    expect(levels[0]).toBe(1)
    levels.forEach((level, i) => {
      expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1)
    })
    const marks: string[] = []
    const walk = (items: Awaited<ReturnType<typeof pdf.getOutline>> | undefined): void =>
      items?.forEach(({ title, items: inside }) => {
        marks.push(title.replace(/\s+/g, ' ').trim())
        walk(inside)
      })
    walk(await pdf.getOutline())
    if (imposed) expect(marks).toHaveLength(headings.length)
    else expect(marks.toSorted()).toEqual(headings.map(wordsIn).toSorted())
  })

  test('lists have items, tables rows and cells, and every row as many as its head', () => {
    for (const list of roles('L')) expect(list.inside.every(({ role }) => role === 'LI')).toBe(true)
    for (const { role, inside } of all())
      if (role !== 'L') expect(inside.some((tag) => tag.role === 'LI')).toBe(false)
    for (const table of roles('Table')) {
      const rows = table.inside.filter(({ role }) => role === 'TR')
      expect(rows.length).toBeGreaterThan(0)
      const counts = rows.map(({ inside }) => inside.length)
      // The head of a chart has two rows: one cell stands for several columns, and one for both rows.
      const whole = argv[0] === 'sizes' ? [(counts[1] ?? 0) + 1, ...counts.slice(2)] : counts
      expect([...new Set(whole)]).toHaveLength(1)
      for (const { inside } of rows)
        expect(inside.every(({ role }) => role === 'TH' || role === 'TD')).toBe(true)
    }
    expect(raw.match(/\/Scope \/(?:Column|Row)/g)?.length ?? 0).toBe(raw.match(/\/S \/TH\b/g)?.length ?? 0)
  })

  test('its figures say what they show', () => {
    const shown = new Set(
      Array.from(html.matchAll(/<svg\b[^>]*>/g), ([svg]) => svg).filter((svg) => svg.includes('role="img"')),
    )
    const told = new Set(roles('Figure').map(({ alt = '' }) => alt))
    if (argv[0] !== 'sizes') expect(told.size > 0).toBe(shown.size > 0)
    for (const alt of told) {
      expect(alt.length).toBeGreaterThan(20)
      // With measures, but for a code: it says where it leads to.
      expect(alt).toMatch(/\d|^Code to scan, .*https:/)
    }
  })

  test('what only decorates and what is said on every page is not told', () => {
    const told = pages.map(wordsIn).join(' ')
    expect(told).not.toMatch(/page\s\d+\sof\s\d+|Lamp house/)
    expect(told).not.toMatch(/undefined|NaN|null/)
  })

  test.skipIf(imposed)('what is told comes in the order of the page', () => {
    const words = (text: string) => Array.from(text.matchAll(/\p{L}{4,}/gu), ([word]) => word)
    const body = html
      .slice(html.indexOf('<body'))
      .replace(/<svg\b.*?<\/svg>|<script.*?<\/script>|<p class="brand-footer">.*?<\/p>/gs, ' ')
      .replace(/<(?!\/?(?:wbr|span|strong|em|b|a)\b)[^>]*>/g, ' ')
      .replace(/<[^>]*>/g, '')
    const told = pages.flatMap((page) => words(wordsOutsideFigures(page)))
    const said = words(body)
    let at = -1
    const lost = told.filter((word) => {
      const next = said.indexOf(word, at + 1)
      if (next < 0) return true
      at = next
      return false
    })
    expect(told.length).toBeGreaterThan(10)
    expect(lost).toEqual([])
  })
})

const unescaped = (entity: string): string =>
  ({ '&quot;': '"', '&amp;': '&', '&lt;': '<', '&gt;': '>', '&#39;': "'" })[entity] ?? entity

const wordsOutsideFigures = (node: TagNode): string =>
  node.role === 'Figure' ? ' ' : ` ${node.words}${node.inside.map(wordsOutsideFigures).join('')} `
