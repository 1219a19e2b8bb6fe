import { describe, expect, test } from 'vitest'
import { pictureOf } from '../../src/draw/apart/picture.ts'
import { sceneOf } from '../../src/draw/apart/scene.ts'
import { drawFigure } from '../../src/draw/draw.ts'
import type { Vector } from '../../src/fold/pose.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { blocks, cardOf, cardsAt, gate, harbour } from './cards.ts'
import { collisions } from './collide.ts'
import { drawn, textsOf } from './figures.ts'
import { hiddenShares, wronglyHidden } from './rays.ts'
import { byClass, loopsOf, number } from './svg.ts'

type Spot = readonly [number, number]

/** In mm of the card, without names: the picture is as large as life. */
const lifeSize = { maxWidth: 5000, maxHeight: 5000, labels: ['none'] as const }

/** Seen from 36° to the left and 30° above: written out by itself, with y downwards. */
function onPaper([x, y, z]: Vector): Spot {
  const [turn, rise] = [(36 / 180) * Math.PI, Math.PI / 6]
  const away = -x * Math.sin(turn) + z * Math.cos(turn)
  return [x * Math.cos(turn) + z * Math.sin(turn), -(y * Math.cos(rise) - away * Math.sin(rise))]
}

/** How far up the paper a shape is drawn from where it lies on the card; nothing when no face has this shape. */
function raised(svg: Parameters<typeof byClass>[0], shape: readonly Vector[]): number[] {
  const wanted = shape.map(onPaper)
  return byClass(svg, 'face').flatMap((path) => {
    const loop = loopsOf(path)[0] ?? []
    const [first] = wanted
    const match = loop.flatMap(([, y], start) => {
      const up = (first?.[1] ?? 0) - y
      const same = wanted.every(([wx, wy], i) => {
        const [px, py] = loop[(start + i) % loop.length] ?? [0, 0]
        return Math.abs(px - wx) < 0.01 && Math.abs(wy - up - py) < 0.01
      })
      return same && loop.length === wanted.length ? [up] : []
    })
    return match.slice(0, 1)
  })
}

/** The four corners of a rectangle on the table, its lower edge towards the viewer. */
const rectangle = (left: number, low: number, wide: number, high: number): Vector[] =>
  (
    [
      [left, low],
      [left + wide, low],
      [left + wide, low + high],
      [left, low + high],
    ] as const
  ).map(([x, y]): Vector => [x, 0, -y])

test('on a flat base every layer is its own place, moved straight off the face by even steps', () => {
  const { svg } = drawn('apart', cardOf(gate), undefined, 'in', lifeSize)
  const inch = 25.4
  // The back begins 2 1/2 in from the left; the borders are those of the block.
  const mat = raised(svg, rectangle(2.75 * inch, 0.375 * inch, 4.625 * inch, 6.125 * inch))
  const picture = raised(svg, rectangle(2.875 * inch, 0.5 * inch, 4.375 * inch, 5.875 * inch))
  expect([mat.length, picture.length]).toEqual([1, 1])
  const [step = 0, twice = 0] = [...mat, ...picture]
  expect(step).toBeGreaterThan(20)
  // Sheets lie on one another by their thickness, which no step changes.
  const thickness = 0.6
  expect(Math.abs(twice - 2 * step)).toBeLessThan(thickness)
  // What is on the outside of the doors goes downwards by the same step. Turned over, it is the other way round.
  const door = rectangle(0.125 * inch, 0.125 * inch, 2.25 * inch, 6.75 * inch)
  const turned = [door[1], door[0], door[3], door[2]].flatMap((p) => (p ? [p] : []))
  expect(Math.abs((raised(svg, turned)[0] ?? 0) + step)).toBeLessThan(thickness)
})

test('what holds legs up is lifted off the standing base, twice as far as what lies below it', () => {
  const card = cardOf(harbour)
  const { svg } = drawn('apart', card, undefined, 'in', lifeSize)
  const { structure } = card.card
  const pose = card.proof.standing?.pose
  const floor = pose?.get('floor')
  if (!pose || !floor) throw new Error('The bridge stands')
  /** The floor, which stands facing the viewer, laid on its back. */
  const lying = ([x, y, z]: Vector): Vector => [
    x - floor.origin[0],
    z - floor.origin[2],
    -(y - floor.origin[1]),
  ]
  const up = (name: string): number => {
    const plate = structure.plates.find((p) => p.name === name)
    const place = pose.get(name)
    if (!plate || !place) throw new Error(`There is no ${name}`)
    const corners = plate.outline.map(({ x, y }): Vector => {
      const [u, v] = [x.valueOf(), y.valueOf()]
      return lying(
        [0, 1, 2].map(
          (i) => (place.origin[i] ?? 0) + u * (place.right[i] ?? 0) + v * (place.up[i] ?? 0),
        ) as unknown as Vector,
      )
    })
    const found = raised(svg, corners)
    expect(found, name).not.toEqual([])
    // A strip that covers a whole panel has its shape: what is lifted is the upper of the two.
    return Math.max(...found)
  }
  expect(up('floor')).toBeCloseTo(0, 3)
  expect(up('left leg')).toBeCloseTo(0, 3)
  const step = up('backdrop')
  expect(step).toBeGreaterThan(20)
  expect(up('side strip on left tab') / step).toBeCloseTo(1, 3)
  expect(up('side strip on right tab') / step).toBeCloseTo(1, 3)
  expect(up('beam') / step).toBeCloseTo(2, 3)
  expect(up('sea wall') / step).toBeCloseTo(2, 3)
})

/** The names in the picture by their numbers. */
function numbered(card: ProvenCard, of?: string): Map<string, number> {
  const { svg } = drawn('apart', card, of)
  const [numbers, names] = [textsOf(svg, 'number'), textsOf(svg, 'piece')]
  expect(numbers).toHaveLength(names.length)
  return new Map(names.map((name, i) => [name.replace(/ ×\d+$/, ''), Number(numbers[i])]))
}

const everyCard = cardsAt(['8 x 6 in', 'A6 landscape'])

describe.each(everyCard)('$title', (card) => {
  test('a piece never comes before what it lies on', () => {
    const order = numbered(card)
    const { pieces, plates, bonds } = card.card.structure
    const stuck = pieces.filter(({ kind }) => kind !== 'loose')
    expect([...order.values()].sort((a, b) => a - b)).toEqual(stuck.map((_, i) => i + 1))
    const pieceOf = (plate: string) => plates.find((p) => p.name === plate)?.piece ?? ''
    const kindOf = (name: string) => pieces.find((p) => p.name === name)?.kind
    for (const { plate, onto } of bonds) {
      const [over, under] = [pieceOf(plate), pieceOf(onto)]
      if (kindOf(over) === 'base' || over === under) continue
      expect(order.get(over), `${over} on ${under}`).toBeGreaterThan(order.get(under) ?? 99)
    }
  })
})

test.each(Object.entries(blocks))(
  'nothing farther hides what is nearer, and every piece shows: %s',
  (_, block) => {
    const { card, proof } = cardOf(block)
    const scene = sceneOf(card, proof)
    if (!scene) throw new Error('The card stands')
    const { faces } = pictureOf(scene)
    expect(wronglyHidden(faces, scene.camera, { most: 0.5 })).toEqual([])
    const stuck = card.structure.pieces.filter(({ kind }) => kind !== 'loose')
    expect(new Set(faces.map((face) => face.piece.name)).size).toBe(stuck.length)
    const hidden = hiddenShares(faces, scene.camera)
    for (const [piece, share] of hidden) expect(share, piece).toBeLessThan(0.5)
  },
)

test('thin dashed lines lead straight from what is lifted to where it lands', () => {
  const { svg } = drawn('apart', cardOf(gate))
  const drops = byClass(svg, 'drop')
  expect(drops.length).toBeGreaterThanOrEqual(8)
  for (const drop of drops) {
    expect(number(drop, 'x1')).toBeCloseTo(number(drop, 'x2'), 2)
    expect(number(drop, 'strokeWidth')).toBe(0.18)
    expect(drop.properties.strokeDashArray ?? drop.properties.strokeDasharray).toBeTruthy()
  }
})

test('creases of a flat base are drawn as they bend, seen from above', () => {
  const flat = drawn('apart', cardOf(gate)).svg
  expect(byClass(flat, 'valley').length).toBeGreaterThan(0)
  expect(byClass(flat, 'mountain')).toEqual([])
  // A band with nothing but a stripe on its outside lies with the outside up.
  const { svg, alternative } = drawn('apart', cardOf(blocks['belly band'] ?? ''))
  expect(byClass(svg, 'valley')).toEqual([])
  expect(byClass(svg, 'mountain').length).toBeGreaterThan(0)
  expect(alternative).toContain('with the outside up')
})

test('with a name there is that piece, what it goes on and what it carries, under the same numbers', () => {
  const card = cardOf(gate)
  const all = numbered(card)
  expect([...numbered(card, 'sea mat')]).toEqual(
    [...all].filter(([name]) => ['base', 'sea mat', 'sea picture'].includes(name)),
  )
  expect([...numbered(card, 'sea picture').keys()].sort()).toEqual(['sea mat', 'sea picture'])
  expect(numbered(card, 'base')).toEqual(all)
})

test('a lid, which hangs on nothing, comes last', () => {
  const order = numbered(cardOf(blocks['exploding box'] ?? ''))
  expect([...order].sort((a, b) => a[1] - b[1]).map(([name]) => name)).toEqual([
    'base',
    'wall panel',
    'nest 1',
    'lid',
    'lid panel',
  ])
})

test('what lies flat on a panel is stuck on before walls stand round it', () => {
  const order = numbered(cardOf(blocks.tunnel ?? ''))
  expect([...order].sort((a, b) => a[1] - b[1]).map(([name]) => name)).toEqual([
    'base',
    'scenery',
    'sides',
    'frame',
    'front mat',
  ])
})

test('what goes through a slot comes out on the other side', () => {
  const { card, proof } = cardOf(blocks.slider ?? '')
  const scene = sceneOf(card, proof)
  const ways = new Map(
    [...(scene?.lifts ?? [])].map(([part, { way, steps }]) => [part.piece, Math.sign(way[1]) * steps]),
  )
  // The boat is on the outside of the front, before the sky; the strip that pulls it is inside.
  expect(ways.get('boat')).toBeLessThan(ways.get('mover') ?? 0)
  expect(ways.get('mover')).toBeLessThan(ways.get('sky') ?? 0)
  expect(ways.get('sky')).toBeLessThan(0)
  expect(ways.get('strip')).toBeGreaterThan(0)
  expect(ways.get('channel')).toBeGreaterThan(ways.get('strip') ?? 9)
})

test('names, sizes, both or nothing can be asked for', () => {
  const card = cardOf(harbour)
  expect(textsOf(drawn('apart', card).svg, 'piece')).toContain('side strip ×2')
  expect(textsOf(drawn('apart', card).svg, 'measure')).toEqual([])
  const sizes = textsOf(drawn('apart', card, undefined, 'in', { labels: ['all'] }).svg, 'measure')
  expect(sizes).toEqual(expect.arrayContaining(['10 × 6 in', '8 × 1 3/16 in']))
  const { svg } = drawn('apart', card, undefined, 'in', { labels: ['none'] })
  expect([...textsOf(svg, 'piece'), ...textsOf(svg, 'number'), ...byClass(svg, 'leader')]).toEqual([])
})

test('the text alternative gives the order and says what is left out', () => {
  const { alternative } = drawn('apart', cardOf(gate))
  expect(alternative).toMatch(/^The pieces of the gate card, lifted off one another/)
  expect(alternative).toContain(
    '1 base, white card; 2 door panel, striped paper, 2 of them, on the outside of left door and',
  )
  expect(alternative).toContain('4 sea picture, patterned paper, on sea mat.')
  expect(alternative).toContain('Not shown, because the card does not say where they go: door sign.')
})

const refused = (block: string, of?: string) => {
  const found = drawFigure('apart', cardOf(block), of, 'in')
  return 'findings' in found ? found.findings.map((f) => `${f.message}. ${f.suggestion}`) : []
}

test('what cannot be lifted apart says why, and what would cure it', () => {
  const plain = 'fold: side\nclosed: 5 x 7 in\nbase: {stock: white card}'
  expect(refused(plain)).toEqual([
    'Nothing is stuck on this card, so there are no pieces to lift apart. Show `flat` instead',
  ])
  expect(refused(gate, 'door sign')).toEqual([
    '`door sign` is a loose piece, and the card does not say where it goes. Show `flat` instead, or make it a layer of the card',
  ])
  expect(refused(gate, 'sea matt')[0]).toMatch(/^Unexpected name `sea matt`.*sea mat/)
})

test.each(Object.entries(blocks))(
  'no name touches anything, with sizes and in large print: %s',
  (_, block) => {
    const card = cardOf(block, 'mm')
    for (const options of [
      { labels: ['all'] as const },
      { labels: ['all'] as const, text: 18, maxWidth: 168, maxHeight: 120 },
      { maxWidth: 50, maxHeight: 40 },
    ])
      expect(collisions(drawn('apart', card, undefined, 'mm', options).svg)).toEqual([])
  },
)
