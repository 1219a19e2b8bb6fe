import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { expect, test } from 'vitest'
import { rooms } from '../../src/publish/figure.ts'
import { fontFaces } from '../../src/publish/fonts.ts'
import { figuresOf } from '../draw/figures.ts'
import { lessonNamed, printsOf } from '../draw/lesson-cards.ts'
import { type Box, elements, has, text, textBox } from '../draw/svg.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()

/** Figures of every kind, in both units: of a card with letters, one with slits and film, and a box. */
const figures = ['harbour-lights', 'ferry-day', 'tide-box'].flatMap((name, i) => {
  const print = printsOf(lessonNamed(name), 1)[i % 2]
  return (print?.cards ?? []).flatMap((card) =>
    figuresOf(card, rooms.beside).map((one) => ({ ...one, name: `${name} ${one.name}` })),
  )
})

const textsIn = (svg: Element) =>
  elements(svg).filter((node) => node.tagName === 'text' && !has(node, 'letter'))

/** A white box over each text, where the proof that labels do not touch has it, grown by some mm. */
const cover = (svg: Element, grown: number): string =>
  textsIn(svg)
    .map(textBox)
    .map(
      ({ left, top, right, bottom }: Box) =>
        `<path class="cover" fill="#fff" d="M${left - grown} ${top - grown}H${right + grown}V${bottom + grown}H${left - grown}Z"/>`,
    )
    .join('')

/** The figures' words alone, with their boxes over them. */
const page = async (grown: number): Promise<string> => {
  const drawn = figures.map(({ figure }) =>
    toHtml(figure.svg).replace(/<\/svg>$/, `${cover(figure.svg, grown)}</svg>`),
  )
  const style = `@media all{html{font-family:"Commissioner Variable"}svg{float:left;margin:4px}
    svg *{visibility:hidden}svg text:not(.letter),svg text:not(.letter) *,.cover{visibility:visible!important}}`
  const fonts = await fontFaces(style, drawn.join(''))
  return `<!doctype html><meta charset="utf-8"><style>${fonts}${style}</style>${drawn.join('')}`
}

/** How many pixels of the words of each figure are seen beside their boxes; figures without any are left out. */
async function inkBeside(grown: number): Promise<[name: string, pixels: number][]> {
  const tab = await browser().newPage()
  await tab.setViewport({ width: 1400, height: 900, deviceScaleFactor: 2 })
  await tab.setContent(await page(grown))
  await tab.evaluate('document.fonts.ready.then(() => {})')
  const png = Buffer.from(await tab.screenshot({ fullPage: true })).toString('base64')
  // A breath of the smoothing of edges is no ink.
  const dark = (await tab.evaluate(`(async () => {
    const image = new Image()
    image.src = 'data:image/png;base64,${png}'
    await image.decode()
    const boxes = [...document.querySelectorAll('svg')].map((svg) => svg.getBoundingClientRect())
    return boxes.map(({ x, y, width, height }) => {
      const canvas = new OffscreenCanvas(Math.ceil(width * 2), Math.ceil(height * 2))
      const context = canvas.getContext('2d', { willReadFrequently: true })
      context.drawImage(image, -x * 2, -y * 2)
      const { data } = context.getImageData(0, 0, canvas.width, canvas.height)
      let dark = 0
      for (let i = 0; i < data.length; i += 4) if (data[i + 3] > 0 && data[i + 1] < 200) dark++
      return dark
    })
  })()`)) as number[]
  await tab.close()
  return figures.flatMap(({ name }, i): [string, number][] => (dark[i] ? [[name, dark[i]]] : []))
}

test('the words of a figure are printed within the boxes that the proof of their clearance has', async () => {
  expect(await inkBeside(0.1)).toEqual([])
})

test('the test itself sees ink beside boxes that are a little too small', async () => {
  expect((await inkBeside(-0.25)).length).toBeGreaterThan(figures.length / 2)
})

test('a browser measures the words no wider than their boxes, and little narrower', async () => {
  const tab = await browser().newPage()
  await tab.setContent(await page(0))
  await tab.evaluate('document.fonts.ready.then(() => {})')
  const measured = (await tab.evaluate(
    // `getBBox` goes up to whole dots of the screen, and paper has none.
    `[...document.querySelectorAll('svg text:not(.letter)')].map((one) => one.getComputedTextLength())`,
  )) as number[]
  await tab.close()
  const computed = figures.flatMap(({ figure }) =>
    textsIn(figure.svg).map((node) => {
      const { left, right, top, bottom } = textBox(node)
      return String(node.properties.transform ?? '').startsWith('rotate(-90') ? bottom - top : right - left
    }),
  )
  expect(measured).toHaveLength(computed.length)
  expect(measured.length).toBeGreaterThan(200)
  const words = figures.flatMap(({ figure }) => textsIn(figure.svg).map(text))
  for (const [i, width] of measured.entries()) {
    expect(width, words[i]).toBeLessThan((computed[i] ?? 0) + 0.05)
    // Kerning draws letters together, which no sum of widths knows.
    expect(width, words[i]).toBeGreaterThan((computed[i] ?? 0) * 0.93 - 0.05)
  }
})
