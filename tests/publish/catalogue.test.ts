import { expect, test } from 'vitest'
import { publishCatalogue } from '../../src/publish/catalogue.ts'
import { catalogueView } from '../../src/publish/catalogue-view.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { type Paper, paperSize } from '../../src/publish/page-css.ts'
import { NotOursError } from '../../src/publish/problems.ts'
import { loadCatalogueTheme } from '../../src/publish/theme.ts'
import { type CatalogueFold, catalogue } from '../../src/workshop/catalogue.ts'
import { provenStarter } from '../../src/workshop/starter-card.ts'
import { memory } from '../cli/memory.ts'
import { withBrowser } from './with-browser.ts'

const folds = [...catalogue.values()]
const browser = withBrowser()
const pageOf = async (some: readonly CatalogueFold[], unit: 'in' | 'mm' = 'in', paper: Paper = 'a4') =>
  handoutHtml(catalogueView(some, unit), await loadCatalogueTheme('step-sheet'), { paper })
const wordsIn = (html: string): string =>
  html
    .replaceAll(/<style>[\s\S]*?<\/style>/g, '')
    .replaceAll(/<svg[\s\S]*?<\/svg>/g, '')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll(/[\s\u00a0\u202f]+/g, ' ')

test('every fold has its name, its summary, its drawings, and a place in the contents', async () => {
  const html = await pageOf(folds)
  for (const [i, { name, summary }] of folds.entries()) {
    const [before = '', own = ''] = html.split(`<article class="fold" id="fold-${i + 1}"`)
    const entry = own.split('</article>')[0] ?? ''
    expect(before).toContain(`<a href="#fold-${i + 1}">`)
    expect(entry).toContain(`<h3 id="fold-${i + 1}-name">${name.replaceAll(' ', '\u00a0<wbr>')}</h3>`)
    expect(wordsIn(entry).replaceAll(' ', '')).toContain(summary.replaceAll(/[` ]/g, ''))
    const shown = [...entry.matchAll(/class="figure figure-(\w+)/g)].map(([, what]) => what)
    const { card, proof } = provenStarter({ name, starter: catalogue.get(name)?.starter ?? '' }, 'in')
    const flat = card.structure.pieces.filter(({ kind }) => kind === 'base').map(() => 'flat')
    expect([name, shown.slice(0, flat.length)]).toEqual([name, flat])
    // A box that is shown set up as it is shut needs one figure for both.
    const folded = shown.slice(flat.length)
    expect([name, folded.at(-1)]).toEqual([name, 'closed'])
    expect([name, folded.length >= (proof.closed?.isFlat ? 2 : 1)]).toEqual([name, true])
    expect(entry.match(/<desc [^>]*>[^<]{40,}/g)?.length).toBe(shown.length)
  }
})

test('the words under the drawings: sizes, how it moves, and what the block may say', async () => {
  const bridge = wordsIn(await pageOf([catalogue.get('bridge') as CatalogueFold]))
  expect(bridge).toContain('shut 7 × 5 in, 1/16 in thick')
  expect(bridge).toContain('standing 7 × 5 in, 3/4 in deep')
  expect(bridge).toContain('how it moves moves as one: one crease leads the others')
  expect(bridge).toContain('layers inside left tab, left leg, floor, right leg, right tab')
  expect(bridge).toContain('tab width of the tabs that the spans are stuck on (usually leg)')
  const metric = wordsIn(await pageOf([catalogue.get('bridge') as CatalogueFold], 'mm'))
  expect(metric).toContain('shut 177 × 127 mm')
})

test('the page stands alone, and no value is missing', async () => {
  const html = await pageOf(folds)
  const own = html.replaceAll(/data:[^"')]*/g, 'data:').replaceAll('http://www.w3.org/2000/svg', '')
  const wrong = /https?:|(?:src|href)="(?!data:|#)|url\((?!["']?(?:data:|#))|undefined|NaN|\[object/
  expect(wrong.exec(own)?.[0]).toBeUndefined()
  const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)
  expect(new Set(ids).size).toBe(ids.length)
})

test.each(['a4', 'letter'] as const)(
  'on %s no fold is split, and nothing sticks out sideways',
  async (paper) => {
    const page = await browser().newPage()
    const { width, height } = paperSize(paper)
    const [margin, px] = [14, 96 / 25.4]
    await page.setViewport({ width: Math.round((width - 2 * margin) * px), height: 1000 })
    await page.emulateMediaType('print')
    await page.setContent(await pageOf(folds, 'in', paper))
    const boxes = (await page.evaluate(`[...document.querySelectorAll('article.fold')].map((fold) => ({
    name: fold.querySelector('h3').textContent,
    height: fold.getBoundingClientRect().height,
    across: Math.max(...[...fold.querySelectorAll(':not(svg *)')].map((e) => e.getBoundingClientRect().right)),
    break: getComputedStyle(fold).breakInside,
  }))`)) as { name: string; height: number; across: number; break: string }[]
    await page.close()
    expect(boxes).toHaveLength(folds.length)
    for (const box of boxes) {
      expect(box).toMatchObject({ break: 'avoid' })
      // With the heading of its group above it.
      expect(box.height / px, box.name).toBeLessThan(height - 2 * margin - 20)
      expect(box.across / px, box.name).toBeLessThan(width - 2 * margin + 0.6)
    }
  },
)

test('the file appears whole, and another’s is left alone', async () => {
  const options = { unit: 'in', paper: 'a4', theme: 'step-sheet', out: 'a/folds.html', force: false } as const
  const { outside, disk, text } = memory()
  await publishCatalogue(folds.slice(0, 1), options, outside)
  expect([...disk.keys()]).toEqual(['a/folds.html'])
  expect(text('a/folds.html')).toContain('</html>')
  await publishCatalogue(folds.slice(0, 1), options, outside)
  const theirs = memory({ 'a/folds.html': 'mine' })
  await expect(publishCatalogue(folds, options, theirs.outside)).rejects.toThrow(NotOursError)
  expect(theirs.text('a/folds.html')).toBe('mine')
})
