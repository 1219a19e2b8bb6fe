import { dimensionLine, type Edge, extension, lift, onEdge, rowLine, rowStep, start } from './edge.ts'
import { colours } from './ink.ts'
import { capHeight, label, textWidth } from './label.ts'
import { arrow, type Mark, ring } from './mark.ts'
import { clear, type Seat, stagger, type Tag } from './stagger.ts'

/** A mark to be measured from the start of an edge. */
export interface Stop {
  /** In mm of the drawing. */
  readonly at: number
  readonly text: string
  /** How far inside the shape it ends; its extension line starts there. */
  readonly inside: number
  /** The numbers that matter are rust and bold; the others are plain. */
  readonly matters: boolean
}

/** More rows than this, and the numbers are turned to stand along their marks. */
const mostRows = 3

interface Seating {
  readonly seats: readonly Seat[]
  readonly tags: readonly Tag[]
  readonly turned: boolean
  readonly step: number
}

/** Running dimensions: every number is the distance from the start of the edge, because that is how a ruler is held. */
export function running(edge: Edge, stops: readonly Stop[], size: number): Mark[] {
  if (stops.length === 0) return []
  const seating = seat(stops, size)
  const lineAt = (row: number): number =>
    edge.above < 0
      ? rowLine(edge, 0, size) + (row + 1) * seating.step - rowStep(size)
      : rowLine(edge, 0, size) + row * seating.step
  const rows = [...new Set(seating.seats.map((s) => s.row))].sort((a, b) => a - b)
  const last = lineAt(rows.at(-1) ?? 0)
  const marks = [extension(edge, 0, last)]
  for (const [i, stop] of stops.entries()) {
    const v = lineAt(seating.seats[i]?.row ?? 0)
    marks.push(extension(edge, stop.at, v, start - stop.inside))
  }
  for (const row of rows) {
    const ends = stops.map((stop, i) => ({ stop, seat: seating.seats[i], tag: seating.tags[i] }))
    const own = ends.filter(({ seat }) => seat?.row === row)
    const reach = own.map(({ stop, seat, tag }) =>
      seat?.side === 'after' ? stop.at + clear + (tag?.width ?? 0) : stop.at,
    )
    marks.push(dimensionLine(edge, 0, Math.max(...reach), lineAt(row)))
    marks.push(ring(onEdge(edge, 0, lineAt(row))))
    for (const { stop } of own) marks.push(arrow(onEdge(edge, stop.at, lineAt(row)), edge.along))
  }
  for (const [i, stop] of stops.entries()) marks.push(numberAt(edge, stop, i, seating, lineAt, size))
  return marks
}

/** Numbers along the line if a few rows hold them, across it if not. */
function seat(stops: readonly Stop[], size: number): Seating {
  const tags = stops.map((stop) => ({ at: stop.at, width: textWidth(stop.text, size) }))
  const seats = stagger(tags)
  const rows = Math.max(...seats.map((s) => s.row)) + 1
  if (rows <= mostRows) return { seats, tags, turned: false, step: rowStep(size) }
  const thin = stops.map((stop) => ({ at: stop.at, width: capHeight * size }))
  const longest = Math.max(...tags.map((tag) => tag.width))
  return { seats: stagger(thin), tags: thin, turned: true, step: longest + lift + 0.9 }
}

function numberAt(
  edge: Edge,
  stop: Stop,
  i: number,
  { seats, tags, turned }: Seating,
  lineAt: (row: number) => number,
  size: number,
): Mark {
  const [seat, tag] = [seats[i], tags[i]]
  const from = seat?.side === 'after' ? stop.at + clear : stop.at - clear - (tag?.width ?? 0)
  const v = lineAt(seat?.row ?? 0) + edge.above * lift
  const style = {
    class: stop.matters ? 'measure score' : 'measure',
    size,
    turned: edge.turned !== turned,
    ...(stop.matters && { colour: colours.rust, bold: true }),
  }
  if (!turned) return label(stop.text, onEdge(edge, from, v), style)
  // Across the line: a turned text has its baseline on its right, an upright one below.
  const base = edge.turned ? from : from + (tag?.width ?? 0)
  return label(stop.text, onEdge(edge, base, v), { ...style, anchor: edge.turned ? 'end' : 'start' })
}
