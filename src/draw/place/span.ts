import type { Card } from '../../card/card.ts'
import type { Bond, Piece, Plate } from '../../card/structure.ts'
import type { Pose, Vector } from '../../fold/pose.ts'
import { type Length, minus, plus } from '../../length/length.ts'
import { type Flat, flatLoop } from '../plane.ts'
import { dot, inSpace, less } from '../space.ts'
import type { PlaceView } from './view.ts'

/** A span in the standing card, seen straight from its front, with the panels of the base behind it. */
export function spanView(card: Card, piece: Piece, pose: Pose): PlaceView | undefined {
  const { structure } = card
  const bonds = structure.bonds.filter((b) => b.plate === piece.name)
  const plate = structure.plates.find((p) => p.name === piece.name)
  const frame = pose.get(piece.name)
  const [first, last] = [bonds[0], bonds.at(-1)]
  if (!first || !last || !plate || !frame) return undefined
  const seen = (of: Plate): Flat[] => {
    const place = pose.get(of.name)
    if (!place || Math.abs(dot(place.normal, frame.normal)) < 0.2) return []
    const flat = flatLoop(of.outline).map((p): Flat => {
      const at: Vector = less(inSpace(place, p), frame.origin)
      return [dot(at, frame.right), dot(at, frame.up)]
    })
    return dot(place.normal, frame.normal) > 0 ? flat : flat.reverse()
  }
  const base = structure.plates.filter(
    (p) => structure.pieces.find((q) => q.name === p.piece)?.kind === 'base',
  )
  const onto = bonds.map((b) => b.onto)
  const ground = structure.pieces.find((p) => p.kind === 'base')
  if (!ground) return undefined
  const panels = onto.flatMap((name) => {
    const panel = structure.plates.find((p) => p.name === name)
    return panel ? [{ name, loop: seen(panel), windows: [] }] : []
  })
  if (panels.some((p) => p.loop.length === 0)) return undefined
  return {
    piece,
    ground,
    back: false,
    panels,
    elsewhere: [],
    neighbours: base
      .filter((p) => !onto.includes(p.name))
      .map(seen)
      .filter((loop) => loop.length > 0),
    creases: [],
    slits: [],
    laid: [[flatLoop(plate.outline), ...plate.holes.map(flatLoop)]],
    border: spanBorder(structure.plates, piece, first, last),
    raise: first.height,
  }
}

/** How far the span's edges are from the outer edges of the panels that it is stuck on, exactly. */
function spanBorder(plates: readonly Plate[], piece: Piece, first: Bond, last: Bond): PlaceView['border'] {
  const ends = (name: string, axis: 'x' | 'y'): [Length, Length] => {
    const values = (plates.find((p) => p.name === name)?.outline ?? []).map((p) => p[axis])
    const sorted = [...values].sort((a, b) => a.compare(b))
    return [sorted[0] as Length, sorted.at(-1) as Length]
  }
  const [left, right] = [ends(first.onto, 'x'), ends(last.onto, 'x')]
  const [bottom, top] = ends(first.onto, 'y')
  return {
    left: minus(first.at.x, left[0]),
    right: minus(right[1], plus(last.at.x, piece.size.width)),
    bottom: minus(first.at.y, bottom),
    top: minus(top, plus(first.at.y, piece.size.height)),
  }
}
