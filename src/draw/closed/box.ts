import type { Card } from '../../card/card.ts'
import type { Closed, Pose } from '../../fold/pose.ts'
import { formatLength, formatSize } from '../../length/format.ts'
import { nearest } from '../../length/grid.ts'
import type { Unit } from '../../length/length.ts'
import { frontLeft } from '../camera.ts'
import { facesOf } from '../face/face.ts'
import { faceMarks } from '../face/marks.ts'
import { type FigureOptions, fitted, usualRoom } from '../fit.ts'
import { sentence } from '../flat/words.ts'
import type { Sheet } from '../frame.ts'
import { point, usualText } from '../ink.ts'
import { legend } from '../legend.ts'
import type { Mark } from '../mark.ts'
import { toMm } from '../plane.ts'
import { paintOrder } from '../sort.ts'
import { makePalette } from '../stock.ts'

/**
 * A box shut, from the front left and slightly above: straight from its front no one would see a box.
 *
 * @param pose of its plates, standing on the table as the open box does.
 */
export function drawShutBox(
  card: Card,
  closed: Closed,
  pose: Pose,
  unit: Unit,
  options: FigureOptions,
): Sheet {
  const { size: shut, thickness } = closed
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const palette = makePalette(card.structure)
  const faces = paintOrder(facesOf(card.structure, pose), card.structure, frontLeft, closed)
  const parts = {
    size: formatSize(shut, unit),
    thickness: `about ${formatLength(nearest(thickness, card.grid), unit)} deep`,
  }
  const sizes = `${parts.size}, ${parts.thickness}`
  const { labels } = options
  const shown = (['size', 'thickness'] as const)
    .filter((word) => labels === undefined || labels.includes(word) || labels.includes('all'))
    .map((word) => parts[word])
  const below = shown.length > 0 ? [{ text: shown.join(', ') }] : []
  const draw = (scale: number): Mark[] => {
    const shape = faceMarks(faces, card, { camera: frontLeft, scale, palette, of: undefined })
    return [...shape, ...legend(shape, below, size, room.maxWidth - 1.5)]
  }
  const long = Math.max(...[shut.width, shut.height, thickness].map(toMm))
  return {
    marks: fitted(draw, room, { least: 12 / long, most: 2 }),
    title: 'The box shut',
    alternative: `${sentence(`the ${card.fold} box`)} shut, seen from the front left and slightly above: ${sizes}, width first.`,
    ...(options.key !== undefined && { key: options.key }),
  }
}
