import type { Bond, Piece, Structure } from '../card/structure.ts'
import { listOf } from '../length/finding.ts'

/** A bond seen from one piece: its own plate, and the other one. */
interface Joint {
  readonly own: string
  readonly other: string
  readonly bond: Bond
}

/** `the back`; but `panel 1` has its number instead. */
export const theName = (name: string): string => (/\d$/.test(name) ? name : `the ${name}`)
const listed = (names: readonly string[]): string => listOf([...new Set(names)].map(theName))

/** What of a piece is stuck on itself, such as the tab that makes a ring: a sentence with a space before it. */
export function ownGlue(structure: Structure, { name }: Piece): string {
  const platesOf = new Set(structure.plates.filter(({ piece }) => piece === name).map((plate) => plate.name))
  const inner = structure.bonds.filter(({ plate, onto }) => platesOf.has(plate) && platesOf.has(onto))
  if (inner.length === 0) return ''
  const stuck = inner.map(({ plate, onto }) => `${theName(plate)} on ${theName(onto)}`)
  return ` Stick ${listOf(stuck)} with double-sided tape${clearOf(structure, inner)}.`
}

/** How a piece is joined to the pieces before it: sentences, each with a space before it. */
export function joinedTo(structure: Structure, piece: Piece): string {
  const joints = jointsBefore(structure, piece)
  const stuck = joints.filter(({ bond }) => !bond.slide)
  const loose = joints.filter(({ bond }) => bond.slide)
  const it = piece.count > 1 ? 'them' : 'it'
  const tape = stuck.some(({ bond }) => bond.height.gt(0)) ? 'foam tape' : 'double-sided tape'
  const clear = clearOf(
    structure,
    stuck.map(({ bond }) => bond),
  )
  return [
    ...(stuck.length > 0 ? [` Stick ${it} to ${sidesOf(structure, stuck)} with ${tape}${clear}.`] : []),
    ...(loose.length > 0
      ? [
          ` Put ${it} on ${sidesOf(structure, loose)} without tape, so that ${it === 'it' ? 'it slides' : 'they slide'}.`,
        ]
      : []),
  ].join('')
}

/** `the outside of the left door and the right door, and the inside of the cover`. */
function sidesOf(structure: Structure, joints: readonly Joint[]): string {
  // Names alone come first: behind `the back of` they would seem to belong to it.
  const groups = new Map<string, string[]>([['', []]])
  for (const { own, other, bond } of joints) {
    const side = bond.plate === own ? sideOf(structure, bond) : ''
    groups.set(side, [...(groups.get(side) ?? []), other])
  }
  const said = [...groups].flatMap(([side, names]) => (names.length > 0 ? [`${side}${listed(names)}`] : []))
  return listOf(said)
}

/** Which side of a panel something is stuck on, where that is not what anyone would take it for. */
function sideOf({ hinges, bonds }: Structure, { onto, side }: Bond): string {
  const both = bonds.some((other) => other.onto === onto && other.side !== side)
  if (side === 'face' && !both) return ''
  // What does not fold has no inside.
  if (!hinges.some(({ between }) => between.includes(onto)))
    return side === 'face' ? 'the front of ' : 'the back of '
  return side === 'face' ? 'the inside of ' : 'the outside of '
}

/** What slides on the panels that these bonds stick something on, on the same side. */
function clearOf({ bonds }: Structure, stuck: readonly Bond[]): string {
  const sliding = bonds.filter(
    (other) => other.slide && stuck.some(({ onto, side }) => onto === other.onto && side === other.side),
  )
  return sliding.length > 0 ? `, clear of ${listed(sliding.map(({ plate }) => plate))}, which slides` : ''
}

function jointsBefore({ pieces, plates, bonds }: Structure, { name }: Piece): Joint[] {
  const at = pieces.findIndex((piece) => piece.name === name)
  const before = new Set(pieces.slice(0, at).map((piece) => piece.name))
  const pieceOf = new Map(plates.map((plate) => [plate.name, plate.piece]))
  return bonds.flatMap((bond): Joint[] => {
    const [own, other] = pieceOf.get(bond.plate) === name ? [bond.plate, bond.onto] : [bond.onto, bond.plate]
    return pieceOf.get(own) === name && before.has(pieceOf.get(other) ?? '') ? [{ own, other, bond }] : []
  })
}
