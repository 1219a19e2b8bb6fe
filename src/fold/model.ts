import type { Bend, Bond, Hinge, Point, Polygon, Segment, Structure } from '../card/structure.ts'
import { type Finding, suggestWord } from '../length/finding.ts'
import { type Length, zero } from '../length/length.ts'
import { type Affine, moveBy, type Whole } from './affine.ts'
import { countOf, largestCount, unitsPerMm } from './whole.ts'

/** A plate with its outline and windows as whole coordinates in its piece's frame. */
export interface ModelPlate {
  readonly name: string
  readonly rings: readonly (readonly Whole[])[]
  readonly caliper: number
}

export interface ModelHinge {
  readonly p: number
  readonly q: number
  readonly line: readonly [Whole, Whole]
  readonly valley: boolean
  /** How far it is bent when the card is shut, in degrees, if that is known beforehand. */
  readonly shut: number | undefined
}

export interface ModelBond {
  readonly plate: number
  readonly onto: number
  readonly front: boolean
  readonly map: Affine
  readonly height: number
}

export interface ModelStop {
  readonly plate: number
  readonly edge: readonly [Whole, Whole]
  readonly onto: number
  readonly line: readonly [Whole, Whole]
}

/** Something stuck on `onto` that only adds to the thickness. */
export interface ModelPad {
  readonly onto: number
  readonly front: boolean
  readonly ring: readonly Whole[]
  readonly height: number
}

/** A structure with names looked up and lengths counted. Plates are known by their place in `plates`. */
export interface Model {
  /** Units of outlines, creases and bonds in a millimetre. */
  readonly perMm: bigint
  /** Units of calipers and foam heights in a millimetre. */
  readonly thinPerMm: bigint
  readonly plates: readonly ModelPlate[]
  readonly hinges: readonly ModelHinge[]
  readonly bonds: readonly ModelBond[]
  readonly stops: readonly ModelStop[]
  readonly pads: readonly ModelPad[]
  /** The plate that stays put. */
  readonly shown: number
}

/** Counts a structure. Hinges, bonds and stops that name plates it does not have are left out and reported. */
export function modelOf(structure: Structure, findings: Finding[]): Model | undefined {
  const { plates, hinges, bonds, stops, display, pieces, pads = [], shut = [] } = structure
  const calipers = new Map(pieces.map(({ name, stock }) => [name, stock.caliper]))
  const perMm = unitsPerMm(coordinatesOf(structure))
  const thinPerMm = unitsPerMm([...calipers.values(), ...[...bonds, ...pads].map((b) => b.height)])
  const at = ({ x, y }: Point): Whole => [countOf(x, perMm), countOf(y, perMm)]
  const line = ({ from, to }: Segment): [Whole, Whole] => [at(from), at(to)]
  const thin = (x: Length): number => countOf(x, thinPerMm)

  const numbers = new Map(plates.map(({ name }, i) => [name, i]))
  const find = (name: string, role: string): number => {
    const i = numbers.get(name)
    if (i === undefined) findings.push(unknownPlate(name, role, [...numbers.keys()]))
    return i ?? -1
  }
  const counted = plates.map((plate) => ({
    name: plate.name,
    rings: [plate.outline, ...plate.holes].map((ring: Polygon) => ring.map(at)),
    caliper: thin(calipers.get(plate.piece) ?? zero),
  }))
  const shown = find(display.plate, 'The plate that the card is shown by')
  if (shown < 0) return undefined
  const model = {
    perMm,
    thinPerMm,
    plates: counted,
    shown,
    hinges: hinges
      .map((hinge) => ({
        p: find(hinge.between[0], 'A crease'),
        q: find(hinge.between[1], 'A crease'),
        line: line(hinge.line),
        valley: hinge.fold === 'valley',
        shut: shut.find((bend) => isAt(bend, hinge))?.degrees,
      }))
      .filter(({ p, q }) => p >= 0 && q >= 0),
    bonds: bonds
      .map((bond: Bond) => ({
        plate: find(bond.plate, 'A bond'),
        onto: find(bond.onto, 'A bond'),
        front: bond.side === 'face',
        map: moveBy(bond.over, bond.turn, at(bond.at)),
        height: thin(bond.height),
      }))
      .filter(({ plate, onto }) => plate >= 0 && onto >= 0),
    stops: stops
      .map((stop) => ({
        plate: find(stop.plate, 'A stop'),
        edge: line(stop.edge),
        onto: find(stop.onto, 'A stop'),
        line: line(stop.line),
      }))
      .filter(({ plate, onto }) => plate >= 0 && onto >= 0),
    pads: pads
      .map(({ onto, side, outline, height }) => ({
        onto: find(onto, 'A pad'),
        front: side === 'face',
        ring: outline.map(at),
        height: thin(height),
      }))
      .filter(({ onto }) => onto >= 0),
  }
  if (largest(model.plates) < largestCount) return model
  findings.push(tooFine)
  return undefined
}

/** Whether a bend is of this hinge. */
const isAt = ({ hinge: [a, b] }: Bend, { between }: Pick<Hinge, 'between'>): boolean =>
  between.includes(a) && between.includes(b)

function* coordinatesOf({ plates, hinges, bonds, stops, pads = [] }: Structure): Generator<Length> {
  const lines = [...hinges.map((h) => h.line), ...stops.flatMap((s) => [s.edge, s.line])]
  const points = [
    ...plates.flatMap((p) => [p.outline, ...p.holes].flat()),
    ...lines.flatMap(({ from, to }) => [from, to]),
    ...bonds.map((b) => b.at),
    ...pads.flatMap((p) => p.outline),
  ]
  for (const { x, y } of points) {
    yield x
    yield y
  }
}

const largest = (plates: readonly ModelPlate[]): number =>
  plates.reduce((sum, { rings }) => sum + Math.max(0, ...rings.flat(2).map(Math.abs)), 0)

/** What to say of lengths that whole numbers cannot count exactly. */
export const tooFine: Finding = {
  rule: 'too-fine',
  severity: 'error',
  message: 'The lengths of this card have no common measure that is coarse enough to compare them exactly',
  suggestion: 'Round the lengths to marks of a ruler',
}

function unknownPlate(name: string, role: string, known: readonly string[]): Finding {
  return {
    rule: 'unknown-plate',
    severity: 'error',
    message: `${role} names a plate \`${name}\` that the card does not have`,
    suggestion: suggestWord(name, known),
  }
}
