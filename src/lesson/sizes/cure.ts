import type { YamlBlock } from '../../card/yaml.ts'
import type { Finding } from '../../length/finding.ts'
import { formatLength } from '../../length/format.ts'
import { onGrid } from '../../length/grid.ts'
import {
  type Length,
  larger,
  minus,
  over,
  plus,
  type Size,
  shorter,
  smaller,
  times,
  zero,
} from '../../length/length.ts'
import type { Edit } from '../edits.ts'
import { type Knob, knobsFor, type Setting } from './knobs.ts'
import { blockErrors, cardErrors, changed, type Ruler, works } from './trial.ts'

/** One line of a card block with another value. */
export interface Change {
  readonly key: string
  readonly owner?: string
  readonly value: string
  /** Whether the block says nothing of it yet. */
  readonly added: boolean
  readonly edit: Edit
}

/** More than this many lengths have to change at once only in a card that is wrong altogether. */
const mostChanges = 3

/**
 * Looks for what would make a card work in a size: for each length that may be to blame, the mark of the ruler nearest
 * to its value with which the card proves.
 *
 * @param findings errors of the card in that size.
 * @param rulers those it has to work on; changes are written in the unit of the first.
 * @returns no changes when none are found.
 */
export function cureOf(
  block: YamlBlock,
  findings: readonly Finding[],
  setting: Omit<Setting, 'unit' | 'grid'>,
  rulers: readonly [Ruler, ...Ruler[]],
): readonly Change[] {
  const changes: Change[] = []
  let [now, errors] = [block, findings]
  while (changes.length < mostChanges) {
    const [first] = errors
    if (!first) return changes
    const found = betterBy(now, first, { ...setting, ...rulers[0] }, rulers)
    if (!found) return []
    changes.push(found)
    now = changed(now, [found.edit])
    errors = cardErrors(now, setting.closed, rulers)
    if (changes.length > 1 && errors.length > 0) return []
  }
  return errors.length === 0 ? changes : []
}

/** The first length a change of which cures everything, or else the first that cures something. */
function betterBy(
  block: YamlBlock,
  finding: Finding,
  setting: Setting,
  rulers: readonly Ruler[],
): Change | undefined {
  const before = blockErrors(block, setting.closed, rulers).length
  let helping: Change | undefined
  for (const knob of knobsFor(block, finding, setting))
    for (const value of marksAround(knob.value, setting)) {
      const change = changeOf(knob, value, setting)
      const after = changed(block, [change.edit])
      const left = blockErrors(after, setting.closed, rulers).length
      if (left === 0 && works(after, setting.closed, rulers)) return change
      if (left < before) helping ??= change
    }
  return helping
}

/** Marks that are tried each way: as far as a hand's length on most rulers. Each of them proves a card anew. */
const mostMarks = 400

/** The marks of the ruler around a length, the nearest first, up to the larger side of the card. */
function* marksAround(value: Length, { closed, grid }: Setting): Generator<Length> {
  const longest = larger(closed.width, closed.height)
  const marks = over(onGrid(larger(value, longest), grid, 'up'), grid).valueOf()
  for (let i = 1; i <= Math.min(marks, mostMarks); i++) {
    const down = minus(value, times(grid, i))
    const up = plus(value, times(grid, i))
    if (!shorter(down, zero)) yield down
    if (!shorter(longest, up)) yield up
  }
}

const changeOf = ({ key, owner, written, set }: Knob, value: Length, { unit }: Setting): Change => {
  const text = formatLength(value, unit)
  return { key, ...(owner !== undefined && { owner }), value: text, added: !written, edit: set(text) }
}

/** The nearest shut size in which a card works as it is, if it is near: one side changed, both, or a square. */
export function nearestSize(
  block: YamlBlock,
  closed: Size,
  rulers: readonly [Ruler, ...Ruler[]],
): Size | undefined {
  const { grid } = rulers[0]
  return nearSizes(closed, grid).find((size) => works(block, size, rulers))
}

/** How far a side is tried to grow or to shrink, in marks of the ruler. */
const farthest = 24

function nearSizes({ width, height }: Size, grid: Length): Size[] {
  const [w, h] = [onGrid(width, grid, 'down'), onGrid(height, grid, 'down')]
  // Of two squares as near, the smaller still goes into the envelope.
  const sizes: Size[] = [smaller(w, h), larger(w, h)].map((side) => ({ width: side, height: side }))
  for (let i = 1; i <= farthest; i++)
    for (const by of [times(grid, i), times(grid, -i)])
      sizes.push(
        { width: plus(w, by), height: h },
        { width: w, height: plus(h, by) },
        { width: plus(w, by), height: plus(h, by) },
      )
  const moved = (size: Size): number => minus(size.width, w).abs().add(minus(size.height, h).abs()).valueOf()
  return sizes.filter((s) => s.width.gt(0) && s.height.gt(0)).sort((a, b) => moved(a) - moved(b))
}
