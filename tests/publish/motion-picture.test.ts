import type { Page } from 'puppeteer-core'
import { expect, test } from 'vitest'
import { makePalette } from '../../src/draw/stock.ts'
import type { Pose } from '../../src/fold/pose.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { filled } from './lesson.ts'
import { noWebgl, withSpaceBrowser } from './motion-browser.ts'
import { lessonText, openMotion, viewAt, withMotionPages } from './motion-lesson.ts'
import { near, platesAt, type SeenPlate, seenPlates, type View } from './motion-sight.ts'

const space = withSpaceBrowser()
const pages = withMotionPages()

type Spot = readonly [number, number]
interface Dot {
  /** The mean colour of a few dots round it. */
  readonly mean: readonly [number, number, number]
  /** The darkest of them, from 0 to 255. */
  readonly darkest: number
}

/** The dots of a screenshot round some spots of the stage, read by a canvas of another page. */
async function dotsAt(page: Page, reader: Page, spots: readonly Spot[], ratio: number): Promise<Dot[]> {
  const stage = await page.$('#stage canvas')
  const shot = await stage?.screenshot({ encoding: 'base64' })
  return (await reader.evaluate(`(async () => {
    const image = new Image()
    image.src = 'data:image/png;base64,${shot}'
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = image.width
    canvas.height = image.height
    const pen = canvas.getContext('2d', { willReadFrequently: true })
    pen.drawImage(image, 0, 0)
    const reach = 3
    return ${JSON.stringify(spots)}.map(([x, y]) => {
      const { data } = pen.getImageData(Math.round(x * ${ratio}) - reach, Math.round(y * ${ratio}) - reach, 2 * reach + 1, 2 * reach + 1)
      const mean = [0, 0, 0]
      let darkest = 255
      for (let i = 0; i < data.length; i += 4) {
        for (const k of [0, 1, 2]) mean[k] += (4 * data[i + k]) / data.length
        darkest = Math.min(darkest, (data[i] + data[i + 1] + data[i + 2]) / 3)
      }
      return { mean, darkest }
    })
  })()`)) as Dot[]
}

const poseOf = ({ proof }: ProvenCard, percent: number): Pose | undefined =>
  percent <= 100 ? proof.making()?.poseAt(percent / 100) : proof.between(percent / 100 - 1)

/** Spots all over the picture at which one plate of paper, and no edge of any, is seen round about. */
function plainSpots(
  { card: { structure, lettering } }: ProvenCard,
  plates: readonly SeenPlate[],
  view: View,
) {
  const palette = makePalette(structure)
  const stockOf = (plate: SeenPlate) => structure.pieces.find(({ name }) => name === plate.piece)?.stock
  const isFilm = (plate: SeenPlate) => {
    const stock = stockOf(plate)
    return stock !== undefined && palette(stock).film
  }
  const hasLetters = (plate: SeenPlate) => lettering.some(({ on }) => on === plate.name || on === plate.piece)
  const step = 15
  const spots: { spot: Spot; top: SeenPlate; tint: string }[] = []
  for (let y = step; y < view.height - step; y += step)
    for (let x = step; x < view.width - step; x += step) {
      const [top, below] = platesAt(plates, [x, y])
      const stock = top && stockOf(top)
      if (!top || !stock || isFilm(top) || hasLetters(top)) continue
      if (below && near(top, [x, y]) - near(below, [x, y]) < 0.05) continue
      const round = [-4, 0, 4].flatMap((dy) => [-4, 0, 4].map((dx): Spot => [x + dx, y + dy]))
      if (round.some((spot) => platesAt(plates, spot)[0] !== top)) continue
      spots.push({ spot: [x, y], top, tint: palette(stock, !top.faceUp).tint })
    }
  return spots
}

/** How far a colour is from a tint, or from the tint with some shade on it. */
function off(mean: Dot['mean'], tint: string): number {
  const own = [1, 3, 5].map((i) => Number.parseInt(tint.slice(i, i + 2), 16))
  const shade = [0x43, 0x38, 0x1f]
  const steps = Array.from({ length: 21 }, (_, i) => i / 100)
  return Math.min(
    ...steps.map((dim) =>
      Math.max(...mean.map((n, k) => Math.abs(n - ((own[k] ?? 0) * (1 - dim) + (shade[k] ?? 0) * dim)))),
    ),
  )
}

/** Middles and quarters of the edges of what has no crease, where the plate itself is seen on the one side. */
function edgeSpots({ card: { structure } }: ProvenCard, plates: readonly SeenPlate[]): Spot[] {
  const creased = new Set(structure.hinges.flatMap(({ between }) => between))
  return plates
    .filter(({ name }) => !creased.has(name))
    .flatMap((plate) =>
      plate.corners.flatMap(([x, y], i) => {
        const [p, q] = plate.corners[(i + 1) % plate.corners.length] as Spot
        const long = Math.hypot(p - x, q - y)
        if (long < 20) return []
        return [0.25, 0.5, 0.75].flatMap((share): Spot[] => {
          const spot: Spot = [x + (p - x) * share, y + (q - y) * share]
          const aside = [1, -1].map(
            (sign): Spot => [spot[0] - (sign * 5 * (q - y)) / long, spot[1] + (sign * 5 * (p - x)) / long],
          )
          const isNearest = aside.some((other) => platesAt(plates, other)[0] === plate)
          const hidden = platesAt(plates, spot).some((other) => near(other, spot) > near(plate, spot) + 0.05)
          return isNearest && !hidden ? [spot] : []
        })
      }),
    )
}

const shares = (all: readonly unknown[], some: readonly unknown[]): number => some.length / all.length

const cases = [
  ['harbour-lights', 'legs, film and letters', [0, 100, 200]],
  ['harbour-arches', 'windows', [0, 37, 200]],
  ['quay-morning', 'boxes between slits', [0, 100, 165]],
  ['tide-box', 'boxes in a box', [37, 100, 200]],
] as const

test.for(cases)(
  '%s (%s): what the picture shows is where its corners are projected to',
  {
    timeout: 120_000,
  },
  async ([name, , percents], { skip }) => {
    const { browser, draws } = space()
    if (!draws) skip(noWebgl)
    const text = lessonText(name)
    const [proven] = filled(text).cards as [ProvenCard]
    // The one opened last is in front, and only that one is drawn.
    const reader = await browser.newPage()
    const page = await openMotion(browser, await pages.url(text), { width: 900, height: 760, ratio: 2 })
    for (const percent of percents) {
      const view = await viewAt(page, percent)
      const plates = seenPlates(proven.card.structure, poseOf(proven, percent) ?? new Map(), view)
      const plain = plainSpots(proven, plates, view)
      const edges = edgeSpots(proven, plates)
      const moved = ([x, y]: Spot, by: number): Spot => [x + by, y + by]
      const spots = plain.map(({ spot }) => spot)
      const lists = [spots, edges, spots.map((s) => moved(s, 45)), edges.map((s) => moved(s, 7))]
      const dots = await dotsAt(page, reader, lists.flat(), 2)
      const [own, lines, others, besides] = lists.map((list, i) => {
        const start = lists.slice(0, i).flat().length
        return dots.slice(start, start + list.length)
      }) as [Dot[], Dot[], Dot[], Dot[]]
      const wrong = (list: readonly Dot[]) =>
        list.filter(({ mean }, i) => off(mean, plain[i]?.tint ?? '') > 12)
      const bare = (list: readonly Dot[]) => list.filter(({ darkest }) => darkest > 120)
      expect([plain.length > 40, edges.length > 8], `${name} at ${percent}`).toEqual([true, true])
      expect(shares(own, wrong(own)), `colours of ${name} at ${percent}`).toBeLessThan(0.02)
      expect(shares(lines, bare(lines)), `edges of ${name} at ${percent}`).toBeLessThan(0.03)
      // Were they somewhere else, it would be noticed.
      expect(shares(others, wrong(others)), `colours elsewhere at ${percent}`).toBeGreaterThan(0.1)
      expect(shares(besides, bare(besides)), `edges elsewhere at ${percent}`).toBeGreaterThan(0.25)
    }
    await page.close()
    await reader.close()
  },
)
