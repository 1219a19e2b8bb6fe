import type { Card } from '../card/card.ts'
import type { Closed } from '../fold/pose.ts'
import { listOf } from '../length/finding.ts'
import { formatLength, formatSize } from '../length/format.ts'
import { mustCover } from '../length/grid.ts'
import { inches, mm, type Unit } from '../length/length.ts'
import { across, edges } from './edge.ts'
import { type Face, facesOf } from './face.ts'
import { faceMarks } from './face-marks.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from './fit.ts'
import { sentence } from './flat-words.ts'
import type { Sheet } from './frame.ts'
import { point, usualText } from './ink.ts'
import { legend } from './legend.ts'
import type { Mark } from './mark.ts'
import { toMm } from './plane.ts'
import { dot } from './space.ts'
import { makePalette } from './stock.ts'

/** What a finger can tell of a thickness. */
const felt = { mm: mm(0.1), in: inches(1, 32) } as const

/** Straight from the front. */
const front = { right: [1, 0, 0], up: [0, 1, 0], eye: [0, 0, 1] } as const

/** The card shut, from its front, with the size that an envelope must take. */
export function drawClosed(card: Card, closed: Closed, unit: Unit, options: FigureOptions): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const palette = makePalette(card.structure)
  const faces = fromTheTable(facesOf(card.structure, closed.pose), closed)
  const [width, height] = [toMm(closed.size.width), toMm(closed.size.height)]
  const corners = faces.flatMap((face) => face.outline.map((corner) => corner.at))
  const [left, top] = [
    Math.min(...corners.map((at) => dot(at, front.right))),
    Math.max(...corners.map((at) => dot(at, front.up))),
  ]
  const thick = `about ${formatLength(mustCover(closed.thickness, felt[unit]), unit)} thick`
  const draw = (scale: number): Mark[] => {
    const moved = (edge: ReturnType<typeof edges.top>) => ({
      ...edge,
      origin: [edge.origin[0] + left * scale, edge.origin[1] - top * scale] as const,
    })
    const [w, h] = [width * scale, height * scale]
    const shape = [
      ...faceMarks(faces, card, { camera: front, scale, palette, of: undefined }),
      ...across(moved(edges.top()), { from: 0, to: w, text: formatLength(closed.size.width, unit), size }),
      ...across(moved(edges.right(w, h)), {
        from: 0,
        to: h,
        text: formatLength(closed.size.height, unit),
        size,
      }),
    ]
    return [...shape, ...legend(shape, [{ text: thick }], size, room.maxWidth - 1.5)]
  }
  const seen = closed.order.slice(0, 3)
  return {
    marks: fitted(draw, room, leastAndMost(Math.max(width, height), size)),
    title: 'The card shut',
    alternative: `${sentence(`the ${card.fold} card`)} shut, seen from its front: ${formatSize(closed.size, unit)}, width first, ${thick}. In front ${seen.length === 1 ? 'is' : 'are'} ${listOf(seen)}.`,
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** The plates in the order in which they lie, from the one on the table upwards. */
function fromTheTable(faces: readonly Face[], { order }: Closed): Face[] {
  const place = (face: Face) => order.indexOf(face.plate.name)
  return faces.filter((face) => place(face) >= 0).sort((a, b) => place(b) - place(a))
}
