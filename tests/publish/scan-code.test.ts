import fc from 'fast-check'
import type { Element } from 'hast'
import { expect, test } from 'vitest'
import { longestLink } from '../../src/lesson/link.ts'
import { outlinesOf } from '../../src/publish/outlines.ts'
import { scanCode } from '../../src/publish/scan-code.ts'
import { decoded } from './decoded.ts'

/** Which squares are inside of the outlines: an even-odd count of the upright edges to the left of their middles. */
function filledBy(loops: readonly (readonly (readonly number[])[])[], size: number): boolean[][] {
  const uprights = loops.flatMap((loop) =>
    loop.flatMap((from, i) => {
      const to = loop[(i + 1) % loop.length] ?? from
      return from[0] === to[0] ? [{ x: from[0] ?? 0, ys: [from[1] ?? 0, to[1] ?? 0] }] : []
    }),
  )
  const crossed = (x: number, y: number) =>
    uprights.filter((u) => u.x <= x && Math.min(...u.ys) <= y && y < Math.max(...u.ys)).length
  return Array.from({ length: size }, (_, y) =>
    Array.from({ length: size }, (_, x) => crossed(x, y) % 2 === 1),
  )
}

test('the outlines of squares hold those squares and no others', () => {
  const grids = fc
    .integer({ min: 1, max: 9 })
    .chain((n) =>
      fc.array(fc.array(fc.boolean(), { minLength: n, maxLength: n }), { minLength: n, maxLength: n }),
    )
  fc.assert(
    fc.property(grids, (grid) => {
      expect(filledBy(outlinesOf(grid), grid.length)).toEqual(grid)
    }),
  )
})

test('each outline turns at each of its corners', () => {
  const loops = outlinesOf([
    [true, true],
    [true, false],
  ])
  expect(loops.map((loop) => loop.length)).toEqual([6])
})

/** The code as its path draws it, a few pixels a module. */
function pixelsOf(svg: Element) {
  const size = Number(String(svg.properties.viewBox).split(' ')[2])
  const d = String((svg.children[2] as Element).properties.d)
  const loops = d
    .split('Z')
    .filter((part) => part !== '')
    .map((part) => {
      let at = [0, 0]
      return [...part.matchAll(/([MHV])(\d+)(?: (\d+))?/g)].map(([, way, a, b]) => {
        at =
          way === 'M'
            ? [Number(a), Number(b)]
            : way === 'H'
              ? [Number(a), at[1] ?? 0]
              : [at[0] ?? 0, Number(a)]
        return at
      })
    })
  const dark = filledBy(loops, size)
  const scale = 3
  const data = new Uint8ClampedArray(size * size * scale * scale * 4).fill(255)
  for (let y = 0; y < size * scale; y++)
    for (let x = 0; x < size * scale; x++)
      if (dark[Math.floor(y / scale)]?.[Math.floor(x / scale)])
        data.fill(0, (y * size * scale + x) * 4, (y * size * scale + x) * 4 + 3)
  return { data, width: size * scale, height: size * scale, size }
}

const name = { id: 'a', text: 'A code' }

test('any link comes out of its code as it went in', () => {
  const links = fc.webUrl({ withQueryParameters: true, withFragments: true, size: 'small' })
  fc.assert(
    fc.property(links, fc.constantFrom('', '?q=Möwe', '#日本', '&a=ÿ€😀'), (url, more) => {
      const link = url + more
      expect(decoded(pixelsOf(scanCode(link, name)))).toBe(link)
    }),
    { numRuns: 30 },
  )
})

test('the longest link makes the largest code, and a byte more would make it larger', () => {
  const modules = (bytes: number) => pixelsOf(scanCode('x'.repeat(bytes), name)).size - 8
  // Version 16 has 81 modules a side: 17 + 4 × 16.
  expect([modules(longestLink), modules(longestLink + 1)]).toEqual([81, 85])
})

test('half a character makes a code and no crash', () => {
  expect(scanCode('https://example.org/\ud800', name).tagName).toBe('svg')
})
