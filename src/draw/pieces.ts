import { platesOfOne } from '../card/copies.ts'
import type { Piece, Structure } from '../card/structure.ts'
import { type Flat, flatLoop, joinedOutline, toMm } from './plane.ts'

/** The outer edge of a piece, in mm, y upwards: the rectangle of its size when no plate tells more. */
export function outlineOf(structure: Structure, piece: Piece): Flat[][] {
  const plates = platesOfOne(structure, piece)
  if (plates.length > 0) return joinedOutline(plates.map((plate) => flatLoop(plate.outline)))
  const [w, h] = [toMm(piece.size.width), toMm(piece.size.height)]
  return [
    [
      [0, 0],
      [w, 0],
      [w, h],
      [0, h],
    ],
  ]
}
