import { type Length, type Size, same, shorter, zero } from '../../../length/length.ts'
import { point } from '../../strip.ts'
import type { Hinge, Plate, Segment } from '../../structure.ts'
import { type Along, acrossOf } from './written.ts'

/** A level or upright line: where it is, and from where to where it runs. */
interface Line {
  /** The direction that it runs in. */
  readonly runs: Along
  readonly at: Length
  readonly from: Length
  readonly to: Length
}

/** What is cut within a sheet: every edge of a plate that is neither the sheet's own edge nor a crease. */
export function cutsOf(plates: readonly Plate[], hinges: readonly Hinge[], size: Size): Segment[] {
  const edges = plates.flatMap(({ outline }) =>
    outline.map((from, i) => lineOf({ from, to: outline[(i + 1) % outline.length] ?? from })),
  )
  const creases = hinges.map(({ line }) => lineOf(line))
  const inner = edges.filter(({ runs, at }) => !same(at, zero) && !same(at, size[acrossOf(runs)]))
  const rows = new Map(inner.map((line) => [`${line.runs} ${line.at.toFraction()}`, line]))
  return [...rows.values()].flatMap((row) => {
    const inRow = ({ runs, at }: Line): boolean => runs === row.runs && same(at, row.at)
    return uncreased(inner.filter(inRow), creases.filter(inRow)).map(segmentOf)
  })
}

function lineOf({ from, to }: Segment): Line {
  const runs = same(from.x, to.x) ? 'height' : 'width'
  const [a, b, at] = runs === 'width' ? [from.x, to.x, from.y] : [from.y, to.y, from.x]
  return { runs, at, ...(shorter(a, b) ? { from: a, to: b } : { from: b, to: a }) }
}

const segmentOf = ({ runs, at, from, to }: Line): Segment =>
  runs === 'width'
    ? { from: point(from, at), to: point(to, at) }
    : { from: point(at, from), to: point(at, to) }

/** The stretches of one row that edges cover and creases do not. */
function uncreased(edges: readonly Line[], creases: readonly Line[]): Line[] {
  const ends = [...edges, ...creases].flatMap(({ from, to }) => [from, to]).sort((a, b) => a.compare(b))
  const lines: Line[] = []
  for (const [i, from] of ends.entries()) {
    const to = ends[i + 1]
    if (!to || same(from, to)) continue
    const covers = (line: Line): boolean => line.from.lte(from) && line.to.gte(to)
    const edge = edges.find(covers)
    if (!edge || creases.some(covers)) continue
    const last = lines.at(-1)
    if (last && same(last.to, from)) lines[lines.length - 1] = { ...last, to }
    else lines.push({ ...edge, from, to })
  }
  return lines
}
