import { expect, test } from 'vitest'
import { blocks, cardOf } from './cards.ts'
import { drawn, textsOf } from './figures.ts'
import { byClass, loopsOf } from './svg.ts'

const figure = (name: string, of?: string) => {
  const proven = cardOf(blocks[name] ?? '')
  return { ...drawn('edge', proven, of), closed: proven.proof.closed }
}

test('a box is cut across its middle, to scale both ways', () => {
  for (const name of ['exploding box', 'match box', 'shadow box']) {
    const { svg, alternative, closed } = figure(name)
    const spots = byClass(svg, 'sheet').flatMap(loopsOf).flat()
    const span = (k: 0 | 1) => Math.max(...spots.map((p) => p[k])) - Math.min(...spots.map((p) => p[k]))
    const wide = closed?.size[alternative.includes('along its height') ? 'height' : 'width'].valueOf() ?? 0
    const deep = closed?.thickness.valueOf() ?? 0
    // Sheets are drawn thicker, on both sides alike: by a few of their lines.
    const scale = (span(0) - 1) / wide
    expect(Math.abs(span(1) - deep * scale), name).toBeLessThan(2.5)
    expect(textsOf(svg, 'legend').join(' ')).toMatch(
      /^Cut across the middle; distances to scale, sheets drawn \d+ times as thick/,
    )
  }
})

test('each sheet of a box runs round its corners as one', () => {
  // The sleeve, the tray, what lines it and what covers the sleeve.
  const { svg, alternative } = figure('match box')
  expect(byClass(svg, 'sheet')).toHaveLength(4)
  expect(alternative).toContain(
    'Cut through: cover, front, left side, right side, tab, left wall, right wall, lining, floor and back.',
  )
  expect(alternative).toContain('Not in this cut: upper left tab,')
})

test('walls are named beside the box, the one that is asked for in bold', () => {
  const { svg } = figure('match box', 'cover')
  expect(textsOf(svg, 'name')).toEqual(
    expect.arrayContaining(['left wall', 'right wall', 'left side', 'right side']),
  )
  expect(byClass(svg, 'accent')).toHaveLength(1)
})
