import { convert, filter } from 'fold'
import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { toMm } from '../../src/length/length.ts'
import { type FoldFile, foldFile } from '../../src/publish/fold-file.ts'
import { cardOf } from '../card/block.ts'
import { vertex } from '../fold/vertex.ts'

/** Written as text and read by the package of the format's authors, which adds what follows from the rest. */
function readBack(file: FoldFile) {
  const read = JSON.parse(convert.toJSON(file))
  read.faces_edges = []
  convert.edges_vertices_to_edges_faces_edges(read)
  return read
}

const distance = (a: readonly number[], b: readonly number[]) =>
  Math.hypot(...[0, 1, 2].map((k) => (a[k] ?? 0) - (b[k] ?? 0)))

describe.each([...foldStyles.values()])('$name', ({ name, starter }) => {
  const { structure } = cardOf(starter)
  const proof = foldCard(structure)
  const file = foldFile(name, structure, proof)
  const read = readBack(file)

  test('has the keys of version 1.2', () => {
    expect([read.file_spec, read.frame_unit, read.file_classes]).toEqual([1.2, 'mm', ['singleModel']])
    const own = Object.keys(file).filter((key) => !/^(file|frame|vertices|edges|faces)_|^foldlore:/.test(key))
    expect(own).toEqual([])
    expect(read.file_frames.map((frame: { frame_classes: string[] }) => frame.frame_classes)).toEqual([
      ['foldedForm'],
      ['foldedForm'],
    ])
  })

  test('each crease has two faces and each other edge one', () => {
    for (const [i, faces] of read.edges_faces.entries()) {
      const assignment = read.edges_assignment[i]
      const around = faces.filter((face: number | null) => face !== null).length
      // A window's edge has no face of its own: faces of this format have no holes.
      if (assignment === 'B') expect(around).toBeLessThan(2)
      else expect(around).toBe(2)
    }
    expect(filter.edgesAssigned(read, 'V').length + filter.edgesAssigned(read, 'M').length).toBeGreaterThan(0)
  })

  test('faces are counter-clockwise and as large as their plates', () => {
    for (const ring of file.faces_vertices ?? []) {
      const points = ring.map((v) => file.vertices_coords[v] ?? [])
      const area = points.reduce((sum, [x = 0, y = 0], i) => {
        const [p = 0, q = 0] = points[(i + 1) % points.length] ?? []
        return sum + (x * q - p * y) / 2
      }, 0)
      expect(area).toBeGreaterThan(0)
    }
  })

  test('edges keep their length shut and standing', () => {
    const slack = 2 * Math.max(...structure.pieces.map(({ stock }) => toMm(stock.caliper))) + 1e-5
    for (const { vertices_coords: folded } of file.file_frames)
      for (const [from, to] of file.edges_vertices ?? []) {
        const [flat, there] = [file.vertices_coords, folded].map((all) =>
          distance(all[from] ?? [], all[to] ?? []),
        )
        expect(Math.abs((flat ?? 0) - (there ?? 0))).toBeLessThan(slack)
      }
  })
})

test('the flat folding that the package computes by reflection is where this one has it', () => {
  const sectors = [60, 120, 120, 60]
  for (const folds of [
    ['mountain', 'valley', 'valley', 'valley'],
    ['valley', 'mountain', 'valley', 'valley'],
  ] as const) {
    const structure = vertex({ sectors, folds })
    const proof = foldCard(structure)
    const file = foldFile('vertex', structure, proof)
    const read = readBack(file)
    expect(convert.flatFoldedGeometry(read, 0)).toBeLessThan(1e-6)
    const shut = file.file_frames[0]?.vertices_coords ?? []
    for (const i of shut.keys())
      for (const j of shut.keys())
        expect(distance(shut[i] ?? [], shut[j] ?? [])).toBeCloseTo(
          distance(read.vertices_flatFoldCoords[i], read.vertices_flatFoldCoords[j]),
          5,
        )
  }
})
