import type { Spot } from '../num.ts'
import type { BoxCut } from './box.ts'
import type { Bent, DrawnWall } from './walls.ts'

/** Follows each sheet of a box round its corners. */
export function bentSheets(walls: readonly DrawnWall[], { corners }: BoxCut, scale: number): Bent[] {
  const left = new Set(walls.keys())
  const links = corners.map(
    ({ between, at }): Link => ({
      walls: between.map((plate) => nearestTo(walls, plate, [at[0] * scale, at[1] * scale])),
    }),
  )
  const linksOf = (wall: number) =>
    links.filter((link) => link.walls.includes(wall) && !link.walls.includes(-1))
  const sheets: Bent[] = []
  const starts = [...walls.keys()].sort((a, b) => linksOf(a).length - linksOf(b).length)
  for (const start of starts) {
    if (!left.has(start)) continue
    const chain: number[] = []
    const used = new Set<Link>()
    for (let at: number | undefined = start; at !== undefined && left.has(at); ) {
      chain.push(at)
      left.delete(at)
      const link: Link | undefined = linksOf(at).find((one) => !used.has(one))
      if (link) used.add(link)
      const here: number = at
      at = link?.walls.find((wall) => wall !== here)
    }
    sheets.push(bent(chain.flatMap((i) => walls[i] ?? [])))
  }
  return sheets
}

/** Two walls by their places; -1 for one that the cut misses. */
interface Link {
  readonly walls: readonly number[]
}

const nearestTo = (walls: readonly DrawnWall[], plate: string, at: Spot): number =>
  walls.reduce((best, wall, i) => {
    if (wall.plate !== plate) return best
    const other = walls[best]
    return !other || distance(wall, at) < distance(other, at) ? i : best
  }, -1)

const apart = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1])
const distance = ({ from, to }: DrawnWall, at: Spot): number => Math.min(apart(from, at), apart(to, at))

/** One sheet round its corners: its middle, and both its surfaces. */
function bent(chain: readonly DrawnWall[]): Bent {
  const middle = middleOf(chain)
  const thick = Math.max(...chain.map((wall) => wall.thick))
  return {
    plates: chain.map(({ plate }) => plate),
    outline: ribbon(middle, thick),
    panels: chain.map(({ plate }, i) => ({ plate, outline: ribbon(middle.slice(i, i + 2), thick) })),
  }
}

function middleOf(chain: readonly DrawnWall[]): Spot[] {
  const [first] = chain
  if (!first) return []
  const turned = chain.map((wall, i): readonly [Spot, Spot] => {
    const neighbour = chain[i + 1] ?? chain[i - 1]
    if (!neighbour) return [wall.from, wall.to]
    const isNext = chain[i + 1] !== undefined
    const ahead = distance(neighbour, wall.to) <= distance(neighbour, wall.from)
    return ahead === isNext ? [wall.from, wall.to] : [wall.to, wall.from]
  })
  const spots: Spot[] = [turned[0]?.[0] ?? first.from]
  for (const [i, here] of turned.entries()) {
    const next = turned[i + 1]
    spots.push(next ? (meet(here, next) ?? here[1]) : here[1])
  }
  return spots
}

/** Where two straight lines meet; nothing if they run side by side. */
function meet([a, b]: readonly [Spot, Spot], [c, d]: readonly [Spot, Spot]): Spot | undefined {
  const [ux, uz, vx, vz] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]]
  const turn = ux * vz - uz * vx
  if (Math.abs(turn) < 0.1 * Math.hypot(ux, uz) * Math.hypot(vx, vz)) return undefined
  const share = ((c[0] - a[0]) * vz - (c[1] - a[1]) * vx) / turn
  return [a[0] + ux * share, a[1] + uz * share]
}

function ribbon(middle: readonly Spot[], thick: number): Spot[] {
  const direction = (p?: Spot, q?: Spot): Spot | undefined => {
    const long = p && q ? apart(p, q) : 0
    return p && q && long > 1e-9 ? [(q[0] - p[0]) / long, (q[1] - p[1]) / long] : undefined
  }
  const side = (way: number): Spot[] =>
    middle.map((spot, i): Spot => {
      const [before, after] = [direction(middle[i - 1], spot), direction(spot, middle[i + 1])]
      const [a, b] = [before ?? after ?? [1, 0], after ?? before ?? [1, 0]]
      const [nx, nz] = [-(a[1] + b[1]), a[0] + b[0]]
      // Along the line that halves the corner, so that both walls stay as thick.
      const share = (way * thick) / Math.max(0.4, nx * nx + nz * nz)
      return [spot[0] + nx * share, spot[1] + nz * share]
    })
  return [...side(1), ...side(-1).reverse()]
}
