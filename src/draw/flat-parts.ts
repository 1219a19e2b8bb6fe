import type { Card, Lettering } from '../card/card.ts'
import { hingesOf, type Score, scoresOf } from '../card/scores.ts'
import type { Hinge, Piece, Plate } from '../card/structure.ts'
import type { Length } from '../length/length.ts'
import { letteringOn, setLetters } from './letters.ts'
import { outlineOf, platesOf } from './pieces.ts'
import { type Flat, flatLine, flatLoop, toMm } from './plane.ts'

/** A place to be measured from an edge that is no score: the edge of a window, the end of a slit, a letter. */
interface Inner {
  readonly along: 'width' | 'height'
  readonly at: Length
  /** How far it is from the edge that it is measured along, in mm. */
  readonly inside: number
}

/** What a flat piece consists of. Flat coordinates are mm, y upwards. */
export interface FlatParts {
  readonly piece: Piece
  readonly plates: readonly Plate[]
  readonly outline: readonly (readonly Flat[])[]
  readonly holes: readonly (readonly Flat[])[]
  readonly slits: readonly (readonly [Flat, Flat])[]
  readonly creases: readonly Hinge[]
  readonly scores: readonly Score[]
  readonly lettering: readonly Lettering[]
  readonly inner: readonly Inner[]
}

export function flatParts(card: Card, piece: Piece): FlatParts {
  const plates = platesOf(card.structure, piece)
  const windows = plates.flatMap((plate) => plate.holes)
  const holes = windows.map(flatLoop)
  const ofWindow = new Set(holes.flatMap((loop) => loop.map((p, i) => `${p}|${loop[(i + 1) % loop.length]}`)))
  const slits = piece.cuts.filter((cut) => !ofWindow.has(flatLine(cut).join('|')))
  const creases = hingesOf(card.structure, piece.name)
  const lettering = letteringOn(card, piece.name)
  const corners = [...windows.flat(), ...slits.flatMap((cut) => [cut.from, cut.to])]
  const letters = lettering.flatMap((own) => {
    const set = setLetters(own, toMm(piece.size.height))
    return own.marks.map((at, i): Inner => ({ along: 'width', at, inside: set.letters[i]?.corner[1] ?? 0 }))
  })
  const inner: Inner[] = [
    ...corners.map((c): Inner => ({ along: 'width', at: c.x, inside: toMm(c.y) })),
    ...corners.map((c): Inner => ({ along: 'height', at: c.y, inside: toMm(c.x) })),
    ...letters,
  ].filter(({ along, at }) => at.gt(0) && at.lt(piece.size[along]))
  return {
    piece,
    plates,
    outline: outlineOf(card.structure, piece),
    holes,
    slits: slits.map(flatLine),
    creases,
    scores: scoresOf(creases),
    lettering,
    inner,
  }
}
