import { type Size, shorter, toMm, zero } from '../length/length.ts'
import type { Border, Card, Layer } from './card.ts'
import { ontoPanel } from './onto.ts'
import { type Reading, report } from './reading.ts'
import type { Bond, Fold, Polygon, Segment, Structure } from './structure.ts'
import { edges, widerBorders } from './wider-borders.ts'

type Spot = readonly [x: number, y: number]

/**
 * Tells of each layer that leaves its panel over a crease that closes over it. Borders count from the rectangle round a
 * panel, so where a panel is cut away its layer lies over whatever is hinged there. On the other side, from which the
 * crease turns away, that is how an opening is hidden.
 */
export function checkOffPanel(reading: Reading, { layers, structure }: Card): void {
  for (const layer of layers)
    for (const [i, name] of layer.on.entries()) {
      const bond = structure.bonds.find(({ plate, onto }) => plate === layer.plates[i] && onto === name)
      const panel = structure.plates.find((plate) => plate.name === name)
      const size = sizeIn(structure, layer)
      // A border below nothing has been told already.
      if (!panel || !bond || !size || edges.some((edge) => shorter(layer.border[edge], zero))) continue
      const closing: Fold = layer.side === 'face' ? 'valley' : 'mountain'
      const creases = structure.hinges.filter(
        ({ between, fold }) => fold === closing && between.includes(name),
      )
      const under = (more: Partial<Border>) =>
        creases.find(({ line }) => isUnder(line, insetBy(size, more), bond))
      const crease = under({})
      if (!crease) continue
      const other = crease.between.find((plate) => plate !== name) ?? ''
      report(
        reading,
        'sticks-out',
        reading.places.get(layer.name) ?? { line: 1, column: 1 },
        `\`${layer.name}\` sticks out of \`${name}\` over the ${closing} crease of \`${other}\`, which closes over it`,
        widerBorders(reading, layer, size, (more) => !under(more) && isOn(panel.outline, size, more, bond)),
      )
    }
}

const sizeIn = ({ pieces }: Structure, { name }: Layer): Size | undefined =>
  pieces.find((piece) => piece.name === name && piece.kind === 'layer')?.size

/** Less than this, in mm, is an error of rounding: slanting creases have some. */
const small = 1e-6

/** Lower left and upper right corner of a layer in its own frame, inset by more. */
function insetBy(
  size: Size,
  { left = zero, right = zero, top = zero, bottom = zero }: Partial<Border>,
): [Spot, Spot] {
  return [
    [toMm(left), toMm(bottom)],
    [toMm(size.width) - toMm(right), toMm(size.height) - toMm(top)],
  ]
}

/** Whether a crease of a panel runs under a layer on it. */
function isUnder({ from, to }: Segment, corners: readonly Spot[], bond: Bond): boolean {
  const laid = corners.map(ontoPanel(bond))
  const [xs, ys] = [laid.map(([x]) => x), laid.map(([, y]) => y)]
  const low: Spot = [Math.min(...xs) + small, Math.min(...ys) + small]
  const high: Spot = [Math.max(...xs) - small, Math.max(...ys) - small]
  const [start, end] = [from, to].map(({ x, y }): Spot => [toMm(x), toMm(y)])
  return start !== undefined && end !== undefined && runsThrough([start, end], low, high)
}

/** Whether the middle of a layer lies on its panel: without a crease of it underneath the rest does too. */
function isOn(panel: Polygon, size: Size, more: Partial<Border>, bond: Bond): boolean {
  const [[x0, y0], [x1, y1]] = insetBy(size, more)
  const [x, y] = ontoPanel(bond)([(x0 + x1) / 2, (y0 + y1) / 2])
  const corners = panel.map((corner): Spot => [toMm(corner.x), toMm(corner.y)])
  const beside = corners.filter(([u1, v1], i) => {
    const [u0, v0] = corners.at(i - 1) ?? [u1, v1]
    return v0 > y !== v1 > y && x < u0 + ((y - v0) / (v1 - v0)) * (u1 - u0)
  })
  return beside.length % 2 === 1
}

/** Whether a line has a part inside a rectangle (Liang and Barsky's clipping). */
function runsThrough([from, to]: [Spot, Spot], low: Spot, high: Spot): boolean {
  let [enters, leaves] = [0, 1]
  for (const axis of [0, 1] as const) {
    const by = to[axis] - from[axis]
    const [a, b] = [low[axis] - from[axis], high[axis] - from[axis]]
    if (by === 0 && (a >= 0 || b <= 0)) return false
    if (by === 0) continue
    enters = Math.max(enters, Math.min(a / by, b / by))
    leaves = Math.min(leaves, Math.max(a / by, b / by))
  }
  return enters < leaves
}
