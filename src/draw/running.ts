import { dimensionLine, type Edge, extension, onEdge, past, start } from './edge.ts'
import { colours, weights } from './ink.ts'
import { capHeight, label, textWidth } from './label.ts'
import { arrow, line, type Mark, ring } from './mark.ts'
import { spread } from './spread.ts'

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

/** Distance of the dimension line from the shape, and of a number from the end of its line. */
const [away, gap] = [2.4, 0.6]
/** Numbers that stand along the edge may be moved by this much before they are turned to need less room. */
const mostMoved = 2

/**
 * Running dimensions: every number is the distance from the start of the edge, because that is how a ruler is held.
 *
 * Each number stands at the end of its own line, so that no one can take it for the next one's; where marks lie closer
 * together than their numbers are wide, the lines bend apart:
 *
 *     |    |    |  | |
 *     o--->|--->|->|>|
 *          1    2  \  \
 *                 2½   3
 */
export function running(edge: Edge, stops: readonly Stop[], size: number): Mark[] {
  if (stops.length === 0) return []
  const { at, inLine } = seats(edge, stops, size)
  const moved = Math.max(...stops.map((stop, i) => Math.abs((at[i] ?? 0) - stop.at)))
  const bend = moved < 0.01 ? 0 : Math.max(1.4, moved * 0.5)
  const end = away + past + bend
  const last = Math.max(...stops.map((stop) => stop.at))
  const thin = { class: 'extension', width: weights.dimension }
  return [
    extension(edge, 0, away),
    ...stops.map((stop) => extension(edge, stop.at, away, start - stop.inside)),
    ...(bend > 0
      ? stops.map((stop, i) => line(onEdge(edge, stop.at, away + past), onEdge(edge, at[i] ?? 0, end), thin))
      : []),
    dimensionLine(edge, 0, last, away),
    ...stops.map((stop) => arrow(onEdge(edge, stop.at, away), edge.along)),
    ring(onEdge(edge, 0, away)),
    ...stops.map((stop, i) => numberAt(edge, stop, at[i] ?? 0, end + gap, inLine, size)),
  ]
}

/** Where the numbers go along the edge, and whether they stand in line with their marks' lines. */
function seats(edge: Edge, stops: readonly Stop[], size: number): { at: number[]; inLine: boolean } {
  const inLine = spread(
    stops.map(({ at }) => ({ at, width: capHeight * size })),
    0.9,
  )
  // Beside an upright edge a level number is in line anyway.
  if (edge.turned) return { at: inLine, inLine: true }
  const along = spread(
    stops.map(({ at, text }) => ({ at, width: textWidth(text, size) })),
    1.2,
  )
  const far = Math.max(...along.map((at, i) => Math.abs(at - (stops[i]?.at ?? 0))))
  return far <= mostMoved ? { at: along, inLine: false } : { at: inLine, inLine: true }
}

function numberAt(edge: Edge, stop: Stop, u: number, v: number, inLine: boolean, size: number): Mark {
  const style = {
    class: stop.matters ? 'measure score' : 'measure',
    size,
    ...(stop.matters && { colour: colours.rust, bold: true }),
  }
  const half = (capHeight * size) / 2
  if (!inLine) return label(stop.text, onEdge(edge, u, v + 2 * half), { ...style, anchor: 'middle' })
  // Level beside an upright edge, with its baseline below the line; or reading upwards, with it to the right.
  return edge.turned
    ? label(stop.text, onEdge(edge, u - half, v), { ...style, anchor: 'end' })
    : label(stop.text, onEdge(edge, u + half, v), { ...style, anchor: 'end', turned: true })
}
