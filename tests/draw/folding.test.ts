import type { Element } from 'hast'
import { describe, expect, test } from 'vitest'
import { drawFigure } from '../../src/draw/draw.ts'
import { endOfPath, pathsFrom } from '../../src/draw/folding/arrows.ts'
import { type Stage, stagesOf } from '../../src/draw/folding/stages.ts'
import { wayTo } from '../../src/draw/folding/target.ts'
import type { Way } from '../../src/draw/folding/way.ts'
import { dashes } from '../../src/draw/ink.ts'
import type { Pose, Vector } from '../../src/fold/pose.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { blocks, cardOf, gate, harbour } from './cards.ts'
import { drawn, textsOf } from './figures.ts'
import { lessonNamed, lessonNames, printsOf } from './lesson-cards.ts'
import { attribute, byClass, number } from './svg.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const less = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const far = (a: readonly number[], b: readonly number[]) => Math.hypot(...a.map((x, i) => x - (b[i] ?? 0)))

const starters = Object.entries(blocks).map(([name, block]) => ({ name, card: cardOf(block) }))
const lessons = lessonNames.flatMap((name) =>
  (printsOf(lessonNamed(name), 1)[0]?.cards ?? []).map((card) => ({
    name: `${name}: ${card.card.name}`,
    card,
  })),
)
const every = [...starters, ...lessons]

/** The way that is drawn, and its stages. */
function stripOf(card: ProvenCard, of?: string): { way: Way; stages: Stage[] } {
  const way = wayTo(card, of)
  if ('rule' in way) throw new Error(way.message)
  return { way, stages: stagesOf(way) }
}

const numbersOf = (svg: Element) => textsOf(svg, 'stage').map(Number)

/** Where a point of a plate is, as someone sees it who sits on the plate `from`. */
function seenFrom(pose: Pose, from: string, plate: string, [x, y]: readonly [number, number]): Vector {
  const [at, on] = [pose.get(plate), pose.get(from)]
  if (!at || !on) throw new Error(`No place for ${plate} or ${from}`)
  const point = [0, 1, 2].map(
    (k) => (at.origin[k] ?? 0) + x * (at.right[k] ?? 0) + y * (at.up[k] ?? 0),
  ) as unknown as Vector
  const v = less(point, on.origin)
  return [dot(v, on.right), dot(v, on.up), dot(v, on.normal)]
}

describe('the stages', () => {
  test.each(every)('are three to six, numbered one after the other: $name', ({ card }) => {
    const numbers = numbersOf(drawn('folding', card).svg)
    expect(numbers.length).toBeGreaterThanOrEqual(3)
    expect(numbers.length).toBeLessThanOrEqual(6)
    expect(numbers).toEqual(numbers.map((_, i) => i + 1))
  })

  test.each(every)('begin flat, end shut, and only a card that then stands goes on: $name', ({ card }) => {
    const { stages } = stripOf(card)
    const kinds = stages.map(({ kind }) => kind)
    expect(kinds[0]).toBe('flat')
    expect(kinds.slice(kinds.indexOf('shut') + 1)).toEqual(kinds.at(-1) === 'standing' ? ['standing'] : [])
    const normals = [...(stages[0]?.pose.values() ?? [])].map(({ normal }) => normal)
    for (const normal of normals) expect(Math.abs(dot(normal, normals[0] as Vector))).toBeCloseTo(1, 6)
  })

  test.each(every)('differ from one another, as rays through a grid see them: $name', ({ card }) => {
    const { stages } = stripOf(card)
    for (const [i, stage] of stages.slice(1).entries())
      expect(changed(stages[i] as Stage, stage), `${i + 1} and ${i + 2}`).toBeGreaterThan(0.05)
  })

  test.each(starters.filter(({ card }) => card.proof.closed?.isFlat))(
    'show the shut card as large as it is: $name',
    ({ card }) => {
      const shut = stripOf(card).stages.find(({ kind }) => kind === 'shut')
      const corners = shut?.picture.faces.flatMap((face) => face.outline.map(({ at }) => at)) ?? []
      const frame = shut?.picture.faces[0]?.place
      if (!frame) throw new Error('Nothing is drawn')
      const span = (axis: Vector) =>
        Math.max(...corners.map((p) => dot(p, axis))) - Math.min(...corners.map((p) => dot(p, axis)))
      const { width, height } = card.proof.closed?.size ?? {}
      const sides = [span(frame.right), span(frame.up)].sort((a, b) => a - b)
      const expected = [Number(width?.valueOf()), Number(height?.valueOf())].sort((a, b) => a - b)
      for (const [k, side] of sides.entries()) expect(side).toBeCloseTo(expected[k] ?? 0, 3)
    },
  )
})

/** Which share of the spots that either picture covers shows another plate, or the same plate elsewhere. */
function changed(a: Stage, b: Stage): number {
  const [seenA, seenB] = [a, b].map(lookAt)
  if (!seenA || !seenB) return 0
  const spots = new Set([...seenA.keys(), ...seenB.keys()])
  const differing = [...spots].filter((spot) => {
    const [one, other] = [seenA.get(spot), seenB.get(spot)]
    return !one || !other || one.plate !== other.plate || far(one.at, other.at) > 8
  })
  return differing.length / spots.size
}

/** What a ray through each spot of a grid of 4 mm meets first: the plate, and where on it. By depths, not by any order. */
function lookAt({ picture }: Stage): Map<string, { plate: string; at: [number, number]; near: number }> {
  const { right, up, eye } = picture.camera
  const met = new Map<string, { plate: string; at: [number, number]; near: number }>()
  for (const { plate, place, outline } of picture.faces) {
    const slope = dot(place.normal, eye)
    if (Math.abs(slope) < 1e-3) continue
    const loop = outline.map(({ at }) => [dot(at, right), dot(at, up)] as const)
    const [xs, ys] = [loop.map(([x]) => x), loop.map(([, y]) => y)]
    const first = (all: number[]) => Math.ceil(Math.min(...all) / 4) * 4
    for (let x = first(xs); x <= Math.max(...xs); x += 4)
      for (let y = first(ys); y <= Math.max(...ys); y += 4) {
        const crossings = loop.filter(([ax, ay], i) => {
          const [bx, by] = loop[(i + 1) % loop.length] ?? [ax, ay]
          return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)
        })
        if (crossings.length % 2 === 0) continue
        const foot = right.map((r, k) => r * x + (up[k] ?? 0) * y) as unknown as Vector
        const near = dot(less(place.origin, foot), place.normal) / slope
        const key = `${x} ${y}`
        if ((met.get(key)?.near ?? Number.NEGATIVE_INFINITY) > near) continue
        const v = less(foot.map((f, k) => f + near * (eye[k] ?? 0)) as unknown as Vector, place.origin)
        met.set(key, { plate: plate.name, at: [dot(v, place.right), dot(v, place.up)], near })
      }
  }
  return met
}

describe('arrows', () => {
  test.each(every)('begin on a panel that moves, and end where the way takes it: $name', ({ card }) => {
    const { way, stages } = stripOf(card)
    const making = card.proof.making()
    for (const [i, stage] of stages.entries()) {
      if (stage.kind === 'joined') continue
      for (const { plate, point, places, spots } of pathsFrom(way, stage, stages[i + 1])) {
        const end = endOfPath(stage, stages[i + 1])
        const [now, then] = [making?.poseAt(stage.at), making?.poseAt(end)]
        const stays = card.card.structure.display.plate
        if (!now || !then || !now.has(stays)) continue
        // Seen from the plate that stays, turning the card over changes nothing.
        const frame = stage.pose.get(stays)
        const own = (p: Vector | undefined): Vector => {
          const v = less(p as Vector, frame?.origin as Vector)
          return [
            dot(v, frame?.right as Vector),
            dot(v, frame?.up as Vector),
            dot(v, frame?.normal as Vector),
          ]
        }
        expect(far(own(places[0]), seenFrom(now, stays, plate, point))).toBeLessThan(1e-6)
        expect(far(own(places.at(-1)), seenFrom(then, stays, plate, point))).toBeLessThan(1e-6)
        expect(far(own(places[0]), own(places.at(-1)))).toBeGreaterThan(1)
        // On the paper: x to the right, y down.
        const { right, up } = way.camera
        for (const [k, spot] of spots.entries()) {
          const place = places[k] as Vector
          expect(far(spot, [dot(place, right), -dot(place, up)])).toBeLessThan(1e-9)
        }
      }
    }
  })

  test('touch the edge of a drawn panel with their tail', () => {
    const { svg } = drawn('folding', cardOf(gate), undefined, 'in', { maxWidth: 168 })
    const edges = [...byClass(svg, 'edge'), ...byClass(svg, 'fold')]
    const tails = byClass(svg, 'movement').map((path) => spotsOf(path)[0] ?? [0, 0])
    expect(tails).toHaveLength(3)
    for (const tail of tails)
      expect(Math.min(...edges.map((edge) => fromLine(tail, edge)))).toBeLessThan(0.05)
  })

  test('have a full head for what folds towards the reader and half an open one for what folds away', () => {
    const heads = (name: string) => {
      const { svg } = drawn('folding', cardOf(blocks[name] ?? ''))
      return byClass(svg, 'arrow').map((head) => String(head.properties.className).includes('half'))
    }
    expect(new Set(heads('gate'))).toEqual(new Set([false]))
    expect(new Set(heads('shadow box').slice(0, 4))).toEqual(new Set([true]))
  })
})

const spotsOf = (path: Element): [number, number][] =>
  attribute(path, 'd')
    .replace(/^M/, '')
    .split('L')
    .map((pair) => pair.split(' ').map(Number) as [number, number])

function fromLine([x, y]: readonly number[], edge: Element): number {
  const [x1, y1, x2, y2] = ['x1', 'y1', 'x2', 'y2'].map((name) => number(edge, name)) as [
    number,
    number,
    number,
    number,
  ]
  const [dx, dy] = [x2 - x1, y2 - y1]
  const long = dx * dx + dy * dy
  const t = Math.min(1, Math.max(0, long === 0 ? 0 : (((x ?? 0) - x1) * dx + ((y ?? 0) - y1) * dy) / long))
  return Math.hypot((x ?? 0) - x1 - t * dx, (y ?? 0) - y1 - t * dy)
}

describe('the work is turned over', () => {
  const turns = (name: string) => textsOf(drawn('folding', cardOf(blocks[name] ?? '')).svg, 'turn').length / 2
  test('where a hand works on the other side', () => {
    expect(turns('easel')).toBe(1)
    expect(turns('accordion')).toBe(2)
  })
  test.each(['side', 'gate', 'z', 'letter', 'bridge', 'box step', 'shadow box', 'exploding box'])(
    'not without need: %s',
    (name) => expect(turns(name)).toBe(0),
  )
  test.each(every)(
    'so that a sheet that lies flat is never folded away from the reader: $name',
    ({ card }) => {
      const { way, stages } = stripOf(card)
      for (const [i, stage] of stages.entries()) {
        const act = stage.acts.at(-1)
        const flat = [act?.from, act?.to].every((share) => {
          const normals = [...(way.poseAt(share ?? 0)?.values() ?? [])].map(({ normal }) => normal)
          return normals.every((normal) => Math.abs(dot(normal, normals[0] as Vector)) > 0.999)
        })
        if (stage.kind !== 'bent' || !flat) continue
        expect(pathsFrom(way, stage, stages[i + 1]).filter((path) => path.way === 'away')).toEqual([])
      }
    },
  )
})

describe('creases', () => {
  const { svg } = drawn('folding', cardOf(blocks.z ?? ''))
  const dashOf = (crease: Element) => attribute(crease, 'strokeDashArray').split(/[ ,]/).map(Number)
  test('are dashed while they lie flat, valleys and mountains each in their way', () => {
    const waiting = byClass(svg, 'crease').filter(
      (one) => !String(one.properties.className).includes('active'),
    )
    const valleys = waiting.filter((one) => String(one.properties.className).includes('valley'))
    const mountains = waiting.filter((one) => String(one.properties.className).includes('mountain'))
    expect(valleys.length).toBeGreaterThan(0)
    expect(mountains.length).toBeGreaterThan(0)
    for (const one of valleys) expect(dashOf(one)).toEqual([...dashes.valley])
    for (const one of mountains) expect(dashOf(one)).toEqual([...dashes.mountain])
  })
  test('are heavier while they are folded', () => {
    const active = byClass(svg, 'active')
    expect(active).toHaveLength(2)
    for (const one of active) expect(number(one, 'strokeWidth')).toBeGreaterThan(0.5)
  })
})

describe('words', () => {
  test('say what is done, and stand in the text alternative too', () => {
    const { svg, alternative } = drawn('folding', cardOf(gate), undefined, 'in', { maxWidth: 168 })
    const said = textsOf(svg, 'legend').join(' ')
    expect(said).toBe(
      'the sheet flat, inside up fold the right door over fold the left door over shut standing',
    )
    expect(alternative).toBe(
      'Folding the gate card, in 5 stages: 1, the sheet flat, inside up. 2, fold the right door over. 3, fold the left door over. 4, shut. 5, standing.',
    )
  })
  test('name what is stuck on, and where the work is turned over', () => {
    expect(drawn('folding', cardOf(harbour)).alternative).toContain('3, stick the beam and the sea wall on.')
    expect(drawn('folding', cardOf(blocks.easel ?? '')).alternative).toContain(
      '3, turn over, then fold the prop over.',
    )
    expect(drawn('folding', cardOf(blocks['exploding box'] ?? '')).alternative).toContain(
      'not shown: the lid',
    )
  })
  test('are left out when no labels are wanted; the numbers stay', () => {
    const { svg } = drawn('folding', cardOf(blocks.easel ?? ''), undefined, 'in', { labels: ['none'] })
    expect(textsOf(svg, 'legend')).toEqual([])
    expect(numbersOf(svg)).toEqual([1, 2, 3, 4, 5])
  })
})

describe('one piece', () => {
  test('is folded alone', () => {
    const { svg, alternative } = drawn('folding', cardOf(gate), 'base')
    expect(alternative).toMatch(/^Folding the base, in 4 stages: 1, the base flat, inside up\./)
    const { plates } = cardOf(gate).card.structure
    expect(byClass(svg, 'face').length).toBe(4 * plates.filter(({ piece }) => piece === 'base').length)
  })
  test.each(starters)('of whatever fold, or it is said why not: $name', ({ card }) => {
    const { pieces, hinges, plates } = card.card.structure
    for (const { name } of pieces) {
      const figure = drawFigure('folding', card, name, 'in')
      const folds = hinges.some(({ between: [one] }) => plates.find((p) => p.name === one)?.piece === name)
      if (folds)
        expect(numbersOf('svg' in figure ? figure.svg : ({} as Element)).length).toBeGreaterThanOrEqual(3)
      else
        expect('findings' in figure && figure.findings[0]?.message).toBe(
          `\`${name}\` has no creases, so there is no folding to draw`,
        )
    }
  })
  test('that has no creases, or is none, is named with what would do instead', () => {
    const said = (of: string) => {
      const figure = drawFigure('folding', cardOf(gate), of, 'in')
      return 'findings' in figure ? figure.findings[0] : undefined
    }
    expect(said('sea mat')?.suggestion).toBe('Leave `of` out to fold the whole card, or choose `base`')
    expect(said('bass')).toMatchObject({ rule: 'unknown-name', suggestion: 'Write `base`' })
  })
})
