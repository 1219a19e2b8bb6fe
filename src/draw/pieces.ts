import type { Piece, Plate, Structure } from '../card/structure.ts'
import { type Flat, flatLoop, joinedOutline, toMm } from './plane.ts'

/** The plates that tell how a piece is cut; pieces of which several are cut alike have one of them tell. */
export function platesOf(structure: Structure, piece: Piece): readonly Plate[] {
  const own = structure.plates.filter((plate) => plate.piece === piece.name)
  return piece.count > 1 ? own.slice(0, 1) : own
}

/** The outer edge of a piece, in mm, y upwards: the rectangle of its size when no plate tells more. */
export function outlineOf(structure: Structure, piece: Piece): Flat[][] {
  const plates = platesOf(structure, piece)
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
