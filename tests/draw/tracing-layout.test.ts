import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { CutLines } from '../../src/draw/cut-lines.ts'
import { lap, type Traced, tracingPages } from '../../src/draw/tracing-layout.ts'
import { mm } from '../../src/length/length.ts'

const area = { width: 190, height: 246 }
const piece = (name: string, width: number, height: number): CutLines => ({
  name,
  stock: 'card',
  count: 1,
  size: { width: mm(width), height: mm(height) },
  width,
  height,
  lines: { cut: [], valley: [], mountain: [], mark: [] },
})
const sizes = fc.array(fc.tuple(fc.integer({ min: 5, max: 700 }), fc.integer({ min: 5, max: 700 })), {
  minLength: 1,
  maxLength: 12,
})
const boxOf = ({ at: [left, bottom], window }: Traced) => ({
  left,
  bottom,
  right: left + window.width,
  top: bottom + window.height,
})

test('whatever the pieces are, each is drawn once and whole, on the page and beside the others', () => {
  fc.assert(
    fc.property(sizes, (all) => {
      const pieces = all.map(([width, height], i) => piece(String(i), width, height))
      const pages = tracingPages(pieces, area)
      for (const page of pages)
        for (const [i, one] of page.entries()) {
          const a = boxOf(one)
          expect(Math.min(a.left, a.bottom)).toBeGreaterThanOrEqual(-1e-9)
          expect(a.right).toBeLessThanOrEqual(area.width + 1e-9)
          expect(a.top).toBeLessThanOrEqual(area.height + 1e-9)
          for (const other of page.slice(i + 1)) {
            const b = boxOf(other)
            expect(a.right < b.left || b.right < a.left || a.top < b.bottom || b.top < a.bottom).toBe(true)
          }
        }
      for (const own of pieces) {
        const parts = pages.flat().filter((one) => one.piece === own)
        const [first] = parts
        const [width, height] = first?.turned ? [own.height, own.width] : [own.width, own.height]
        expect(parts).toHaveLength((first?.tile?.columns ?? 1) * (first?.tile?.rows ?? 1))
        // The tiles of a row and of a column end where the piece ends, and lap by what they say.
        for (const { window, tile } of parts) {
          if (!tile || tile.column === tile.columns) expect(window.x + window.width).toBeCloseTo(width, 6)
          if (!tile || tile.row === tile.rows) expect(window.y + window.height).toBeCloseTo(height, 6)
          const next = parts.find(
            (p) => p.tile && tile && p.tile.row === tile.row && p.tile.column === tile.column + 1,
          )
          if (next) expect(window.x + window.width - next.window.x).toBeCloseTo(lap, 6)
        }
      }
    }),
  )
})

test('a piece that fits when it is turned is turned, not cut up', () => {
  const [[only] = []] = tracingPages([piece('wide', 230, 150)], area)
  expect([only?.turned, only?.tile, only?.window.width]).toEqual([true, undefined, 150])
})
