import { minus, negative, plus, type Size, times, zero } from '../../length/length.ts'
import { point } from '../strip.ts'
import type { Bond, Display, Point, Segment } from '../structure.ts'
import type { BuildInput, Built } from '../style.ts'
import { turnOf } from '../turn.ts'
import { spineOf } from './spine.ts'

/**
 * Builds a card with its spine where the block says.
 *
 * @param build builds it with the spine on the left, from the shut size as it is then.
 * @param rests how it is shown with the spine at the top: lying on its back, or hanging.
 */
export function bySpine(
  input: BuildInput,
  build: (closed: Size) => Built,
  rests: Display['rests'] = 'flat',
): Built {
  const built = build(closedBySpine(input))
  return spineOf(input) === 'top' ? onTop(built, rests) : built
}

/** The shut size with the spine on the left: what goes away from the spine is its width. */
export const closedBySpine = ({ closed, choices }: Pick<BuildInput, 'closed' | 'choices'>): Size =>
  spineOf({ choices }) === 'top' ? lyingDown(closed) : closed

const lyingDown = ({ width, height }: Size): Size => ({ width: height, height: width })

/**
 * Turns every piece of a card a quarter clockwise, so that what was on the left is at the top: a card with its spine on
 * the left, built for the shut size lying down, becomes one with its spine at the top.
 *
 * Plates keep their places in the structure, and with them the order in which they lie.
 */
function onTop(built: Built, rests: Display['rests']): Built {
  const sizes = new Map(built.pieces.map(({ name, size }) => [name, size]))
  const pieces = new Map(built.plates.map(({ name, piece }) => [name, piece]))
  const sizeOf = (plate: string): Size => sizes.get(pieces.get(plate) ?? '') ?? { width: zero, height: zero }
  return {
    ...built,
    pieces: built.pieces.map((piece) => ({
      ...piece,
      size: lyingDown(piece.size),
      cuts: piece.cuts.map((cut) => turnedLine(cut, piece.size)),
    })),
    plates: built.plates.map((plate) => ({
      ...plate,
      outline: plate.outline.map((p) => turned(p, sizeOf(plate.name))),
      holes: plate.holes.map((hole) => hole.map((p) => turned(p, sizeOf(plate.name)))),
    })),
    hinges: built.hinges.map((hinge) => ({
      ...hinge,
      line: turnedLine(hinge.line, sizeOf(hinge.between[0])),
    })),
    bonds: built.bonds.map((bond) => turnedBond(bond, sizeOf(bond.plate), sizeOf(bond.onto))),
    stops: built.stops.map((stop) => ({
      ...stop,
      edge: turnedLine(stop.edge, sizeOf(stop.plate)),
      line: turnedLine(stop.line, sizeOf(stop.onto)),
    })),
    display: { ...built.display, rests, turn: rests === 'flat' ? 0 : 30 },
    upsideDown: upsideDown(built),
  }
}

/** A point of a piece of this size after a quarter turn clockwise. */
const turned = ({ x, y }: Point, { width }: Size): Point => point(y, minus(width, x))

/** Level lines go on from left to right. */
function turnedLine({ from, to }: Segment, size: Size): Segment {
  const [a, b] = [turned(from, size), turned(to, size)]
  return a.x.gt(b.x) || a.y.gt(b.y) ? { from: b, to: a } : { from: a, to: b }
}

/**
 * With R the quarter turn, a bond q = M·p + at between the turned pieces is R·M·R⁻¹. Turning by M and R commute; turning
 * over does not, and comes out turned half round. What M' makes of the upper left corner of the turned piece of `p`
 * moves `at`.
 */
function turnedBond(bond: Bond, mine: Size, host: Size): Bond {
  const turn = bond.over ? (bond.turn + 180) % 360 : bond.turn
  const [cos, sin] = turnOf(turn)
  const at = turned(bond.at, host)
  return {
    ...bond,
    turn,
    at: point(plus(at.x, times(mine.width, sin)), minus(at.y, times(mine.width, cos))),
    ...(bond.slide && { slide: point(bond.slide.y, negative(bond.slide.x)) }),
  }
}

/**
 * Plates that level creases turn over an odd number of times, seen from the plate that stays put, or from what is stuck
 * face up on another and read with it: their outsides stand on their heads.
 */
function upsideDown({ hinges, bonds, display }: Built): string[] {
  const stuck = bonds.filter(({ side, over }) => side === 'face' && !over)
  const heads = new Map([display.plate, ...stuck.map(({ plate }) => plate)].map((name) => [name, false]))
  for (const [name, turnedOver] of heads)
    for (const { between } of hinges)
      if (between.includes(name))
        for (const other of between) if (!heads.has(other)) heads.set(other, !turnedOver)
  return [...heads].flatMap(([name, turnedOver]) => (turnedOver ? [name] : []))
}
