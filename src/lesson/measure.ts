import { within } from '../card/at.ts'
import { evaluate, type Lookup, lengthsOf, type Value } from '../length/evaluate.ts'
import { type Expression, ExpressionError } from '../length/expression.ts'
import type { Finding, Place } from '../length/finding.ts'
import { formatGrid, formatLength, formatLengths, formatNumber, formatSize } from '../length/format.ts'
import { isOnGrid, nearest, usualGrid } from '../length/grid.ts'
import type { Length, Unit } from '../length/length.ts'
import { parseMeasure } from '../length/parse.ts'
import { pathsIn } from '../length/paths.ts'
import type { MeasureNode } from './nodes.ts'
import { placeOf } from './source.ts'

/** What measures are filled in with. */
export interface Filling {
  readonly lookup: Lookup
  readonly unit: Unit
  readonly grid: Length
}

/**
 * The text of a measure in the unit of the print, or in the unit that it asks for itself. A length that no mark of the
 * ruler has is told, and printed as the nearest mark.
 *
 * @returns no text when the measure cannot be worked out; then the finding stands at the very part that is wrong.
 */
export function measureText(node: MeasureNode, filling: Filling): { text?: string; findings: Finding[] } {
  try {
    // A line ending is a space like any other; offsets stay.
    const measure = parseMeasure(node.value.replace(/[\r\n]/g, ' '))
    const value = evaluate(measure.expression, filling.lookup)
    const unit = measure.unit ?? filling.unit
    if (isCaliper(measure.expression)) return { text: formatValue(value, unit), findings: [] }
    const foreign = unit !== filling.unit
    const grid = foreign ? usualGrid[unit] : filling.grid
    // What a hand has written, such as `{2 mm}`, is put on the ruler of the print without a word.
    const constant = pathsIn(measure.expression).length === 0
    const findings = foreign || constant ? [] : offGrid(node, measure.expression, value, { ...filling, grid })
    return { text: formatValue(onMarks(value, grid), unit), findings }
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error
    // A name with a mistake of its own has been told where that is.
    if (error.rule === 'broken-name') return { findings: [] }
    return {
      findings: [
        {
          rule: error.rule,
          severity: 'error',
          message: error.message,
          ...(error.suggestion !== undefined && { suggestion: error.suggestion }),
          place: placeIn(node, error.start, error.end),
        },
      ],
    }
  }
}

/** Where in the file a part of a measure stands; `start` and `end` count from the beginning of `value`. */
export function placeIn(node: MeasureNode, start: number, end: number): Place {
  const place = placeOf(node.position)
  const lines = node.data?.lines
  if (!lines) return within(place, start + 1, end + 1)
  let from = 0
  for (const [i, line] of node.value.split(/\r\n?|\n/).entries()) {
    const at = lines[i]
    if (at && start <= from + line.length) {
      const longest = (at.end ?? 0) - (at.offset ?? 0)
      return within(at, Math.min(start - from, longest), Math.min(end - from, longest))
    }
    from += line.length + (node.value.startsWith('\r\n', from + line.length) ? 2 : 1)
  }
  return place
}

/** The thickness of a sheet is what it is: nobody cuts it with a ruler. */
const isCaliper = (e: Expression): boolean => e.kind === 'name' && e.path.at(-1) === 'thickness'

function offGrid(
  node: MeasureNode,
  expression: Expression,
  value: Value,
  { grid, unit }: Filling,
): Finding[] {
  const off = lengthsOf(value).find((x) => !isOnGrid(x, grid))
  if (!off) return []
  return [
    {
      rule: 'off-grid',
      severity: 'warning',
      message: `${formatLength(off, unit)} is not on the ruler, which has a mark every ${formatGrid(grid)}`,
      suggestion: `The nearest mark is ${formatLength(nearest(off, grid), unit)}`,
      place: placeIn(node, expression.start, expression.end),
    },
  ]
}

/** A value with each length moved to the nearest mark, unless that would make nothing of it. */
function onMarks(value: Value, grid: Length): Value {
  const mark = (x: Length): Length => {
    const near = nearest(x, grid)
    return near.n === 0n ? x : near
  }
  if (value.kind === 'length') return { kind: 'length', value: mark(value.value) }
  if (value.kind === 'lengths') return { kind: 'lengths', value: value.value.map(mark) }
  if (value.kind !== 'size') return value
  return { kind: 'size', value: { width: mark(value.value.width), height: mark(value.value.height) } }
}

/** A value as a handout says it: `8 × 6 in`, `1, 2, 8 and 9 in`, `7`. */
export function formatValue(value: Value, unit: Unit): string {
  switch (value.kind) {
    case 'number':
      return formatNumber(value.value, unit)
    case 'length':
      return formatLength(value.value, unit)
    case 'size':
      return formatSize(value.value, unit)
    case 'lengths':
      return formatLengths(value.value, unit)
    case 'text':
      return value.value
  }
}
