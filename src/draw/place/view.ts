import type { Border, Card, Layer } from '../../card/card.ts'
import { platesOfOne } from '../../card/copies.ts'
import { ontoPanel } from '../../card/onto.ts'
import { hingesOf } from '../../card/scores.ts'
import type { Fold, Piece } from '../../card/structure.ts'
import type { Length } from '../../length/length.ts'
import { flatParts } from '../flat/parts.ts'
import { type Flat, flatLine, flatLoop, toMm } from '../plane.ts'

/** Something to be put in its place, and what is round it; mm, x to the right, y upwards, as seen from its side. */
export interface PlaceView {
  readonly piece: Piece
  /** The panels it goes on, with their windows; the first is the one that is measured. */
  readonly panels: readonly {
    readonly name: string
    readonly loop: readonly Flat[]
    readonly windows: readonly (readonly Flat[])[]
  }[]
  /** Other panels that it goes on in just the same way, on pieces that are not drawn. */
  readonly elsewhere: readonly string[]
  readonly neighbours: readonly (readonly Flat[])[]
  readonly ground: Piece
  /** Whether the back of the ground is what is seen. */
  readonly back: boolean
  readonly creases: readonly { readonly fold: Fold; readonly ends: readonly [Flat, Flat] }[]
  /** Cuts within the ground, between one panel and the next. */
  readonly slits: readonly (readonly [Flat, Flat])[]
  /** The piece itself, once for each panel, its windows behind its outline. */
  readonly laid: readonly (readonly (readonly Flat[])[])[]
  readonly border: Border
  /** Height of the foam under it. */
  readonly raise: Length
  /** The side of what it goes on, where that is to be said. */
  readonly onto?: 'inside' | 'outside' | 'back'
}

/** A layer on its panels, with the piece that these belong to round them. */
export function layerView(card: Card, layer: Layer): PlaceView | undefined {
  const { structure } = card
  const piece = structure.pieces.find((p) => p.name === layer.name)
  const plates = layer.on.flatMap((name) => structure.plates.find((p) => p.name === name) ?? [])
  const ground = structure.pieces.find((p) => p.name === plates[0]?.piece)
  const bonds = layer.plates.flatMap((name) => structure.bonds.find((b) => b.plate === name) ?? [])
  if (!piece || !ground || bonds.length === 0) return undefined
  const back = layer.side === 'back'
  const wide = toMm(ground.size.width)
  // Seen from the back, left and right change places, and with them the way round.
  const seen = (loop: readonly Flat[]): Flat[] =>
    back ? loop.map(([x, y]): Flat => [wide - x, y]).reverse() : [...loop]
  // Of a ground of which several are cut alike, or of several grounds, one is drawn.
  const sheet = platesOfOne(structure, ground, plates[0]?.name)
  const on = plates.filter((plate) => sheet.includes(plate))
  const around = sheet.filter((plate) => !on.includes(plate))
  return {
    piece,
    ground,
    back,
    panels: on.map(({ name, outline, holes }) => ({
      name,
      loop: seen(flatLoop(outline)),
      windows: holes.map((hole) => seen(flatLoop(hole))),
    })),
    elsewhere: layer.on.filter((name) => !on.some((p) => p.name === name)),
    neighbours: around.map(({ outline }) => seen(flatLoop(outline))),
    creases: hingesOf(structure, ground.name).map(({ fold, line }) => {
      const [a, b] = seen(flatLine(line)) as [Flat, Flat]
      return { fold: back ? otherWay[fold] : fold, ends: [a, b] }
    }),
    slits: flatParts(card, ground).slits.map((slit) => seen(slit) as [Flat, Flat]),
    laid: bonds
      .filter((bond) => on.some((p) => p.name === bond.onto))
      .map((bond) => {
        const plate = structure.plates.find((p) => p.name === bond.plate)
        const carry = ontoPanel(bond)
        return [plate?.outline ?? [], ...(plate?.holes ?? [])].map((loop) => seen(flatLoop(loop).map(carry)))
      }),
    border: bonds[0]?.turn === 180 ? headOver(layer.border) : layer.border,
    raise: (bonds[0] as (typeof bonds)[number]).height,
    ...(ground.kind === 'base'
      ? { onto: back ? ('outside' as const) : ('inside' as const) }
      : back && { onto: 'back' as const }),
  }
}

/** A border as it lies when what is read upside down is drawn with the rest of its sheet. */
const headOver = ({ left, right, top, bottom }: Border): Border => ({
  left: right,
  right: left,
  top: bottom,
  bottom: top,
})

/** What is a valley on one side is a mountain on the other. */
const otherWay: Readonly<Record<Fold, Fold>> = { valley: 'mountain', mountain: 'valley' }
