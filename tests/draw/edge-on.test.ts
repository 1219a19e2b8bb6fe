import { describe, expect, test } from 'vitest'
import { drawFigure } from '../../src/draw/draw.ts'
import type { Closed } from '../../src/fold/pose.ts'
import type { LabelWord } from '../../src/lesson/label-words.ts'
import { blocks, cardOf, cardsAt, harbour } from './cards.ts'
import { creasesIn, cross, pileAt, pointed, scan, sectionOf } from './edge-on-reading.ts'
import { drawn, textsOf } from './figures.ts'
import { byClass, number, text } from './svg.ts'

const all = [
  ...cardsAt(['5 x 7 in', '210 x 148 mm']),
  ...['endless', 'exploding box'].flatMap((name) =>
    blocks[name] ? [{ title: name, ...cardOf(blocks[name]) }] : [],
  ),
]
const flat = all.filter(({ proof }) => proof.closed?.isFlat)

describe.each(flat)('seen along its folds: $title', (proven) => {
  const section = sectionOf(proven)
  const { sheets, along, at, scale, times } = section
  const closed = proven.proof.closed as Closed
  const long = closed.size[along].valueOf()
  const creases = creasesIn(proven, section)
  const pile = (u: number) => (along === 'width' ? pileAt(closed, u, at) : pileAt(closed, at, u))
  // Places that are none of a ruler, away from what is drawn round.
  const places = Array.from({ length: 60 }, (_, i) => ((i + 0.317) / 60) * long).filter((u) =>
    creases.every((crease) => Math.abs(crease.u - u) * scale > 6),
  )

  test('the bars are those of the map, in its order, as many times as thick as is said', () => {
    expect(section.caption).toMatch(/Layers drawn (\d+ times )?as thick as they are/)
    let seen = 0
    for (const u of places) {
      const drawnBars = scan(sheets, u * scale)
      const expected = pile(u).sheets
      // A layer that ends in a bend is drawn shorter by the bend's thickness, no more.
      if (expected.length !== drawnBars.length) continue
      seen++
      for (const [i, { caliper }] of expected.entries()) {
        const bar = drawnBars[i]
        expect((bar?.bottom ?? 0) - (bar?.top ?? 0)).toBeCloseTo(caliper * scale * times, 1)
      }
    }
    expect(seen).toBeGreaterThanOrEqual(Math.max(1, places.length * 0.9))
  })

  test('it is as high as the card is thick there, and nowhere higher', () => {
    const outlines = ['sheet', 'pad']
      .flatMap((name) => byClass(section.svg, name))
      .filter((e) => e.tagName === 'path')
    const ys = outlines.flatMap((path) =>
      [...String(path.properties.d).matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map((m) => Number(m[2])),
    )
    const ends = closed.map
      .flatMap(({ outline }) => outline.map(([x, y]) => (along === 'width' ? x : y)))
      .sort((a, b) => a - b)
    const thickest = Math.max(...ends.slice(1).map((end, i) => pile((end + (ends[i] ?? end)) / 2).thickness))
    expect(Math.max(...ys)).toBeCloseTo(0, 2)
    expect((Math.max(...ys) - Math.min(...ys)) / (scale * times)).toBeCloseTo(thickest, 2)
  })

  test('bends join what creases join, and nothing else', () => {
    // Every stretch of a plate is a bar, and every crease makes one sheet of two.
    const ends = [
      0,
      ...closed.map.flatMap(({ outline }) => outline.map(([x, y]) => (along === 'width' ? x : y))),
      ...creases.map(({ u }) => u),
      long,
    ]
      .sort((a, b) => a - b)
      .filter((x, i, sorted) => i === 0 || x - (sorted[i - 1] ?? 0) > 1e-3)
    const plates = ends
      .slice(1)
      .map((end, i) => pile((end + (ends[i] ?? 0)) / 2).sheets.map(({ plate }) => plate))
    const bars = plates.reduce(
      (sum, here, i) => sum + here.filter((plate) => !plates[i - 1]?.includes(plate)).length,
      0,
    )
    expect(sheets.length).toBe(bars - creases.length)
    for (const { between, u, folded } of creases) {
      if (!folded) continue
      const side = pile(u + 1e-2).sheets.some(({ plate }) => plate === between[0]) ? 1 : -1
      for (const away of [9, 6, 4.5]) {
        const near = u + (side * away) / scale
        const order = pile(near).sheets.map(({ plate }) => plate)
        const bars = scan(sheets, near * scale)
        const [p, q] = between.map((name) => bars[order.indexOf(name)])
        if (!p || !q || bars.length !== order.length) continue
        expect(p.sheet, between.join(' and ')).toBe(q.sheet)
        break
      }
    }
  })

  test('no sheet runs through another or through itself', () => {
    const edges = sheets.map((loop) =>
      loop.map((from, i) => [from, loop[(i + 1) % loop.length] ?? from] as const),
    )
    const crossing = edges.flatMap((own, i) =>
      own.flatMap((edge, k) =>
        edges
          .slice(i)
          .flatMap((others, j) => others.slice(j === 0 ? k + 1 : 0).filter((other) => cross(edge, other))),
      ),
    )
    expect(crossing).toEqual([])
  })
})

test('nothing reaches beyond the dimension of the card', () => {
  for (const proven of flat) {
    const { sheets, along, scale } = sectionOf(proven)
    const xs = sheets.flat().map(([x]) => x)
    expect(Math.min(...xs)).toBeGreaterThan(-0.01)
    expect(Math.max(...xs)).toBeLessThan((proven.proof.closed?.size[along].valueOf() ?? 0) * scale + 0.01)
  }
})

test('a name points at what it names', () => {
  let seen = 0
  for (const proven of flat) {
    const section = sectionOf(proven)
    const { along, at, scale, svg, sheets } = section
    const closed = proven.proof.closed as Closed
    const plates = new Map(proven.card.structure.plates.map(({ name, piece }) => [name, piece]))
    for (const { words, dots } of pointed(svg)) {
      if (words.startsWith('foam') || words.startsWith('letters')) continue
      const [, count = '1', name = ''] = /^(?:(\d+) × )?(.*)$/.exec(words) ?? []
      expect(dots.length, words).toBe(Number(count))
      for (const [x, y] of dots) {
        const bars = scan(sheets, x)
        const here = (along === 'width' ? pileAt(closed, x / scale, at) : pileAt(closed, at, x / scale))
          .sheets
        if (bars.length !== here.length) continue
        const index = bars.findIndex(({ top, bottom }) => top < y && y < bottom)
        expect([here[index]?.plate, plates.get(here[index]?.plate ?? '')], words).toContain(name)
        seen++
      }
    }
  }
  expect(seen).toBeGreaterThan(300)
})

test('the thickness and the width stand in it, each with its dimension', () => {
  const proven = cardOf(harbour)
  const { svg, scale, times } = sectionOf(proven)
  expect(textsOf(svg, 'measure')).toEqual(['8 in', 'about', '1/8 in'])
  const upright = byClass(svg, 'dimension').map((line) => Math.abs(number(line, 'y1') - number(line, 'y2')))
  const thick = proven.proof.closed?.thickness.valueOf() ?? 0
  expect(upright.some((high) => Math.abs(high - thick * scale * times) < 0.01)).toBe(true)
})

test('the cut goes where most layers lie, and says what lies elsewhere', () => {
  const { caption, alternative } = sectionOf(cardOf(harbour))
  expect(caption).toContain('Cut 9/16 in above the lower edge, where most layers lie.')
  expect(caption).toContain('Not in this cut: beam.')
  expect(alternative).toContain('From front to back: sea wall, left leg,')
  expect(alternative).toContain('Foam holds sea wall away from left tab.')
  expect(alternative).toContain('The letters HARBOUR are on sea wall.')
})

test('a piece that is asked for is cut, has a heavier outline and a bold name', () => {
  const { svg, alternative } = sectionOf(cardOf(harbour), 'beam')
  expect(alternative).toContain('With a heavier outline and a bold name: beam.')
  expect(alternative).toContain('Not in this cut: sea wall.')
  const [accent] = byClass(svg, 'accent')
  expect(accent && number(accent, 'strokeWidth')).toBe(0.6)
  const bold = byClass(svg, 'name').filter((node) => node.properties.fontWeight === '600')
  expect(bold.map(text)).toEqual(['beam'])
})

test('a panel that is asked for is told from the others of its sheet', () => {
  const { svg } = sectionOf(cardOf(harbour), 'floor')
  expect(byClass(svg, 'accent')).toHaveLength(1)
  expect(
    byClass(svg, 'name')
      .filter((node) => node.properties.fontWeight === '600')
      .map(text),
  ).toEqual(['floor'])
})

test('only the labels that are picked stand in it; by how much it is exaggerated always does', () => {
  const labels = (...words: LabelWord[]) =>
    drawn('edge', cardOf(harbour), undefined, 'in', { labels: words }).svg
  expect(byClass(labels('none'), 'name')).toEqual([])
  expect(byClass(labels('none'), 'measure')).toEqual([])
  expect(textsOf(labels('none'), 'legend').join(' ')).toContain('times as thick as they are')
  expect(textsOf(labels('size'), 'measure')).toEqual(['8 in'])
  expect(textsOf(labels('thickness'), 'measure')).toEqual(['about', '1/8 in'])
  expect(byClass(labels('names'), 'measure')).toEqual([])
  expect(textsOf(labels('names'), 'name')).toContain('sea wall')
  expect(textsOf(labels('all'), 'name')).toContain('sea wall')
})

test('what the card has not, and a card that does not fold, are said', () => {
  const { card, proof } = cardOf(harbour)
  expect(drawFigure('edge', { card, proof }, 'bakdrop', 'in')).toMatchObject({
    findings: [{ rule: 'unknown-name', suggestion: 'Write `backdrop`' }],
  })
  const { closed: _, ...open } = proof
  expect(drawFigure('edge', { card, proof: open }, undefined, 'in')).toMatchObject({
    findings: [{ rule: 'figure-not-drawn', message: expect.stringContaining('needs a card that folds') }],
  })
})
