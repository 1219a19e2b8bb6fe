import type { Piece, Structure } from '../card/structure.ts'
import type { Closed, Pose, Proof } from '../fold/pose.ts'
import { spotAt } from '../fold/space.ts'
import { toMm } from '../length/length.ts'
import { type FlatMesh, meshOf } from './fold-mesh.ts'

/** A model in the FOLD format, version 1.2. Lengths in mm, keys as the specification has them. */
export interface FoldFile extends FoldFrame {
  readonly file_spec: 1.2
  readonly file_creator: string
  readonly file_title: string
  readonly file_classes: readonly string[]
  readonly file_frames: readonly FoldFrame[]
}

export interface FoldFrame {
  readonly frame_title: string
  readonly frame_classes: readonly string[]
  readonly frame_attributes: readonly string[]
  readonly frame_unit: 'mm'
  readonly frame_parent?: number
  readonly frame_inherit?: boolean
  readonly vertices_coords: readonly (readonly number[])[]
  readonly edges_vertices?: readonly (readonly [number, number])[]
  readonly edges_assignment?: readonly ('B' | 'M' | 'V')[]
  readonly faces_vertices?: readonly (readonly number[])[]
  /** [f, g, s]: f lies above g (1) or below it (-1), on the side of g's normal. */
  readonly faceOrders?: readonly (readonly [number, number, 1 | -1])[]
  /** The plate that each face is. */
  readonly 'foldlore:faces_plates'?: readonly string[]
  /** Windows, which faces of this format cannot have: each with its face, by its own vertices. */
  readonly 'foldlore:faces_windows'?: readonly (readonly [face: number, vertices: readonly number[]])[]
  /** Pairs of faces that are stuck together. */
  readonly 'foldlore:faces_bonds'?: readonly (readonly [number, number])[]
}

/** Pieces lie so far apart, in mm. */
const gap = 10

/**
 * Writes a card as a FOLD file: the pieces flat, side by side, as crease pattern; then the card shut and standing, with
 * the order of its layers. Plates that hang together with nothing are left out.
 */
export function foldFile(title: string, structure: Structure, { closed, standing }: Proof): FoldFile {
  const plates = structure.plates.filter(({ name }) => !closed || closed.pose.has(name))
  const pieces = structure.pieces.filter((piece) => plates.some((plate) => plate.piece === piece.name))
  const mesh = meshOf({ ...structure, plates }, placesOf(pieces))
  const names = mesh.faces.map(({ plate }) => plate)
  const number = (name: string): number => names.indexOf(name)
  const folded = (frame_title: string, pose: Pose): FoldFrame => ({
    frame_title,
    frame_classes: ['foldedForm'],
    frame_attributes: ['3D'],
    frame_unit: 'mm',
    frame_parent: 0,
    frame_inherit: true,
    vertices_coords: mesh.vertices.map(({ plate, x, y }) => {
      const place = pose.get(plate)
      return place ? [...spotAt(place, x, y)] : [x, y, 0]
    }),
  })
  return {
    file_spec: 1.2,
    file_creator: 'foldlore',
    file_title: title,
    file_classes: ['singleModel'],
    frame_title: 'flat',
    frame_classes: ['creasePattern'],
    frame_attributes: ['2D', ...(mesh.windows.length > 0 ? ['cuts'] : [])],
    frame_unit: 'mm',
    ...flatKeys(mesh),
    'foldlore:faces_plates': names,
    'foldlore:faces_windows': mesh.windows.map(({ plate, vertices }) => [number(plate), vertices]),
    'foldlore:faces_bonds': structure.bonds.flatMap(({ plate, onto }): [number, number][] =>
      number(plate) < 0 || number(onto) < 0 ? [] : [[number(plate), number(onto)]],
    ),
    file_frames: [
      ...(closed ? [{ ...folded('shut', closed.pose), faceOrders: ordersOf(closed, number) }] : []),
      ...(standing ? [folded('standing', standing.pose)] : []),
    ],
  }
}

const flatKeys = ({ vertices, edges, faces }: FlatMesh) => ({
  vertices_coords: vertices.map(({ x, y, shift }) => [x + shift, y]),
  edges_vertices: edges.map((edge) => edge.vertices),
  edges_assignment: edges.map((edge) => edge.assignment),
  faces_vertices: faces.map((face) => face.vertices),
})

/** Where each piece begins, side by side. */
function placesOf(pieces: readonly Piece[]): ReadonlyMap<string, number> {
  let next = 0
  return new Map(
    pieces.map(({ name, size }) => {
      const at = next
      next += toMm(size.width) + gap
      return [name, at]
    }),
  )
}

/** Each plate against the next one behind it, wherever two lie on each other. */
function ordersOf(closed: Closed, number: (plate: string) => number): [number, number, 1 | -1][] {
  const orders = new Map<string, [number, number, 1 | -1]>()
  for (const { sheets } of closed.map)
    for (const [i, { plate }] of sheets.entries()) {
      const behind = sheets[i + 1]?.plate
      if (behind === undefined) continue
      const up = (closed.pose.get(behind)?.normal[2] ?? 1) > 0
      orders.set(`${plate}\n${behind}`, [number(plate), number(behind), up ? 1 : -1])
    }
  return [...orders.values()]
}
