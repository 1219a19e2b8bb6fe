import type { Bond } from '../../card/structure.ts'
import type { Column, Crossing } from './section.ts'

/** Height of the middle of each sheet above the table, in mm, one for each stretch of the cut that it lies in. */
export type Heights = ReadonlyMap<string, readonly (number | undefined)[]>

/** `upper` lies at least so much higher than `lower`, or than the table: from the middle of one to that of the other. */
interface Rest {
  readonly upper: string
  readonly lower: string | undefined
  readonly least: number
}

/** Comparing heights, in mm. */
const hair = 1e-6

/**
 * How high each sheet lies. Sheets are stiff: each lies level on the highest of what is below it, and what is stuck
 * together is lifted so that it touches. Where that would make the card thicker than it is, as where doors shut over
 * one another in turn, sheets give way: each then lies on the next one all along.
 */
export function heightsOf(
  {
    columns,
    crossings,
  }: {
    readonly columns: readonly Column[]
    readonly crossings: readonly Pick<Crossing, 'hinge' | 'folded'>[]
  },
  bonds: readonly Bond[],
): Heights {
  const rests = restsIn(columns)
  const most = Math.max(...columns.map(({ thickness }) => thickness))
  let levels = lowest(rests) ?? new Map<string, number>()
  const isThin = (all: ReadonlyMap<string, number>): boolean =>
    columns.every((column) => topOf(column, all) <= most + hair)
  if (!isThin(levels)) return pressed(columns)
  const flat = crossings.filter(({ folded }) => !folded).map(({ hinge }) => hinge.between)
  // Tried one after the other: what cannot be had is left as it lies.
  for (const more of [...touching(columns, bonds), ...flat.map(sameHeight)]) {
    const lifted = lowest([...rests, ...more])
    if (!lifted || !isThin(lifted)) continue
    levels = lifted
    rests.push(...more)
  }
  const heights = new Map<string, (number | undefined)[]>()
  for (const [i, { sheets }] of columns.entries())
    for (const { plate } of sheets) {
      const own = heights.get(plate) ?? columns.map(() => undefined)
      own[i] = levels.get(plate)
      heights.set(plate, own)
    }
  return heights
}

/** What lies on what, each once. */
function restsIn(columns: readonly Column[]): Rest[] {
  const rests = new Map<string, Rest>()
  for (const { sheets } of columns)
    for (const [i, { plate, caliper, behind }] of sheets.entries()) {
      const next = sheets[i + 1]
      const least = caliper / 2 + behind + (next ? next.caliper / 2 : 0)
      const key = `${plate}\n${next?.plate ?? ''}`
      if (least > (rests.get(key)?.least ?? -1)) rests.set(key, { upper: plate, lower: next?.plate, least })
    }
  return [...rests.values()]
}

/** For sheets that are stuck together where they lie over one another: neither is farther from the other than need be. */
const touching = (columns: readonly Column[], bonds: readonly Bond[]): Rest[][] =>
  bonds.flatMap(({ plate, onto }) => {
    const gaps = columns.flatMap(({ sheets }) => gapIn(sheets, plate, onto) ?? [])
    const [first] = gaps
    const least = -Math.max(...gaps.map(({ gap }) => gap))
    return first ? [[{ upper: first.lower, lower: first.upper, least }]] : []
  })

/** From the middle of one of two sheets to that of the other, when everything between lies tight. */
function gapIn(sheets: Column['sheets'], one: string, other: string) {
  const ends = [one, other].map((name) => sheets.findIndex(({ plate }) => plate === name))
  const [from = -1, to = -1] = ends.sort((a, b) => a - b)
  const [upper, lower] = [sheets[from], sheets[to]]
  if (!upper || !lower) return undefined
  const between = sheets.slice(from, to).reduce((sum, { caliper, behind }) => sum + caliper + behind, 0)
  return { upper: upper.plate, lower: lower.plate, gap: between + (lower.caliper - upper.caliper) / 2 }
}

const sameHeight = ([p, q]: readonly [string, string]): Rest[] => [
  { upper: p, lower: q, least: 0 },
  { upper: q, lower: p, least: 0 },
]

/** The least heights that keep all of these; nothing if they go in a circle. */
function lowest(rests: readonly Rest[]): Map<string, number> | undefined {
  const heights = new Map(rests.map(({ upper }) => [upper, 0]))
  for (let round = 0; round <= heights.size; round++) {
    let moved = false
    for (const { upper, lower, least } of rests) {
      const need = (lower === undefined ? 0 : (heights.get(lower) ?? 0)) + least
      if (need <= (heights.get(upper) ?? 0) + hair) continue
      heights.set(upper, need)
      moved = true
    }
    if (!moved) return heights
  }
  return undefined
}

function topOf({ sheets, before }: Column, levels: ReadonlyMap<string, number>): number {
  const [front] = sheets
  return front ? (levels.get(front.plate) ?? 0) + front.caliper / 2 + before : before
}

/** Every sheet lies on the next one, in every stretch. */
function pressed(columns: readonly Column[]): Heights {
  const heights = new Map<string, (number | undefined)[]>()
  for (const [i, { sheets }] of columns.entries()) {
    let below = 0
    for (const { plate, caliper, behind } of [...sheets].reverse()) {
      const own = heights.get(plate) ?? columns.map(() => undefined)
      own[i] = below + behind + caliper / 2
      heights.set(plate, own)
      below += behind + caliper
    }
  }
  return heights
}
