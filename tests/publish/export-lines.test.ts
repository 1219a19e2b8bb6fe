import { readFileSync } from 'node:fs'
import type { Browser } from 'puppeteer-core'
import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { exportLesson } from '../../src/publish/export.ts'
import { measures, type PieceJson } from '../../src/workshop/measures.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()

const lesson = (name: string) =>
  fillLesson(readLesson(readFileSync(new URL(`../../lessons/${name}.md`, import.meta.url), 'utf8')), {
    units: 'mm',
  })

interface Group {
  readonly id: string
  readonly title: string
  /** Each path: its box on the screen and its length, in mm. */
  readonly paths: readonly { x: number; y: number; width: number; height: number; length: number }[]
}

/** The groups of an SVG file as a browser measures them, in mm from the upper left corner of the drawing. */
async function groupsIn(open: Browser, svg: string): Promise<Group[]> {
  const page = await open.newPage()
  await page.setContent(`<body style="margin:0">${svg.replace(/^<\?.*\?>/, '')}`)
  const groups = await page.evaluate(`(() => {
    const mm = 25.4 / 96
    return [...document.querySelectorAll('svg > g')].map((g) => ({
      id: g.id,
      title: g.querySelector('title').textContent,
      paths: [...g.querySelectorAll('path')].map((path) => {
        const { a } = path.getScreenCTM()
        const { x, y, width, height } = path.getBBox()
        return { x: x * a * mm, y: y * a * mm, width: width * a * mm, height: height * a * mm, length: path.getTotalLength() * a * mm }
      }),
    }))
  })()`)
  await page.close()
  return groups as Group[]
}

const files = (name: string, together = false) => exportLesson(lesson(name), 'svg', together)
const pieceOf = (name: string, piece: string): PieceJson =>
  measures(lesson(name))
    .cards.flatMap((card) => card.pieces)
    .find((one) => one.name === piece) as PieceJson
const groupOf = (groups: readonly Group[], id: string) => groups.find((group) => group.id === id)?.paths ?? []
/** A browser lays out in parts of a dot: as near as a hundredth of a millimetre in a hundred. */
const near = (all: readonly number[]) => all.map((x) => expect.closeTo(x, 1) as unknown as number)

test('layers have the words of the trade as their names', async () => {
  const [sheet] = await files('ferry-day', true)
  const groups = await groupsIn(browser(), sheet?.text ?? '')
  expect(groups.map(({ id, title }) => [id, title])).toEqual([
    ['drawn-marks', 'drawn marks'],
    ['valley-score', 'valley score'],
    ['mountain-score', 'mountain score'],
    ['cut', 'cut'],
  ])
})

test('marks for letters stand where the table has them, on the lower edge of their strip', async () => {
  const file = (await files('harbour-lights')).find(({ name }) => name === 'sea wall')
  const marks = groupOf(await groupsIn(browser(), file?.text ?? ''), 'drawn-marks')
  const [lettering] = measures(lesson('harbour-lights')).cards[0]?.lettering ?? []
  expect(marks.map(({ x }) => x)).toEqual(near(lettering?.marks.map(({ mm }) => mm) ?? []))
  const { height } = pieceOf('harbour-lights', 'sea wall')
  for (const mark of marks) expect(mark.y + mark.height).toBeCloseTo(height.mm, 1)
})

test.each(['frame', 'outer arch', 'inner arch'])(
  'the window of the %s is cut inside its outline',
  async (name) => {
    const piece = pieceOf('harbour-arches', name)
    const file = (await files('harbour-arches')).find((one) => one.name === name)
    const [window, outline, ...more] = groupOf(await groupsIn(browser(), file?.text ?? ''), 'cut')
    expect(more).toEqual([])
    const [xs, ys] = [
      piece.cuts.flatMap(({ x1, x2 }) => [x1.mm, x2.mm]),
      piece.cuts.flatMap(({ y1, y2 }) => [y1.mm, y2.mm]),
    ]
    const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
    expect([outline?.width, outline?.height]).toEqual(near([piece.width.mm, piece.height.mm]))
    expect([window?.x, window?.y, window?.width, window?.height]).toEqual(
      near([left, piece.height.mm - high, right - left, high - low]),
    )
  },
)

test('slits are cut as long as the table has them, and before the outline', async () => {
  const piece = pieceOf('ferry-day', 'base')
  const file = (await files('ferry-day')).find(({ name }) => name === 'base')
  const cuts = groupOf(await groupsIn(browser(), file?.text ?? ''), 'cut')
  const said = piece.cuts.map(({ x1, y1, x2, y2 }) => Math.hypot(x2.mm - x1.mm, y2.mm - y1.mm))
  expect(said.length).toBeGreaterThan(0)
  expect(cuts.map(({ length }) => length)).toEqual(near([...said, 2 * (piece.width.mm + piece.height.mm)]))
})

test('on one sheet every piece is as large as in its own file, as often as it is needed', async () => {
  const lengthIn = (groups: readonly Group[], id: string): number =>
    groupOf(groups, id).reduce((sum, { length }) => sum + length, 0)
  const pieces = measures(lesson('harbour-lights')).cards.flatMap((card) => card.pieces)
  const [sheet] = await files('harbour-lights', true)
  const whole = await groupsIn(browser(), sheet?.text ?? '')
  const own: (readonly Group[])[] = []
  for (const { text } of await files('harbour-lights')) own.push(await groupsIn(browser(), text))
  for (const id of ['cut', 'valley-score', 'mountain-score', 'drawn-marks']) {
    // The envelope, which comes last, has no row of its own among the pieces.
    const all = own.reduce((sum, groups, i) => sum + lengthIn(groups, id) * (pieces[i]?.count ?? 1), 0)
    expect(lengthIn(whole, id) / all, id).toBeCloseTo(1, 3)
  }
})
