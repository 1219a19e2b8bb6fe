import type { Bend, Piece, Structure } from '../../card/structure.ts'
import { movedTo } from '../../fold/place.ts'
import type { Act, Closed, Pose, Proof, Vector } from '../../fold/pose.ts'
import { foldCard } from '../../fold/prove.ts'
import { atHome } from '../../fold/space.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import { type Camera, cameraAt, frontLeft } from '../camera.ts'
import { dot } from '../space.ts'
import { asSeenFrom, bentBy, isSame, movedPlates } from './moves.ts'

/** The way that a strip of stages shows. */
export interface Way {
  readonly structure: Structure
  readonly acts: readonly Act[]
  /** From the flat sheet (0) to the shut card (1). */
  readonly poseAt: (share: number) => Pose | undefined
  /** How the card stands when it is made, if that is no part of the way. */
  readonly standing?: Pose
  /** The card shut, which tells what lies on what. */
  readonly closed?: Closed
  /** One eye for all stages. */
  readonly camera: Camera
  /** Turns a pose so that its other side is seen, as one turns a page: left and right change places. */
  readonly turnOver: (pose: Pose) => Pose
  /** The piece that is folded alone. */
  readonly piece?: Piece
}

/** Above a card that lies on the table, high enough to see what lies on it. */
const fromAbove = cameraAt(30, 38)

/**
 * The sheet that stands is seen neither along its plane nor straight from the front, where panels that come forward are
 * seen along theirs: the cosine of the angle at which one looks at it.
 */
const [leastBroad, mostBroad] = [0.55, 0.87]

/** The whole of a card, from the flat sheet to the shut card; and standing, where it does not stand on the way. */
export function wayOfCard({ card, proof }: ProvenCard): Way | undefined {
  const way = wayOf(card.structure, proof)
  if (!way) return undefined
  // What holds creases together is stuck on while the card stands.
  const standsOnTheWay = way.acts.some(({ bends }, i) =>
    way.acts.slice(i + 1).some((later) => later.bends.some((two) => bends.some((one) => isSame(one, two)))),
  )
  const isHeld = way.acts.some(({ joins }) => joins.length > 0)
  const [shut, standing] = [proof.between(0), proof.standing?.pose]
  const opens = shut && standing && movedPlates(card.structure, shut, standing).size > 0
  return { ...way, ...(opens && !standsOnTheWay && !isHeld && { standing }) }
}

/**
 * One piece alone, as it is folded on the way of the whole card; what is stuck on that later is folded by itself, as far
 * as it is bent in the shut card or, where it lies flat there, in the standing one.
 */
export function wayOfPiece({ card, proof }: ProvenCard, piece: Piece): Way | undefined {
  const { shut, standing } = { shut: proof.closed?.pose, standing: proof.standing?.pose }
  const alone = pieceAlone(card.structure, piece, shut)
  const whole = wayOf(card.structure, proof)
  if (whole && alone.plates.every(({ name }) => whole.poseAt(0)?.has(name)))
    return partOf(whole, alone, piece)
  const isBent = alone.shut?.some(({ degrees }) => degrees > 1)
  const bent = isBent ? alone : pieceAlone(card.structure, piece, standing)
  const way = wayOf(bent, foldCard(bent))
  return way && { ...way, piece }
}

/** What a way does to a piece. */
function partOf(whole: Way, { plates, ...rest }: Structure, piece: Piece): Way | undefined {
  const own = plates.map(({ name }) => name)
  const start = whole.poseAt(0) ?? new Map()
  const acts = whole.acts.flatMap((act) => {
    const bends = act.bends.filter(([one]) => own.includes(one))
    return bends.length > 0 ? [{ ...act, bends, joins: [] }] : []
  })
  const { plate } = whole.structure.display
  const poseAt = (share: number): Pose | undefined => {
    const pose = whole.poseAt(share)
    // What is carried along by another piece stays where it is.
    const seen = pose && (own.includes(plate) ? pose : asSeenFrom(rest.display.plate, start, pose))
    return seen && new Map([...seen].filter(([name]) => own.includes(name)))
  }
  return acts.length > 0 ? { ...whole, structure: { plates, ...rest }, acts, poseAt, piece } : undefined
}

function wayOf(structure: Structure, proof: Proof): Way | undefined {
  const making = proof.making()
  const start = making?.poseAt(0)
  if (!making || !start) return undefined
  const { rests, turn } = structure.display
  const camera = rests === 'flat' ? fromAbove : frontLeft
  const at = start.get(structure.display.plate) ?? [...start.values()][0]
  const look = at ? dot(at.normal, camera.eye) : 0
  const isWell = look > leastBroad && (look < mostBroad || rests === 'flat')
  const faced = isWell ? (pose: Pose) => pose : turnedBy((-turn * Math.PI) / 180)
  const poseAt = (share: number): Pose | undefined => {
    const pose = making.poseAt(share)
    return pose && faced(pose)
  }
  const first = poseAt(0)?.get(structure.display.plate) ?? at
  return {
    structure,
    acts: making.acts,
    poseAt,
    camera,
    turnOver: halfTurn(first?.up ?? [0, 1, 0]),
    ...(proof.closed && { closed: proof.closed }),
  }
}

/** Turns a pose about the vertical, counter-clockwise seen from above. */
function turnedBy(angle: number): (pose: Pose) => Pose {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return moved([cos, 0, -sin], [0, 1, 0], [sin, 0, cos])
}

/** Half a turn about an axis through the origin: v goes to 2(v·a)a - v. */
function halfTurn(axis: Vector): (pose: Pose) => Pose {
  const image = ([x, y, z]: Vector): Vector => {
    const twice = 2 * dot([x, y, z], axis)
    return [twice * axis[0] - x, twice * axis[1] - y, twice * axis[2] - z]
  }
  return moved(image([1, 0, 0]), image([0, 1, 0]), image([0, 0, 1]))
}

/** Takes the axes of space to these. */
function moved(right: Vector, up: Vector, normal: Vector): (pose: Pose) => Pose {
  const move = movedTo(atHome, { origin: [0, 0, 0], right, up, normal })
  return (pose) => new Map([...pose].map(([name, place]) => [name, move(place)]))
}

/**
 * The plates, creases and bonds of one piece, its creases bent shut as far as in a pose. Of a piece that is cut several
 * times, one.
 */
function pieceAlone(structure: Structure, piece: Piece, pose: Pose | undefined): Structure {
  const { display } = structure
  const all = structure.plates.filter((plate) => plate.piece === piece.name).map(({ name }) => name)
  const creases = structure.hinges.filter(({ between: [one] }) => all.includes(one))
  const count = (name: string): number => creases.filter(({ between }) => between.includes(name)).length
  const [most = ''] = [...all].sort((a, b) => count(b) - count(a))
  const plate = all.includes(display.plate) ? display.plate : most
  const own = new Set([plate])
  for (const name of own)
    for (const { between } of creases) if (between.includes(name)) for (const next of between) own.add(next)
  const hinges = creases.filter(({ between }) => between.every((name) => own.has(name)))
  return {
    pieces: [piece],
    plates: structure.plates.filter(({ name }) => own.has(name)),
    hinges,
    bonds: structure.bonds.filter((bond) => own.has(bond.plate) && own.has(bond.onto)),
    stops: [],
    shut: hinges.flatMap(({ between }): Bend[] => {
      const isThere = between.every((name) => pose?.has(name))
      if (pose && isThere) return [{ hinge: between, degrees: bentBy(pose, between) }]
      return structure.shut?.filter(({ hinge }) => isSame(hinge, between)) ?? []
    }),
    display: { ...display, angles: [], plate, turn: 0 },
  }
}
