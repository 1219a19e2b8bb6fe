import type { Card } from '../../card/card.ts'
import type { Closed, Pose } from '../../fold/pose.ts'
import { nearest } from '../../length/grid.ts'
import type { Wording } from '../../wording/wording.ts'
import { frontLeft } from '../camera.ts'
import { facesOf } from '../face/face.ts'
import { faceMarks } from '../face/marks.ts'
import { type FigureOptions, fitted, usualRoom } from '../fit.ts'
import type { Sheet } from '../frame.ts'
import { point, usualText } from '../ink.ts'
import { legend } from '../legend.ts'
import type { Mark } from '../mark.ts'
import { boxName } from '../phrases.ts'
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
  wording: Wording,
  options: FigureOptions,
): Sheet {
  const { size: shut, thickness } = closed
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const palette = makePalette(card.structure)
  const faces = paintOrder(facesOf(card.structure, pose), card.structure, frontLeft, closed)
  const parts = {
    size: wording.size(shut),
    thickness: wording.say('figures.about-deep', { depth: wording.length(nearest(thickness, card.grid)) }),
  }
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
    title: wording.say('figures.box-shut'),
    alternative: wording.say('figures.seen-shut-box', {
      box: boxName(card, wording),
      size: parts.size,
      deep: parts.thickness,
    }),
    ...(options.key !== undefined && { key: options.key }),
  }
}
