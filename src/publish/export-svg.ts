import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { s } from 'hastscript'
import type { CutKind, Path } from '../draw/cut-lines.ts'
import { colours } from '../draw/ink.ts'
import { closedPath, num, openPath } from '../draw/num.ts'
import { moved, type SheetOfPieces } from '../draw/sheet-of-pieces.ts'

/** The groups, named by the trade's words, and how their lines look: a machine goes by the group or by the colour. */
const groups: Readonly<Record<CutKind, { id: string; title: string; stroke: string; dash?: string }>> = {
  mark: { id: 'drawn-marks', title: 'drawn marks', stroke: '#7a7a7a' },
  valley: { id: 'valley-score', title: 'valley score', stroke: colours.slate, dash: '2 1' },
  mountain: { id: 'mountain-score', title: 'mountain score', stroke: colours.rust, dash: '4 0.8 0.3 0.8' },
  cut: { id: 'cut', title: 'cut', stroke: '#000000' },
}
/** Marks are drawn and scores made before the sheet is cut loose. */
const order = ['mark', 'valley', 'mountain', 'cut'] as const satisfies readonly CutKind[]

/**
 * A sheet of pieces as an SVG file in real millimetres, one group for each kind of line. y runs downwards, as in SVG.
 * Ends with a newline.
 */
export function sheetSvg(title: string, sheet: SheetOfPieces): string {
  const { width, height } = sheet
  const svg = s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${num(width)}mm`,
      height: `${num(height)}mm`,
      viewBox: `0 0 ${num(width)} ${num(height)}`,
      fill: 'none',
      'stroke-width': '0.1',
    },
    s('metadata', 'foldlore'),
    s('title', title),
    s('desc', described(sheet)),
    ...order.flatMap((kind) => group(kind, sheet)),
  )
  return `<?xml version="1.0" encoding="UTF-8"?>\n${toHtml(svg, { space: 'svg', closeEmptyElements: true })}\n`
}

function group(kind: CutKind, { placed, height }: SheetOfPieces): Element[] {
  const { id, title, stroke, dash } = groups[kind]
  const paths = placed.flatMap(({ piece, at }) =>
    piece.lines[kind].map((path) => s('path', { d: pathOf(moved(path, at), height) })),
  )
  return paths.length === 0
    ? []
    : [s('g', { id, stroke, ...(dash && { 'stroke-dasharray': dash }) }, s('title', title), ...paths)]
}

const pathOf = ({ spots, closed }: Path, height: number): string =>
  (closed ? closedPath : openPath)(spots.map(([x, y]) => [x, height - y]))

/** What lies on the sheet, for whoever opens the file. */
const described = ({ placed }: SheetOfPieces): string =>
  [...new Map(placed.map(({ piece }) => [piece.name, piece])).values()]
    .map(({ name, stock, count, width, height }) => {
      const size = `${num(width)} × ${num(height)} mm`
      return `${name}, ${stock}, ${size}${count > 1 ? `, ${count} of them` : ''}`
    })
    .join('; ')
