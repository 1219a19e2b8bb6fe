import type { Parts } from './bench.ts'
import { platesOfOne } from './copies.ts'
import type { Piece, Plate, Polygon, Segment, Structure } from './structure.ts'
import type { Built } from './style.ts'

/** The whole card: the mechanism, with everything that is stuck on it and every window that is cut. */
export function assemble(built: Built, bench: Parts): Structure {
  const layers = [...bench.layers.values()].map((cell) => cell())
  const spans = [...bench.spans.values()].map((cell) => cell())
  const stuckOn = [...layers, ...spans]
  const loose = [...bench.loose.values()].map((cell) => cell())
  const apertures = [...bench.apertures.values()].map((cell) => cell())
  const lettering = [...bench.lettering.values()].map((cell) => cell())
  const holes = apertures.flatMap((aperture) => aperture.holes)
  const plates = [...built.plates, ...stuckOn.flatMap((part) => part.plates)].map((plate): Plate => {
    const own = holes.filter((h) => h.plate === plate.name).map((h) => h.hole)
    return own.length > 0 ? { ...plate, holes: [...plate.holes, ...own] } : plate
  })
  const pieces = [...built.pieces, ...stuckOn.map((part) => part.piece), ...loose.map((part) => part.piece)]
  return {
    pieces: pieces.map((piece) => withWindows(piece, platesOfOne({ plates, hinges: built.hinges }, piece))),
    plates,
    hinges: built.hinges,
    // Panels have their layers before they are stuck together, and what moves over them lies on these.
    bonds: [...layers.flatMap((part) => part.bonds), ...built.bonds, ...spans.flatMap((part) => part.bonds)],
    stops: built.stops,
    ...(built.shut && { shut: built.shut }),
    ...(built.upsideDown && { upsideDown: built.upsideDown }),
    pads: [...(built.pads ?? []), ...lettering.flatMap(({ pads }) => pads)],
    display: built.display,
  }
}

/** The edges of a piece's windows are cuts. Pieces that are cut alike have the same windows, so one of them tells. */
function withWindows(piece: Piece, plates: readonly Plate[]): Piece {
  const cuts = plates.flatMap((plate) => plate.holes.flatMap(edgesOf))
  return cuts.length > 0 ? { ...piece, cuts: [...piece.cuts, ...cuts] } : piece
}

const edgesOf = (polygon: Polygon): Segment[] =>
  polygon.map((from, i) => ({ from, to: polygon[(i + 1) % polygon.length] ?? from }))
