import type { Parts } from './bench.ts'
import type { Piece, Plate, Polygon, Segment, Structure } from './structure.ts'
import type { Built } from './style.ts'

/** The whole card: the mechanism, with everything that is stuck on it and every window that is cut. */
export function assemble(built: Built, bench: Parts): Structure {
  const stuckOn = [...bench.layers.values(), ...bench.spans.values()].map((cell) => cell())
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
    pieces: pieces.map((piece) => withWindows(piece, plates)),
    plates,
    hinges: built.hinges,
    bonds: [...built.bonds, ...stuckOn.flatMap((part) => part.bonds)],
    stops: built.stops,
    ...(built.shut && { shut: built.shut }),
    ...(built.upsideDown && { upsideDown: built.upsideDown }),
    pads: [...(built.pads ?? []), ...lettering.flatMap(({ pads }) => pads)],
    display: built.display,
  }
}

/** The edges of a piece's windows are cuts. Pieces that are cut alike have the same windows, so one plate tells. */
function withWindows(piece: Piece, plates: readonly Plate[]): Piece {
  const own = plates.filter((plate) => plate.piece === piece.name)
  const telling = piece.count > 1 ? own.slice(0, 1) : own
  const cuts = telling.flatMap((plate) => plate.holes.flatMap(edgesOf))
  return cuts.length > 0 ? { ...piece, cuts: [...piece.cuts, ...cuts] } : piece
}

const edgesOf = (polygon: Polygon): Segment[] =>
  polygon.map((from, i) => ({ from, to: polygon[(i + 1) % polygon.length] ?? from }))
