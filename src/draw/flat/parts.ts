import type { Card, Lettering } from '../../card/card.ts'
import { platesOfOne } from '../../card/copies.ts'
import { hingesOf, type Score, scoresOf } from '../../card/scores.ts'
import { type Slant, slantsOf } from '../../card/slants.ts'
import type { Hinge, Piece, Plate, Point } from '../../card/structure.ts'
import type { Length } from '../../length/length.ts'
import type { LabelWord } from '../../lesson/label-words.ts'
import { letteringOn, setLetters } from '../letters.ts'
import { outlineOf } from '../pieces.ts'
import { type Flat, flatLine, flatLoop, isOnLoops, toMm } from '../plane.ts'

/** A place to be measured from an edge that is no straight score: the edge of a window, the end of a slit, a letter. */
interface Inner {
  readonly along: 'width' | 'height'
  readonly at: Length
  /** How far it is from the edge that it is measured along, in mm. */
  readonly inside: number
  /** The word that picks its number. */
  readonly label: LabelWord
  /** It is where a slanting score begins or ends. */
  readonly slant?: true
}

/** What a flat piece consists of. Flat coordinates are mm, y upwards. */
export interface FlatParts {
  readonly piece: Piece
  readonly plates: readonly Plate[]
  readonly outline: readonly (readonly Flat[])[]
  readonly holes: readonly (readonly Flat[])[]
  readonly slits: readonly (readonly [Flat, Flat])[]
  /** Whether corners or notches are cut away, so that the outline is no rectangle. */
  readonly trimmed: boolean
  readonly creases: readonly Hinge[]
  readonly scores: readonly Score[]
  readonly slants: readonly Slant[]
  readonly lettering: readonly Lettering[]
  readonly inner: readonly Inner[]
}

export function flatParts(card: Card, piece: Piece): FlatParts {
  const plates = platesOfOne(card.structure, piece)
  const windows = plates.flatMap((plate) => plate.holes)
  const holes = windows.map(flatLoop)
  const ofWindow = new Set(holes.flatMap((loop) => loop.map((p, i) => `${p}|${loop[(i + 1) % loop.length]}`)))
  const outline = outlineOf(card.structure, piece)
  const cuts = piece.cuts.filter((cut) => !ofWindow.has(flatLine(cut).join('|')))
  const slits = cuts.map(flatLine).filter((line) => !isOnLoops(line, outline))
  const creases = hingesOf(card.structure, piece.name)
  const slants = slantsOf(creases)
  const lettering = letteringOn(card, piece.name)
  const corners = [...windows.flat(), ...cuts.flatMap((cut) => [cut.from, cut.to])]
  const letters = lettering.flatMap((own) => {
    const set = setLetters(own, toMm(piece.size.height))
    return own.marks.map(
      (at, i): Inner => ({ along: 'width', at, inside: set.letters[i]?.corner[1] ?? 0, label: 'marks' }),
    )
  })
  const inner: Inner[] = [
    ...corners.flatMap(measured('cuts')),
    ...slants.flatMap(({ fold, from, to }) => [from, to].flatMap(measured(labelOfFold[fold]))).map(ofSlant),
    ...letters,
  ].filter(({ along, at }) => at.gt(0) && at.lt(piece.size[along]))
  return {
    piece,
    plates,
    outline,
    holes,
    slits,
    trimmed: slits.length < cuts.length,
    creases,
    scores: scoresOf(creases),
    slants,
    lettering,
    inner,
  }
}

/** A point measured from the left edge and from the lower edge. */
const measured =
  (label: LabelWord) =>
  ({ x, y }: Point): Inner[] => [
    { along: 'width', at: x, inside: toMm(y), label },
    { along: 'height', at: y, inside: toMm(x), label },
  ]

/** The word that picks the numbers of a fold's scores. */
export const labelOfFold = { mountain: 'mountains', valley: 'valleys' } as const

const ofSlant = (inner: Inner): Inner => ({ ...inner, slant: true })
