import type { Finding } from '../length/finding.ts'
import { mustCover } from '../length/grid.ts'
import { type Length, minus, mm, part } from '../length/length.ts'
import type { Assembly } from './assembly.ts'
import { equationsAt } from './equations.ts'
import { linkageOf } from './joints.ts'
import { framesAt, type Linkage } from './linkage.ts'
import type { Model } from './model.ts'
import { boxRound, cornersOf, facing, moved, placed } from './place.ts'
import type { Closed, Laid, Placement, Vector } from './pose.ts'
import type { Rings } from './rings.ts'
import { sayNames } from './say.ts'
import { solveFolds } from './solve.ts'
import { stackingOf } from './stacking.ts'
import { lengthOf } from './whole.ts'

/** Walls that should meet may be this far apart, in mm, for errors of rounding. */
const sameEdge = 1e-6

/** Whether some crease is neither flat nor folded when the card is shut. */
export const isBox = ({ links }: Assembly): boolean =>
  links.some(({ shut }) => shut !== undefined && shut % 180 !== 0)

/**
 * Sets up a card that is not laid flat: its creases are bent as the structure says, and the rest follows from its rings.
 *
 * @returns undefined, with a finding, when its walls do not meet.
 */
export function boxOf(
  assembly: Assembly,
  rings: Rings,
  findings: Finding[],
): { folds: readonly number[]; closed: () => Closed } | undefined {
  const { links } = assembly
  const free = links.flatMap(({ shut }, i) => (shut === undefined && rings.groupOf[i] !== -1 ? [i] : []))
  const guess = links.map(({ shut }, i) => ((shut ?? (free.includes(i) ? 90 : 180)) * Math.PI) / 180)
  const linkage = linkageOf(assembly, rings, guess)
  const folds = solveFolds(linkage, free, guess, { held: [], reach: [] })
  if (folds) return { folds, closed: () => closedBox(assembly, linkage, folds) }
  findings.push(doesNotClose(assembly, linkage, guess))
  return undefined
}

function doesNotClose(
  { model, plates, links }: Assembly,
  linkage: Linkage,
  folds: readonly number[],
): Finding {
  const { residual } = equationsAt(linkage, folds, { held: [], reach: [] })
  const perRing = linkage.closing.map((link, k) => ({
    link,
    gap: Math.max(...residual.slice(k * 9, k * 9 + 9).map(Math.abs)) * linkage.scale,
  }))
  const worst = perRing.reduce((a, b) => (b.gap > a.gap ? b : a))
  const { p, q } = links[worst.link] ?? { p: 0, q: 0 }
  const names = sayNames([p, q].map((i) => model.plates[plates[i]?.index ?? 0]?.name ?? ''))
  const by = `${Number(Math.max(worst.gap, sameEdge).toFixed(2))} mm`
  return {
    rule: 'does-not-close',
    severity: 'error',
    message: `When the walls stand, ${names} do not meet: they are ${by} apart`,
    suggestion: `Make one of the walls of that ring ${by} longer or shorter`,
  }
}

/** Where everything is in the box, seen with the face of the plate that stays put towards the viewer. */
function closedBox(assembly: Assembly, linkage: Linkage, folds: readonly number[]): Closed {
  const { model, plates } = assembly
  const frames = framesAt(linkage, folds)
  const seen = (heights: readonly number[]): Placement[] => {
    const all = placed(assembly, frames, heights)
    const shown = all[plates.findIndex(({ index }) => index === model.shown)]
    return shown ? all.map(facing(shown)) : all
  }
  const bare = seen(plates.map(() => 0))
  const [low, high] = boxRound(assembly, bare)
  const names = plates.map(({ index }) => model.plates[index]?.name ?? '')
  const length = (x: number): Length => lengthOf(x * Number(model.perMm), model.perMm)
  const laid = bare.map((at, i): Laid => {
    const corners = cornersOf(assembly, i, at)
    const [left, right] = ends(corners, 0)
    const [bottom, top] = ends(corners, 1)
    return {
      plate: names[i] ?? '',
      faceUp: at.normal[2] > 0,
      left: length(left - low[0]),
      bottom: length(bottom - low[1]),
      size: { width: minus(length(right), length(left)), height: minus(length(top), length(bottom)) },
    }
  })
  const real = seen(stackingOf(assembly))
  const depths = real.map((at, i) => {
    const plate = plates[i]?.index ?? 0
    const half = (model.plates[plate]?.caliper ?? 0) / Number(model.thinPerMm) / 2
    const [back, front] = ends(cornersOf(assembly, i, at), 2)
    const across = Math.abs(at.normal[2])
    const padsTo = (front: boolean): number => padsOn(model, plate, front === at.normal[2] > 0)
    return { back: back - (half + padsTo(false)) * across, front: front + (half + padsTo(true)) * across }
  })
  const back = Math.min(...depths.map((depth) => depth.back))
  const front = Math.max(...depths.map((depth) => depth.front))
  const order = names.map((name, i) => ({ name, at: depths[i]?.front ?? 0 })).sort((x, y) => y.at - x.at)
  return {
    isFlat: false,
    size: { width: length(high[0] - low[0]), height: length(high[1] - low[1]) },
    plates: laid,
    order: order.map(({ name }) => name),
    map: [],
    // From sines: to the next hundredth of a millimetre.
    thickness: mustCover(mm(Number((front - back).toFixed(6))), part(mm(1), 100)),
    pose: new Map(real.map((at, i) => [names[i] ?? '', moved(at, [-low[0], -low[1], -back])])),
  }
}

/** The height of the highest pad on one side of a plate, in mm. */
function padsOn({ pads, thinPerMm }: Model, plate: number, front: boolean): number {
  const own = pads.filter((pad) => pad.onto === plate && pad.front === front)
  return Math.max(0, ...own.map(({ height }) => height)) / Number(thinPerMm)
}

const ends = (points: readonly Vector[], axis: 0 | 1 | 2): [number, number] => {
  const all = points.map((point) => point[axis])
  return [Math.min(...all), Math.max(...all)]
}
