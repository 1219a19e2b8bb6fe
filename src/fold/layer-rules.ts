import { determinant, identity } from './affine.ts'
import { type Clash, type LayerProblem, type ProblemBuilder, problemBuilder } from './layer-problem.ts'
import type { LaidCrease, Layout } from './layout.ts'
import type { Cell, Slice } from './slices.ts'

/**
 * Sets up which plate of each overlapping pair lies in front. The conditions are those of flat folding: a valley or
 * mountain fixes its own two plates; what runs past a fold does not lie between its two plates; two folds at one place
 * nest or lie beside each other; what lies open goes on as one layer; and being in front is transitive. Bonds add that
 * what is stuck on lies directly on its side.
 */
export function layerProblemOf(layout: Layout): LayerProblem {
  const builder = problemBuilder(layout.shapes.length)
  const { groups } = layout
  for (const shapes of groups)
    for (const i of shapes) for (const j of shapes) if (i < j) builder.overlap(i, j)
  addFolds(layout, builder)
  addBonds(layout, builder)
  for (const slice of layout.slices) addCreases(layout, slice, builder)
  addTransitivity(layout, builder)
  return builder.problem()
}

function addFolds({ creases, faceUp }: Layout, { add, inFront }: ProblemBuilder): void {
  for (const { link, folded } of creases) {
    const { p, q, valley } = link
    const front = valley === faceUp[p] ? inFront(q, p) : inFront(p, q)
    if (folded) add('odd', [front], { plates: [p, q], crease: link })
  }
}

function addBonds(layout: Layout, builder: ProblemBuilder): void {
  const { assembly, closing, faceUp, groups } = layout
  const { plates, model } = assembly
  const { add, alike, inFront } = builder
  for (const [i, a] of plates.entries())
    for (const [j, b] of plates.entries())
      if (i < j && a.body === b.body) {
        const iFirst = a.level > b.level === determinant(closing.place[a.body] ?? identity) > 0
        add('odd', [iFirst ? inFront(i, j) : inFront(j, i)], { plates: [i, j] })
      }
  const numbers = new Map(plates.map(({ index }, i) => [index, i]))
  for (const bond of model.bonds) {
    const [i, j] = [numbers.get(bond.plate), numbers.get(bond.onto)]
    if (i === undefined || j === undefined) continue
    const front = bond.front === faceUp[j] ? inFront(i, j) : inFront(j, i)
    add('odd', [front], { plates: [i, j] })
    for (const shapes of groups.filter((g) => g.includes(i) && g.includes(j)))
      for (const k of shapes)
        if (plates[k]?.body !== plates[i]?.body) alike(inFront(i, k), inFront(j, k), { plates: [k, i, j] })
  }
}

interface Side {
  readonly creases: readonly LaidCrease[]
  readonly shapes: readonly number[]
}

/** What happens along one slice at each place where there are creases. */
function addCreases({ creases }: Layout, { v, cells }: Slice, { add, alike, inFront }: ProblemBuilder): void {
  const here = creases.filter(({ from, to }) => from < v && v < to)
  for (const u of apart(here.map((crease) => crease.at(v)))) {
    const at = here.filter((crease) => near(crease.at(v), u))
    const left = shapesOf(cells.find((cell) => near(cell.to, u)))
    const right = shapesOf(cells.find((cell) => near(cell.from, u)))
    const through = left.filter((shape) => right.includes(shape))
    const open = at.filter(({ folded }) => !folded)
    const sides = [left, right].map((shapes): Side => {
      const tacos = at.filter(
        ({ folded, link }) => folded && shapes.includes(link.p) && shapes.includes(link.q),
      )
      return { creases: tacos, shapes }
    })
    for (const { creases: tacos, shapes } of sides)
      for (const [n, { link }] of tacos.entries()) {
        const { p, q } = link
        const past = [...through, ...open.map((o) => (shapes.includes(o.link.p) ? o.link.p : o.link.q))]
        for (const k of past) alike(inFront(p, k), inFront(q, k), { plates: [k, p, q], crease: link })
        for (const { link: other } of tacos.slice(n + 1)) {
          const both = [p, q].flatMap((i) => [other.p, other.q].map((j) => inFront(i, j)))
          add('even', both, { plates: [other.p, p, q], crease: link })
        }
      }
    for (const [n, { link }] of open.entries()) {
      const [l, r] = left.includes(link.p) ? [link.p, link.q] : [link.q, link.p]
      const clash = (k: number): Clash => ({ plates: [k, l, r], crease: link })
      for (const k of through) alike(inFront(l, k), inFront(r, k), clash(k))
      for (const { link: other } of open.slice(n + 1)) {
        const [l2, r2] = left.includes(other.p) ? [other.p, other.q] : [other.q, other.p]
        alike(inFront(l, l2), inFront(r, r2), clash(l2))
      }
    }
  }
}

const shapesOf = (cell: Cell | undefined): readonly number[] => cell?.shapes ?? []

/** The values, without those that are as good as one before. */
const apart = (values: readonly number[]): number[] =>
  values.filter((x, i) => values.findIndex((y) => near(x, y)) === i)

const near = (x: number, y: number): boolean => Math.abs(x - y) < 1e-6

/**
 * Of three plates on each other none goes round in a circle. Three of one body need no rule: the height at which each is
 * stuck on says their order already.
 */
function addTransitivity({ assembly: { plates }, groups }: Layout, { noCircle }: ProblemBuilder): void {
  const bodies = plates.map(({ body }) => body)
  for (const shapes of groups)
    for (const [x, i] of shapes.entries())
      for (const [y, j] of shapes.entries())
        if (x < y) {
          const body = bodies[i] === bodies[j] ? bodies[i] : undefined
          for (const k of shapes.slice(y + 1)) if (body === undefined || bodies[k] !== body) noCircle(i, j, k)
        }
}
