import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import { mustCover } from '../../length/grid.ts'
import { inches, mm } from '../../length/length.ts'
import type { LabelWord } from '../../lesson/label-words.ts'
import type { Wording } from '../../wording/wording.ts'
import { type Box, boxOf } from '../box.ts'
import { type Camera, project } from '../camera.ts'
import { across, type Edge, edges } from '../edge.ts'
import { timesNear } from '../edge-on/times.ts'
import type { Face } from '../face/face.ts'
import { faceMarks } from '../face/marks.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from '../fit.ts'
import type { Sheet } from '../frame.ts'
import { point, usualText } from '../ink.ts'
import { legend } from '../legend.ts'
import type { Mark } from '../mark.ts'
import { toMm } from '../plane.ts'
import { makePalette } from '../stock.ts'
import { type Sheet3, sheetsUpwards, slantedBy, spinesOf, thinner, underside } from './edges.ts'
import { closedWords } from './words.ts'

/** What a finger can tell of a thickness. */
const felt = { mm: mm(0.1), in: inches(1, 32) } as const

/** What lies deeper peeks out at the right and below: all layers together, and the thinnest alone. In mm on paper. */
const [peek, mostPeek, thinPeek] = [3.6, 6, 0.45] as const

/** The card shut, from its front, with the size that an envelope must take. Its layers show at their edges. */
export function drawClosed(card: Card, closed: Closed, wording: Wording, options: FigureOptions): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const { structure } = card
  const palette = makePalette(structure)
  const sheets = sheetsUpwards(structure, closed)
  const fronts = sheets.map(({ front }) => front)
  const [width, height] = [toMm(closed.size.width), toMm(closed.size.height)]
  const shows = (word: LabelWord): boolean =>
    options.labels === undefined || options.labels.includes(word) || options.labels.includes('all')
  const thick = wording.say('figures.about-thick', {
    thickness: wording.length(mustCover(closed.thickness, felt[wording.unit])),
  })
  const timesAt = (scale: number): number => {
    const calipers = structure.pieces.map(({ stock }) => toMm(stock.caliper)).filter((caliper) => caliper > 0)
    const whole = toMm(closed.thickness)
    return timesNear(
      Math.min(Math.max(peek / whole, thinPeek / Math.min(...calipers)), mostPeek / whole) / scale,
    )
  }
  const seen = new Set(closed.map.flatMap((cell) => cell.sheets[0]?.plate ?? []))
  const isSeen = ({ front }: Sheet3): boolean => seen.has(front.plate.name)
  const timesOf = new Map<readonly Mark[], number>()
  const draw = (scale: number): Mark[] => {
    const times = timesAt(scale)
    const camera = slantedBy(times)
    const spines = spinesOf(structure, sheets, camera, scale, palette)
    const view = { camera, scale, palette, of: undefined }
    const over = ({ front }: Sheet3): Mark[] => faceMarks([front], card, view)
    const shape = sheets.flatMap((sheet) => [
      underside(sheet, camera, scale, palette),
      ...spines.filter(({ nearer }) => nearer === sheet.front.plate.name).map(({ mark }) => mark),
      ...(isSeen(sheet) ? over(sheet) : over(sheet).map(thinner)),
    ])
    const box = boxOf(shape.map((mark) => mark.box))
    const ends = faceEnds(fronts, camera, scale)
    const [w, h] = [ends.right - ends.left, ends.bottom - ends.top]
    const at = (edge: Edge): Edge => ({
      ...edge,
      origin: [edge.origin[0] + ends.left, edge.origin[1] + ends.top],
    })
    const beyond = Math.max(0, box.right - ends.right)
    const marks = [
      ...shape,
      ...(shows('size')
        ? [
            ...across(at(edges.top()), { from: 0, to: w, text: wording.length(closed.size.width), size }),
            ...across(at(edges.right(w + beyond, h)), {
              from: 0,
              to: h,
              text: wording.length(closed.size.height),
              size,
              inside: [beyond, beyond],
            }),
          ]
        : []),
    ]
    const words = [
      ...(shows('thickness') ? [thick] : []),
      wording.say('figures.layers-drawn', { times }),
    ].join('; ')
    const all = [...marks, ...legend(marks, [{ text: words }], size, room.maxWidth - 1.5)]
    timesOf.set(all, times)
    return all
  }
  const marks = fitted(draw, room, leastAndMost(Math.max(width, height), size))
  return {
    marks,
    title: wording.say('figures.card-shut'),
    alternative: closedWords(card, closed, thick, timesOf.get(marks) ?? 1, wording),
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** Where the card ends on the paper: on each side the nearest of the sheets that reach so far. */
function faceEnds(faces: readonly Face[], camera: Camera, scale: number): Box {
  const corners = faces.flatMap(({ outline }) => outline.map(({ at }) => at))
  const ends = (axis: 0 | 1): readonly [number, number] => {
    const all = corners.map((at) => at[axis])
    return [Math.min(...all), Math.max(...all)]
  }
  const [[left, right], [bottom, top]] = [ends(0), ends(1)]
  const nearest = (axis: 0 | 1, end: number): number => {
    const those = corners.filter((corner) => Math.abs(corner[axis] - end) < 1e-6)
    return project(
      camera,
      those.reduce((a, b) => (b[2] > a[2] ? b : a)),
      scale,
    )[axis]
  }
  return {
    left: nearest(0, left),
    right: nearest(0, right),
    top: nearest(1, top),
    bottom: nearest(1, bottom),
  }
}
