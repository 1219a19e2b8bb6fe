import type { Structure } from '../../card/structure.ts'
import type { Spot } from '../num.ts'
import type { BoxCut, WallCut } from './box.ts'
import type { Target } from './names.ts'

/** A wall of a box as it is drawn, z upwards, in mm on paper. */
export interface DrawnWall {
  readonly plate: string
  readonly thick: number
  readonly from: Spot
  readonly to: Spot
}

/** Walls that creases join, as one sheet. */
export interface Bent {
  readonly plates: readonly string[]
  readonly outline: readonly Spot[]
  readonly panels: readonly { readonly plate: string; readonly outline: readonly Spot[] }[]
}

/**
 * The walls to scale. Sheets that are stuck together are as far apart as they are drawn thick, or one would hide the
 * other.
 *
 * @param times by how much sheets are drawn thicker than they are.
 */
export function drawnWalls(
  { walls }: BoxCut,
  structure: Structure,
  scale: number,
  times: number,
): DrawnWall[] {
  const shifts = shiftsOf(walls, structure, scale * (times - 1))
  return walls.map(({ plate, caliper, from, to }) => {
    const [dx, dz] = shifts.get(plate) ?? [0, 0]
    return {
      plate,
      thick: caliper * scale * times,
      from: [from[0] * scale + dx, from[1] * scale + dz],
      to: [to[0] * scale + dx, to[1] * scale + dz],
    }
  })
}

/** How far each plate is moved away from the one that carries it. @param more mm on paper for each mm of sheet. */
function shiftsOf(walls: readonly WallCut[], { bonds }: Structure, more: number): Map<string, Spot> {
  const byName = new Map(walls.map((wall) => [wall.plate, wall]))
  const shifts = new Map<string, Spot>()
  const shiftOf = (name: string, depth: number): Spot => {
    const known = shifts.get(name)
    if (known) return known
    const bond = bonds.find(({ plate, onto }) => plate === name && byName.has(onto))
    const [own, under] = [byName.get(name), byName.get(bond?.onto ?? '')]
    if (!bond || !own || !under || depth > bonds.length) return [0, 0]
    const [baseX, baseZ] = shiftOf(bond.onto, depth + 1)
    const [nx, nz] = apartFrom(under, own)
    const by = ((own.caliper + under.caliper) / 2) * more
    const shift: Spot = [baseX + nx * by, baseZ + nz * by]
    shifts.set(name, shift)
    return shift
  }
  for (const { plate } of walls) shiftOf(plate, 0)
  return shifts
}

/** The direction across one sheet in which another lies on it. */
function apartFrom(under: WallCut, own: WallCut): Spot {
  const [dx, dz] = [under.to[0] - under.from[0], under.to[1] - under.from[1]]
  const long = Math.hypot(dx, dz) || 1
  const [nx, nz] = [-dz / long, dx / long]
  const [mx, mz] = [
    (own.from[0] + own.to[0]) / 2 - under.from[0],
    (own.from[1] + own.to[1]) / 2 - under.from[1],
  ]
  return mx * nx + mz * nz < 0 ? [-nx, -nz] : [nx, nz]
}

/** Where a name points at a wall. */
export function targetOfWall({ from, to, thick }: DrawnWall): Target {
  const [left, right] = from[0] < to[0] ? [from, to] : [to, from]
  const [dx, dz] = [right[0] - left[0], right[1] - left[1]]
  if (Math.abs(dx) > Math.abs(dz))
    return {
      from: left[0] + dx * 0.12,
      to: right[0] - dx * 0.12,
      z: (x) => left[1] + ((x - left[0]) / dx) * dz,
    }
  const [low, high] = [Math.min(left[1], right[1]), Math.max(left[1], right[1])]
  const x = (left[0] + right[0]) / 2
  return { from: x - thick / 6, to: x + thick / 6, z: () => (low + high) / 2, upright: [low, high] }
}
