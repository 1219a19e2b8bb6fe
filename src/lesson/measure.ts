import { within } from '../card/at.ts'
import { evaluate, type Lookup, lengthsOf, type Value } from '../length/evaluate.ts'
import { type Expression, ExpressionError } from '../length/expression.ts'
import type { Finding, Place } from '../length/finding.ts'
import { formatGrid, formatLength } from '../length/format.ts'
import { isOnGrid, nearest, usualGrid } from '../length/grid.ts'
import type { Length, Unit } from '../length/length.ts'
import { parseMeasure } from '../length/parse.ts'
import { pathsIn } from '../length/paths.ts'
import { type Wording, wordingOf } from '../wording/wording.ts'
import type { MeasureNode } from './nodes.ts'
import { placeOf } from './source.ts'

/** What measures are filled in with. */
export interface Filling {
  readonly lookup: Lookup
  /** How it is said, and in which unit. */
  readonly wording: Wording
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
    const wording = filling.wording.in(measure.unit ?? filling.wording.unit)
    const { unit } = wording
    if (isCaliper(measure.expression)) return { text: valueText(value, wording), findings: [] }
    const foreign = unit !== filling.wording.unit
    const grid = foreign ? usualGrid[unit] : filling.grid
    // What a hand has written, such as `{2 mm}`, is put on the ruler of the print without a word.
    const constant = pathsIn(measure.expression).length === 0
    const findings = foreign || constant ? [] : offGrid(node, measure.expression, value, { ...filling, grid })
    return { text: valueText(onMarks(value, grid), wording), findings }
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
  { grid, wording: { unit } }: Filling,
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
export function valueText(value: Value, wording: Wording): string {
  switch (value.kind) {
    case 'number':
      return wording.number(value.value)
    case 'length':
      return wording.length(value.value)
    case 'size':
      return wording.size(value.value)
    case 'lengths':
      return wording.lengths(value.value)
    case 'text':
      return value.value
  }
}

/** The same in the words of the card block, which are English. */
export const formatValue = (value: Value, unit: Unit): string => valueText(value, wordingOf('en', unit))
