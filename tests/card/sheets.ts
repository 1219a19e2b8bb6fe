import type { Piece, Plate, Polygon, Segment, Structure } from '../../src/card/structure.ts'
import { type Size, toMm, zero } from '../../src/length/length.ts'
import { areaOf, edgesOf, liesOn, pointsOn, sharedArea } from './polygons.ts'

/** Areas that differ by less are the same, in mm². */
const speck = 1e-6

/**
 * Checks that each piece can be cut out of one sheet, from the plates alone: they lie inside its outline and not on each
 * other; what bounds a plate is the edge of the sheet, a score or a cut; and nothing is missing unless it is cut away.
 */
export function troublesOfSheets(structure: Structure): string[] {
  return structure.pieces
    .filter(({ kind }) => kind !== 'loose')
    .flatMap((piece) => {
      const sheets = sheetsOf(structure, piece)
      const alike = sheets.length === piece.count
      return [
        ...(alike
          ? []
          : [`${piece.name} is cut ${piece.count} times but hangs together in ${sheets.length}`]),
        ...sheets.flatMap((plates) => troublesOfSheet(structure, piece, plates)),
      ]
    })
}

/** Plates of a piece that its scores hold together, for each of those that are cut alike. */
function sheetsOf({ plates, hinges }: Structure, piece: Piece): Plate[][] {
  const left = new Set(plates.filter((plate) => plate.piece === piece.name))
  const sheets: Plate[][] = []
  for (const start of left) {
    const sheet = [start]
    left.delete(start)
    for (const { name } of sheet)
      for (const other of [...left]) {
        const joined = hinges.some(({ between }) => between.includes(name) && between.includes(other.name))
        if (joined && left.delete(other)) sheet.push(other)
      }
    sheets.push(sheet)
  }
  return sheets
}

function troublesOfSheet({ hinges }: Structure, piece: Piece, plates: readonly Plate[]): string[] {
  const names = plates.map(({ name }) => name)
  const scores = hinges.filter(({ between: [a, b] }) => names.includes(a) || names.includes(b))
  const rim = edgesOf(outlineOf(piece.size))
  const bounds = [...rim, ...piece.cuts, ...scores.map(({ line }) => line)]
  const troubles: string[] = []
  for (const [i, { name, outline, holes }] of plates.entries()) {
    if (areaOf(outline) < speck) troubles.push(`nothing is left of ${name}`)
    if (!inside(outline, piece.size)) troubles.push(`${name} sticks out of ${piece.name}`)
    for (const other of plates.slice(i + 1))
      if (sharedArea(outline, other.outline) > speck) troubles.push(`${name} lies on ${other.name}`)
    for (const edge of edgesOf(outline))
      if (!pointsOn(edge).every((point) => bounds.some((line) => liesOn(point, line))))
        troubles.push(`${name} has an edge that is neither cut nor scored`)
    for (const hole of holes) {
      if (Math.abs(sharedArea(hole, outline) - areaOf(hole)) > speck)
        troubles.push(`a window of ${name} is not in it`)
      if (!edgesOf(hole).every((edge) => piece.cuts.some((cut) => isSame(edge, cut))))
        troubles.push(`a window of ${name} is not cut`)
    }
  }
  for (const { between, line } of scores)
    for (const name of between) {
      const outline = plates.find((plate) => plate.name === name)?.outline
      if (!outline) troubles.push(`${between.join(' and ')} are scored but not of one sheet`)
      else if (!pointsOn(line).every((point) => edgesOf(outline).some((edge) => liesOn(point, edge))))
        troubles.push(`the score of ${between.join(' and ')} is not on an edge of ${name}`)
    }
  const missing =
    toMm(piece.size.width) * toMm(piece.size.height) - sum(plates.map(({ outline }) => areaOf(outline)))
  const windows = plates.flatMap(({ holes }) => holes.flatMap(edgesOf))
  const isShaped = piece.cuts.some((cut) => !windows.some((edge) => isSame(edge, cut)))
  if (missing > speck && !isShaped) troubles.push(`the panels of ${piece.name} do not add up to it`)
  return troubles
}

const outlineOf = ({ width, height }: Size): Polygon => [
  { x: zero, y: zero },
  { x: width, y: zero },
  { x: width, y: height },
  { x: zero, y: height },
]

const inside = (polygon: Polygon, { width, height }: Size): boolean =>
  polygon.every(({ x, y }) => x.gte(zero) && x.lte(width) && y.gte(zero) && y.lte(height))

/** The same line, whichever end comes first. */
const isSame = (a: Segment, b: Segment): boolean =>
  pointsOn(a).every((point) => liesOn(point, b)) && pointsOn(b).every((point) => liesOn(point, a))

const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0)
