import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { s } from 'hastscript'
import { expect, test } from 'vitest'
import { type Hatch, hatching, type Slant } from '../../src/draw/hatch.ts'
import type { Spot } from '../../src/draw/num.ts'
import { withBrowser } from '../publish/with-browser.ts'

const browser = withBrowser()

const level: Hatch = { tile: 2, turn: 0, colour: '#2f5d73', width: 0.4, lines: [{ level: true, at: 1 }] }
const grid: Hatch = {
  ...level,
  turn: 30,
  lines: [
    { level: true, at: 1 },
    { level: false, at: 1 },
  ],
}
const dots: Hatch = { tile: 2, turn: 0, colour: '#a9432b', width: 0.8, dots: [[0.7, 1.2]] }

type Loops = readonly (readonly Spot[])[]
const quad: Loops = [
  [
    [3, 5],
    [50, 2],
    [56, 30],
    [20, 38],
  ],
]
const frame: Loops = [
  [
    [2, 2],
    [58, 2],
    [58, 38],
    [2, 38],
  ],
  [
    [20, 10],
    [40, 10],
    [40, 30],
    [20, 30],
  ],
]
const cases: [string, Loops, Hatch, Slant?][] = [
  ['level lines', quad, level],
  ['turned lines', quad, { ...level, turn: 45 }],
  ['a slanted grid', quad, grid, [0.8, -0.2, 0, 0.95]],
  ['a shape with a window', frame, { ...level, turn: -45 }],
]

const pathOf = (loops: Loops): string =>
  loops.map((loop) => `M${loop.map((spot) => spot.join(' ')).join('L')}Z`).join('')
const sheet = (...content: Element[]): Element =>
  s(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width: '60mm', height: '40mm', viewBox: '0 0 60 40' },
    ...content,
  )

/** The same hatch as SVG's own pattern, which a browser shows on a screen as it is meant. */
function asPattern(loops: Loops, { tile, turn, colour, width, lines = [] }: Hatch, slant: Slant): Element {
  const size = String(tile)
  const d = lines.map(({ level, at }) => (level ? `M0 ${at}H${tile}` : `M${at} 0V${tile}`)).join('')
  const transform = `matrix(${slant.join(' ')} 0 0) rotate(${turn})`
  return sheet(
    s(
      'defs',
      s(
        'pattern',
        { id: 'p', width: size, height: size, patternUnits: 'userSpaceOnUse', patternTransform: transform },
        s('path', { d, stroke: colour, 'stroke-width': String(width) }),
      ),
    ),
    s('path', { d: pathOf(loops), fill: 'url(#p)', 'fill-rule': 'evenodd' }),
  )
}

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

test.each(cases)('%s look as a pattern does', async (_, loops, hatch, slant = [1, 0, 0, 1]) => {
  const pattern = asPattern(loops, hatch, slant)
  const drawn = sheet(hatching(loops, hatch, slant).node())
  // The marks themselves make a difference that is many times what smoothing makes.
  expect(await difference(pattern, sheet())).toBeGreaterThan(3)
  expect(await difference(pattern, drawn)).toBeLessThan(0.25 * (await difference(pattern, sheet())))
})

test('dots are drawn where they lie in the shape as a whole', () => {
  const html = (width: number) =>
    toHtml(
      hatching(
        [
          [
            [0, 0],
            [width, 0],
            [width, 4],
            [0, 4],
          ],
        ],
        dots,
      ).node(),
      { space: 'svg' },
    )
  expect(html(4)).toContain('d="M0.7 1.2h0M2.7 1.2h0M0.7 3.2h0M2.7 3.2h0"')
  expect(html(1)).not.toContain('path')
})
