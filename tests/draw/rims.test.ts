import { expect, test } from 'vitest'
import { frontLeft, project } from '../../src/draw/camera.ts'
import { facesOf } from '../../src/draw/face/face.ts'
import { faceMarks } from '../../src/draw/face/marks.ts'
import { paintOrder } from '../../src/draw/sort.ts'
import { inSpace } from '../../src/draw/space.ts'
import { makePalette } from '../../src/draw/stock.ts'
import type { Vector } from '../../src/fold/pose.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { cardOf, cardsAt } from './cards.ts'
import { elements, has, loopsOf, number, type Spot } from './svg.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const scale = 0.5

/** The drawing of a standing card: each painted face with the strips and the lines that are drawn with it. */
function standing({ card, proof }: ProvenCard, at = scale) {
  const faces = facesOf(card.structure, proof.standing?.pose ?? new Map())
  const painted = paintOrder(faces, card.structure, frontLeft, proof.closed)
  const view = { camera: frontLeft, scale: at, palette: makePalette(card.structure), of: undefined }
  const parts = painted.map((face) => ({
    face,
    outline: [] as Spot[],
    rims: [] as Spot[][],
    lines: [] as Line[],
  }))
  let which = -1
  const nodes = faceMarks(painted, card, view).map((mark) => mark.node())
  for (const node of nodes.flatMap((one) => [one, ...elements(one)])) {
    if (has(node, 'face')) which++
    const part = parts[which]
    if (!part) continue
    if (has(node, 'face')) part.outline = loopsOf(node)[0] ?? []
    if (has(node, 'rim')) part.rims.push(...loopsOf(node))
    if (has(node, 'fold') || has(node, 'edge'))
      part.lines.push([
        [number(node, 'x1'), number(node, 'y1')],
        [number(node, 'x2'), number(node, 'y2')],
      ])
  }
  return parts
}

type Line = readonly [Spot, Spot]

/** The creases of a card on the paper, each with the two plates that it joins. */
const creasesOf = ({ card, proof }: ProvenCard) =>
  card.structure.hinges.flatMap(({ between, line: { from, to } }) =>
    between.flatMap((plate): { between: readonly string[]; plate: string; ends: Line }[] => {
      const place = proof.standing?.pose.get(plate)
      if (!place) return []
      const on = ({ x, y }: typeof from): Spot =>
        project(frontLeft, inSpace(place, [x.valueOf(), y.valueOf()]), scale)
      return [{ between, plate, ends: [on(from), on(to)] }]
    }),
  )

const isSame = ([a, b]: Line, [p, q]: Line): boolean =>
  Math.min(Math.max(apart(a, p), apart(b, q)), Math.max(apart(a, q), apart(b, p))) < 0.05

const apart = ([x, y]: Spot, [p, q]: Spot) => Math.hypot(x - p, y - q)
/** How far a spot is from a straight line. */
const aside = (p: Spot, [a, b]: readonly [Spot, Spot]) =>
  Math.abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / apart(a, b)
/** The least width of a strip whose outer edge are its first two corners. */
const widthOf = ([a, b, c, d]: readonly Spot[]) =>
  a && b && c && d ? Math.min(aside(c, [a, b]), aside(d, [a, b])) : 0

const cards = cardsAt(['8 x 6 in', '5 x 7 in']).filter(({ proof }) => proof.standing)

test.each(cards)('only cut edges that look towards the reader are double: $title', (proven) => {
  const creases = creasesOf(proven)
  let found = 0
  for (const { face, rims } of standing(proven)) {
    const { outline, holes, place } = face
    // Each edge with the way it looks, worked out here from the flat sheet.
    const edges = [outline, ...holes].flatMap((loop, n) =>
      loop.map((corner, i) => {
        const [from, to] = [corner.at, (loop[(i + 1) % loop.length] ?? corner).at]
        const along: Vector = [to[0] - from[0], to[1] - from[1], to[2] - from[2]]
        const [x, y] = [dot(along, place.right), dot(along, place.up)]
        const looks = dot(place.right, frontLeft.eye) * y - dot(place.up, frontLeft.eye) * x
        const ends: Line = [project(frontLeft, from, scale), project(frontLeft, to, scale)]
        return { ends, looks: n > 0 ? -looks : looks }
      }),
    )
    for (const [a, b] of rims) {
      if (!a || !b) throw new Error('A strip has four corners')
      found++
      const own = edges.filter(({ ends }) => isSame(ends, [a, b]))
      expect(own.map(({ looks }) => looks > 0)).toContain(true)
      const folded = creases.filter(({ plate, ends }) => plate === face.plate.name && isSame(ends, [a, b]))
      expect(folded).toEqual([])
    }
  }
  expect(found).toBeGreaterThan(0)
})

/** The strips of the plates of a card whose base is of a stock, in mm. */
const strips = (stock: string, at?: number): number[] =>
  standing(cardOf(`fold: side\nclosed: 5 x 7 in\nbase: {${stock}}`), at)
    .flatMap(({ rims }) => rims)
    .map(widthOf)

test('heavy card has a wider strip than paper, film a narrower one, and all can be seen', () => {
  // Half of the line along the edge, 0.5 mm wide, lies on the strip.
  const seen = (stock: string) => Math.min(...strips(stock)) - 0.25
  const [film, paper, card] = [
    seen('stock: clear film, caliper: 0.1 mm'),
    seen('stock: paper, caliper: 0.2 mm'),
    seen('stock: grey board, caliper: 0.5 mm'),
  ]
  expect(film).toBeGreaterThan(0.2)
  expect(paper).toBeGreaterThan(0.34)
  expect(card).toBeGreaterThan(paper + 0.1)
  expect(film).toBeLessThan(paper - 0.05)
})

test('what is thicker than can be drawn double has its true thickness, foreshortened', () => {
  // Board of 3 mm, twice life size: an upright edge that looks to the left.
  const wide = strips('stock: foam board, caliper: 3 mm', 2)
  expect(Math.max(...wide)).toBeGreaterThan(1.2)
  expect(Math.max(...wide)).toBeLessThanOrEqual(6.25)
})

test('a strip lies within its sheet, so that it hides nothing beside it', () => {
  for (const { outline, rims } of cards.slice(0, 12).flatMap((proven) => standing(proven)))
    for (const spot of rims.flat()) {
      const onEdge = outline.some((p, i) => aside(spot, [p, outline[(i + 1) % outline.length] ?? p]) < 0.03)
      expect(onEdge || isIn(outline, spot)).toBe(true)
    }
})

const isIn = (loop: readonly Spot[], [x, y]: Spot): boolean =>
  loop.filter(([x1, y1], i) => {
    const [x2, y2] = loop[(i + 1) % loop.length] ?? [x1, y1]
    return y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)
  }).length %
    2 ===
  1

test('a crease is drawn once, with one of the two panels that it joins', () => {
  let found = 0
  for (const proven of cards) {
    const parts = standing(proven)
    for (const { between, ends } of creasesOf(proven)) {
      const lines = parts
        .filter(({ face }) => between.includes(face.plate.name))
        .flatMap((part) => part.lines)
        .filter((one) => isSame(one, ends))
      found += lines.length
      // Where the sheet was split at the crease its line is in parts.
      expect([proven.title, between, lines.length <= 1]).toEqual([proven.title, between, true])
    }
  }
  expect(found).toBeGreaterThan(2 * cards.length)
})
