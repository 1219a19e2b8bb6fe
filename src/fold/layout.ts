import type { Closing } from './closings.ts'
import type { Link, Section } from './section.ts'
import { type Shape, type Slice, slicesOf } from './slices.ts'

/** The card laid flat by one closing. */
export interface Layout {
  readonly section: Section
  readonly closing: Closing
  /** What each plate covers. */
  readonly shapes: readonly Shape[]
  /** Whether the face of each plate looks at the viewer. */
  readonly faceUp: readonly boolean[]
  readonly creases: readonly LaidCrease[]
  readonly slices: readonly Slice[]
  /** Plates that lie on each other somewhere, without sets that are part of a larger one. */
  readonly groups: readonly (readonly number[])[]
}

export interface LaidCrease {
  readonly link: Link
  readonly u: number
  readonly folded: boolean
}

/** Lays every plate where a closing puts its body. */
export function layOut(section: Section, closing: Closing): Layout {
  const { plates, links, hems } = section
  const { direction, offset, folded } = closing
  const at = (body: number, u: number): number => (offset[body] ?? 0) + (direction[body] ?? 1) * u
  const shapes = plates.map(({ body, rings }) =>
    rings.map((ring) => ring.map(([u, v]) => [at(body, u), v] as const)),
  )
  const faceUp = plates.map(({ body, over }) => (direction[body] ?? 1) > 0 !== over)
  const creases = [
    ...links.map((link, i) => ({ link, u: at(link.a, link.ua), folded: folded[i] ?? false })),
    ...hems.map((link) => ({ link, u: at(link.a, link.ua), folded: true })),
  ]
  const cuts = creases.flatMap(({ link }) => [link.from, link.to])
  const slices = slicesOf(shapes, cuts)
  return { section, closing, shapes, faceUp, creases, slices, groups: groupsIn(slices) }
}

function groupsIn(slices: readonly Slice[]): (readonly number[])[] {
  const sets = new Map<string, readonly number[]>()
  for (const { cells } of slices) for (const { shapes } of cells) sets.set(shapes.join(), shapes)
  const all = [...sets.values()].sort((a, b) => b.length - a.length)
  const largest: (readonly number[])[] = []
  for (const one of all)
    if (!largest.some((other) => one.every((shape) => other.includes(shape)))) largest.push(one)
  return largest
}
