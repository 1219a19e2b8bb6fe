import type { Element } from 'hast'
import { type Matrix, readMatrix, type Spot } from './plane.ts'

/** A pattern that can be drawn out. */
export interface Pattern {
  readonly tile: number
  readonly matrix: Matrix
  readonly tint: string
  /** Lines across the whole tile, and dots in it. */
  readonly lines: readonly { readonly level: boolean; readonly at: number; readonly pen: Pen }[]
  readonly dots: readonly { readonly at: Spot; readonly pen: Pen }[]
}
export interface Pen {
  readonly stroke: string
  readonly width: number
}

/** Attributes of a shape, under their names in SVG or in hast alike. */
export function attributes(node: Element): Record<string, string> & {
  fillOpacity?: string
  stroke?: string
  strokeWidth?: string
  strokeLinejoin?: string
} {
  return Object.fromEntries(
    Object.entries(node.properties).flatMap(([name, value]) =>
      value === null || value === undefined || value === false
        ? []
        : [[camel(name), Array.isArray(value) ? value.join(' ') : String(value)]],
    ),
  )
}

export const camel = (name: string): string =>
  name === 'strokeLineJoin'
    ? 'strokeLinejoin'
    : name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())

/** Reads a `pattern` of lines across it and dots on a plain ground; undefined for anything else. */
export function readPattern(node: Element): Pattern | undefined {
  const { width = '', height, patternUnits, patternTransform = '' } = attributes(node)
  const tile = Number(width)
  const matrix = readMatrix(patternTransform)
  if (!(tile > 0) || width !== height || patternUnits !== 'userSpaceOnUse' || !matrix) return undefined
  let tint: string | undefined
  const lines: Pattern['lines'][number][] = []
  const dots: Pattern['dots'][number][] = []
  for (const child of node.children) {
    if (child.type !== 'element') continue
    const { fill, stroke, strokeWidth, d = '', cx, cy, r, width: w, height: h } = attributes(child)
    if (child.tagName === 'rect' && w === width && h === width && fill) tint = fill
    else if (child.tagName === 'circle' && fill)
      dots.push({ at: [Number(cx), Number(cy)], pen: { stroke: fill, width: 2 * Number(r) } })
    else if (child.tagName === 'path' && stroke) {
      const strokes = [...d.matchAll(/M(\S+) ([^HV]+)([HV])([^M]+)/g)]
      if (strokes.map(([all]) => all).join('') !== d) return undefined
      for (const [, x, y, way, to] of strokes) {
        const level = way === 'H'
        if (Number(level ? x : y) !== 0 || Number(to) !== tile) return undefined
        lines.push({ level, at: Number(level ? y : x), pen: { stroke, width: Number(strokeWidth) } })
      }
    } else return undefined
  }
  return tint === undefined ? undefined : { tile, matrix, tint, lines, dots }
}
