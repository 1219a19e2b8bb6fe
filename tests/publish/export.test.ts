import { readFileSync } from 'node:fs'
import { Helper } from 'dxf'
import dxfParser from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { exportLesson } from '../../src/publish/export.ts'
import { isOurs } from '../../src/publish/write.ts'
import { measures, type PieceJson } from '../../src/workshop/measures.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
// Its types speak of another kind of module than the one that is loaded.
const DxfParser = dxfParser as unknown as new () => {
  parseSync(text: string): { entities: unknown[] } | null
}
const names = ['harbour-lights', 'ferry-day', 'harbour-arches', 'regatta-sail']
const lesson = (name: string, units: 'in' | 'mm' = 'in') =>
  fillLesson(readLesson(readFileSync(new URL(`../../lessons/${name}.md`, import.meta.url), 'utf8')), {
    units,
  })

interface Line {
  readonly layer: string
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
}
type Spot = { x: number; y: number }

const linesOf = (layer: string, spots: readonly Spot[], closed: boolean): Line[] =>
  spots.flatMap(({ x, y }, i): Line[] => {
    const next = spots[i + 1] ?? (closed ? spots[0] : undefined)
    return next ? [{ layer, from: [x, y], to: [next.x, next.y] }] : []
  })

/** Two programs that read DXF, each by itself. */
const readers: Record<string, (text: string) => Line[]> = {
  'dxf-parser': (text) =>
    (new DxfParser().parseSync(text)?.entities ?? []).flatMap((entity) => {
      const {
        vertices = [],
        shape = false,
        layer,
      } = entity as unknown as {
        vertices?: Spot[]
        shape?: boolean
        layer: string
      }
      return linesOf(layer, vertices, shape)
    }),
  dxf: (text) =>
    new Helper(text).denormalised.flatMap((entity: Record<string, unknown>) =>
      entity.type === 'LINE'
        ? linesOf(String(entity.layer), [entity.start as Spot, entity.end as Spot], false)
        : linesOf(String(entity.layer), entity.vertices as Spot[], entity.closed === true),
    ),
}

const sorted = (all: readonly number[]): number[] =>
  all.map((x) => Number(x.toFixed(4))).sort((a, b) => a - b)
const lengths = (lines: readonly Line[], layer: string): number[] =>
  sorted(
    lines
      .filter((l) => l.layer === layer)
      .map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1])),
  )
const extent = (lines: readonly Line[], layer: string): number[] => {
  const own = lines.filter((l) => l.layer === layer).flatMap(({ from, to }) => [from, to])
  return [0, 1].map((k) => {
    const all = own.map((spot) => spot[k] ?? 0)
    return Number((Math.max(...all) - Math.min(...all)).toFixed(4))
  })
}
/** The lengths of a piece's score lines, as its table of measures has them. */
const scoreLengths = ({ scores, slants = [] }: PieceJson, fold: 'valley' | 'mountain'): number[] =>
  sorted([
    ...scores.filter((s) => s.fold === fold).map(({ from, to }) => to.mm - from.mm),
    ...slants
      .filter((s) => s.fold === fold)
      .map(({ x1, y1, x2, y2 }) => Math.hypot(x2.mm - x1.mm, y2.mm - y1.mm)),
  ])

describe.each(names)('%s', (name) => {
  const filled = lesson(name)
  const pieces = measures(filled).cards.flatMap((card) => card.pieces)

  test.each(Object.keys(readers))(
    'its DXF files, read by `%s`, have the lengths of its pieces',
    async (reader) => {
      const files = await exportLesson(filled, 'dxf', false)
      expect(files.map((file) => file.name)).toEqual([...pieces.map((piece) => piece.name), 'envelope'])
      for (const [i, piece] of pieces.entries()) {
        const lines = readers[reader]?.(files[i]?.text ?? '') ?? []
        expect(extent(lines, 'CUT'), piece.name).toEqual(
          [piece.width.mm, piece.height.mm].map((x) => Number(x.toFixed(4))),
        )
        for (const [fold, layer] of [
          ['valley', 'VALLEY_SCORE'],
          ['mountain', 'MOUNTAIN_SCORE'],
        ] as const)
          expect(lengths(lines, layer), `${piece.name} ${fold}`).toEqual(scoreLengths(piece, fold))
      }
    },
  )

  test('its SVG files are as large in a browser as its pieces are', async () => {
    const files = await exportLesson(filled, 'svg', false)
    const page = await browser().newPage()
    for (const [i, piece] of pieces.entries()) {
      await page.setContent(`<body style="margin:0">${files[i]?.text.replace(/^<\?.*\?>/, '')}`)
      const found = (await page.evaluate(`(() => {
        const mm = 96 / 25.4
        const svg = document.querySelector('svg').getBoundingClientRect()
        const length = (id) => [...document.querySelectorAll('#' + id + ' path')].map((p) => p.getTotalLength())
        const cut = document.querySelector('#cut').getBBox()
        return { svg: [svg.width / mm, svg.height / mm], cut: [cut.width, cut.height], valley: length('valley-score'), mountain: length('mountain-score') }
      })()`)) as Record<'svg' | 'cut' | 'valley' | 'mountain', number[]>
      const size = [piece.width.mm, piece.height.mm]
      for (const box of [found.svg, found.cut])
        for (const [k, side] of size.entries()) expect(box[k], piece.name).toBeCloseTo(side, 1)
      for (const fold of ['valley', 'mountain'] as const) {
        const said = scoreLengths(piece, fold)
        expect(found[fold]).toHaveLength(said.length)
        for (const [k, length] of sorted(found[fold]).entries()) expect(length).toBeCloseTo(said[k] ?? 0, 1)
      }
    }
    await page.close()
  })

  test('on one sheet its pieces do not touch, and each is there as often as it is needed', async () => {
    const [file, ...more] = await exportLesson(filled, 'dxf', true)
    expect(more).toEqual([])
    const entities = (new DxfParser().parseSync(file?.text ?? '')?.entities ?? []) as unknown as {
      layer: string
      shape?: boolean
      vertices: Spot[]
    }[]
    const boxes = entities
      .filter((e) => e.layer === 'CUT' && e.shape)
      .map(({ vertices }) => {
        const [xs, ys] = [vertices.map((v) => v.x), vertices.map((v) => v.y)]
        return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const
      })
    // A window lies in its piece; whole pieces lie apart.
    const outer = boxes.filter(
      (a) => !boxes.some((b) => b !== a && b[0] < a[0] && b[1] < a[1] && b[2] > a[2] && b[3] > a[3]),
    )
    expect(outer).toHaveLength(pieces.reduce((sum, { count }) => sum + count, 1))
    for (const [i, a] of outer.entries())
      for (const b of outer.slice(i + 1))
        expect(a[2] + 9 < b[0] || b[2] + 9 < a[0] || a[3] + 9 < b[1] || b[3] + 9 < a[1]).toBe(true)
  })
})

test('letters and layers are marked where they belong', async () => {
  const filled = lesson('harbour-lights', 'mm')
  const files = await exportLesson(filled, 'dxf', false)
  const marks = (piece: string) =>
    readers
      .dxf?.(files.find(({ name }) => name === piece)?.text ?? '')
      .filter((l) => l.layer === 'DRAWN_MARKS') ?? []
  const [lettering] = measures(filled).cards[0]?.lettering ?? []
  expect(sorted(marks('sea wall').map(({ from }) => from[0]))).toEqual(lettering?.marks.map(({ mm }) => mm))
  const backdrop = marks('base').map(({ from }) => from)
  const floor = filled.cards[0]?.card.structure.plates.find(({ name }) => name === 'floor')?.outline ?? []
  const left = Math.min(...floor.map(({ x }) => x.valueOf()))
  const onFloor = backdrop.map(([x]) => x).filter((x) => x >= left)
  expect(Math.min(...onFloor)).toBeCloseTo(left + 2, 6)
})

test.each(['svg', 'dxf', 'fold'] as const)(
  'a %s file is known as ours, and so may be written again',
  async (kind) => {
    for (const { text } of await exportLesson(lesson('tide-box'), kind, false))
      expect(isOurs(new TextEncoder().encode(text))).toBe(true)
    expect(isOurs(new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"></svg>'))).toBe(false)
  },
)
