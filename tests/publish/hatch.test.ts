import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { s } from 'hastscript'
import { expect, test } from 'vitest'
import { figuresOf } from '../../src/publish/handout.ts'
import { drawnOut } from '../../src/publish/hatch.ts'
import { pier } from './lesson.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()

const pattern = (id: string, transform: string, ...marks: Element[]) =>
  s(
    'pattern',
    { id, width: '2', height: '2', patternUnits: 'userSpaceOnUse', patternTransform: transform },
    s('rect', { width: '2', height: '2', fill: '#dfe9ec' }),
    ...marks,
  )
const hatch = (d = 'M0 1H2') => s('path', { d, stroke: '#2f5d73', 'stroke-width': '0.4' })
const dot = s('circle', { cx: '0.7', cy: '1.2', r: '0.4', fill: '#a9432b' })
const drawing = (fill: Element, ...shapes: Element[]) =>
  s(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width: '60mm', height: '40mm', viewBox: '0 0 60 40' },
    s('defs', fill),
    ...shapes,
  )
const shape = (d: string, more: Record<string, string> = {}) =>
  s('path', { d, fill: 'url(#p)', stroke: '#1d2a30', 'stroke-width': '0.5', ...more })

const slanted = 'M3 5L50 2L56 30L20 38Z'
const holed = 'M2 2L58 2L58 38L2 38ZM20 10L40 10L40 30L20 30Z'
const cases: [string, Element][] = [
  ['level lines', drawing(pattern('p', '', hatch()), shape(slanted))],
  ['turned lines', drawing(pattern('p', 'rotate(45)', hatch()), shape(slanted))],
  [
    'a slanted grid',
    drawing(pattern('p', 'matrix(0.8 -0.2 0 0.95 0 0) rotate(30)', hatch('M0 1H2M1 0V2')), shape(slanted)),
  ],
  [
    'a shape with a window',
    drawing(pattern('p', 'rotate(-45)', hatch()), shape(holed, { 'fill-rule': 'evenodd' })),
  ],
  [
    'something to be seen through',
    drawing(pattern('p', '', hatch()), shape(slanted, { 'fill-opacity': '0.5' })),
  ],
]

/** Mean difference of two drawings, from 0 to 255, as a browser shows them at 10 px to the mm. */
async function difference(a: Element, b: Element): Promise<number> {
  const page = await browser().newPage()
  const urls = [a, b].map(
    (svg) => `data:image/svg+xml;base64,${Buffer.from(toHtml(svg, { space: 'svg' })).toString('base64')}`,
  )
  const found = await page.evaluate(`(async () => {
    const pixels = await Promise.all(${JSON.stringify(urls)}.map(async (url) => {
      const image = new Image()
      image.src = url
      await image.decode()
      const canvas = new OffscreenCanvas(600, 400)
      const pen = canvas.getContext('2d')
      pen.fillStyle = '#fff'
      pen.fillRect(0, 0, 600, 400)
      pen.drawImage(image, 0, 0, 600, 400)
      return pen.getImageData(0, 0, 600, 400).data
    }))
    return pixels[0].reduce((sum, value, i) => sum + Math.abs(value - pixels[1][i]), 0) / pixels[0].length
  })()`)
  await page.close()
  return found as number
}

test.each(cases)('%s look as the pattern did', async (_, svg) => {
  const drawn = drawnOut(svg)
  expect(toHtml(drawn)).not.toMatch(/<pattern|url\(#|<defs/)
  const bare = JSON.parse(JSON.stringify(svg).replaceAll('url(#p)', '#dfe9ec')) as Element
  // The marks themselves make a difference that is many times what smoothing makes.
  expect(await difference(svg, bare)).toBeGreaterThan(3)
  expect(await difference(svg, drawn)).toBeLessThan(0.25 * (await difference(svg, bare)))
})

test('dots are drawn where they lie in the shape as a whole', () => {
  const html = toHtml(drawnOut(drawing(pattern('p', '', dot), shape('M0 0L4 0L4 4L0 4Z'))), { space: 'svg' })
  expect(html).toContain('d="M0.7 1.2h0M2.7 1.2h0M0.7 3.2h0M2.7 3.2h0"')
  expect(toHtml(drawnOut(drawing(pattern('p', '', dot), shape('M0 0L1 0L1 4L0 4Z'))))).not.toContain('h0')
})

test.each([
  ['a pattern with something else in it', pattern('p', '', s('text', 'x'))],
  ['lines that do not go across', pattern('p', '', hatch('M0.5 1H2'))],
  ['a pattern that is moved', pattern('p', 'translate(1 2)', hatch())],
])('%s is left as it is', (_, fill) => {
  const svg = drawing(fill, shape(slanted))
  expect(drawnOut(svg)).toEqual(svg)
})

test('no figure of a card needs a pattern in print', () => {
  const lesson = pier()
  const draw = figuresOf(lesson)
  const html = (['flat', 'place', 'standing', 'closed'] as const)
    .map((show) => draw(show, show === 'place' ? 'sky' : undefined, { maxWidth: 80, maxHeight: 60 }))
    .map((figure) =>
      'svg' in figure
        ? toHtml(figure.svg, { space: 'svg' }) +
          toHtml(drawnOut(figure.svg), { space: 'svg' }).replaceAll('<pattern', '<left')
        : '',
    )
    .join('')
  expect(html).toContain('<pattern')
  expect(html).not.toContain('<left')
})
