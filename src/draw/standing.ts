import type { Card } from '../card/card.ts'
import type { Proof, Standing } from '../fold/pose.ts'
import type { Wording } from '../wording/wording.ts'
import { frontLeft } from './camera.ts'
import { type Face, facesOf } from './face/face.ts'
import { faceMarks } from './face/marks.ts'
import { type FigureOptions, fitted, usualRoom } from './fit.ts'
import type { Sheet } from './frame.ts'
import { point, usualText } from './ink.ts'
import { legend } from './legend.ts'
import type { Mark } from './mark.ts'
import { picked } from './picked.ts'
import { paintOrder } from './sort.ts'
import { sizeWords, standingWords } from './standing-words.ts'
import { makePalette } from './stock.ts'

/**
 * The card as it stands, from the front left and slightly above.
 *
 * @param of a piece to draw in the accent colour.
 */
export function drawStanding(
  card: Card,
  proof: Pick<Proof, 'closed'>,
  standing: Standing,
  of: string | undefined,
  wording: Wording,
  options: FigureOptions,
): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const palette = makePalette(card.structure)
  const faces = facesInOrder(card, proof, standing)
  const isSized = options.labels ? picked(options.labels)('size') : options.dimensions
  const draw = (scale: number): Mark[] => {
    const shape = faceMarks(faces, card, { camera: frontLeft, scale, palette, of })
    const below = isSized ? [{ text: sizeWords(standing, card, wording) }] : []
    return [...shape, ...legend(shape, below, size, room.maxWidth - 1.5)]
  }
  const long = Math.max(standing.width, standing.height, standing.depth)
  return {
    marks: fitted(draw, room, { least: 12 / long, most: 2 }),
    title: of
      ? wording.say('figures.card-standing-with', { piece: wording.name(of) })
      : wording.say('figures.card-standing'),
    alternative: standingWords(card, standing, of, wording),
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** The same for every drawing of a card, of whatever size, and by far the most work in it. */
function facesInOrder(
  { structure }: Card,
  { closed }: Pick<Proof, 'closed'>,
  standing: Standing,
): readonly Face[] {
  const known = orders.get(standing)
  if (known) return known
  const faces = paintOrder(facesOf(structure, standing.pose), structure, frontLeft, closed)
  orders.set(standing, faces)
  return faces
}

const orders = new WeakMap<Standing, readonly Face[]>()
