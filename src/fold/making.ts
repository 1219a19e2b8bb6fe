import type { Structure } from '../card/structure.ts'
import type { Assembly, Link } from './assembly.ts'
import { flatSheetOf } from './flat-sheet.ts'
import type { Motion } from './motion.ts'
import { cornersOf, moved, movedTo } from './place.ts'
import type { Closed, Making, Placement, Pose, Vector } from './pose.ts'
import { named, posing } from './posing.ts'
import type { Sheet } from './sheet.ts'
import { farthest } from './solve.ts'
import { type Leg, legsByHand, legsTogether } from './way-from-flat.ts'

/** A card that shuts, and how it opens. */
export interface Folded {
  readonly assembly: Assembly
  readonly closed: Closed
  /** Of its links when it is shut, in radians. */
  readonly folds: readonly number[]
  readonly motion: Motion
  /** The way from shut (0) to standing (1). */
  readonly poseBetween: (share: number) => Pose | undefined
  /** Its creases, in an order in which a hand can fold them. */
  readonly folding: readonly (readonly [string, string])[] | undefined
}

/** A leg with all plates in their places. */
interface Walk {
  readonly weight: number
  readonly bends: readonly (readonly [string, string])[]
  readonly joins: readonly string[]
  readonly poseAt: (share: number) => Pose | undefined
}

/** Acts that change nothing to speak of, in radians, still take this much of the way: things are stuck on in them. */
const leastWeight = 0.3

/**
 * How a card is made from the flat sheet. What no bond holds is folded crease by crease until it is shut. Else the
 * sheet is bent as it stands, what holds it there is stuck on, and the card is shut.
 *
 * @param sheetFor makes the linkage of a structure; undefined when it has none.
 */
export function makingOf(
  structure: Structure,
  card: Folded,
  sheetFor: (structure: Structure) => Sheet | undefined,
): Making | undefined {
  const { structure: lying, later, isJoined } = flatSheetOf(structure)
  const sheet = sheetFor(lying)
  if (!sheet) return undefined
  const stands = card.motion.foldsAt(1)
  const isLoose = later.length === 0 && !isJoined
  const shut = foldsOf(sheet, card, card.folds)
  const walked = (legs: readonly Leg[], end: number): Walk[] => {
    const poseAt = poser(sheet, card, shut, lying.display.plate, card.poseBetween(end) ?? new Map())
    return legs.map((leg) => ({
      weight: leg.weight,
      bends: leg.bends.map((link) => namesOf(sheet.assembly, link)),
      joins: [],
      poseAt: (share) => poseAt(leg.foldsAt(share)),
    }))
  }
  if (isLoose && sheet.rings.cycles.length === 0)
    return making(walked(legsByHand(sheet, shut, orderOf(sheet, card.folding)), 0))
  if (!stands) return undefined
  const bends = card.folds.flatMap((fold, i) => (Math.abs(fold - (stands[i] ?? fold)) > 1e-6 ? [i] : []))
  return making([
    ...walked(legsTogether(sheet, foldsOf(sheet, card, stands), structure.display), 1),
    {
      weight: farthest(stands, card.folds),
      bends: bends.map((link) => namesOf(card.assembly, link)),
      joins: later,
      poseAt: (share) => card.poseBetween(1 - share),
    },
  ])
}

/**
 * Where the plates of the sheet are at its folds: on the table, and with `anchor` where it is in the pose that the way
 * leads to.
 */
function poser(
  { assembly, linkage }: Sheet,
  { closed }: Folded,
  shut: readonly number[],
  anchor: string,
  end: Pose,
): (folds: readonly number[]) => Pose {
  const { laid } = posing(assembly, linkage, closed, shut)
  const fixed = assembly.plates.findIndex(({ index }) => assembly.model.plates[index]?.name === anchor)
  const names = assembly.plates.map(({ index }) => assembly.model.plates[index]?.name ?? '')
  const lowest = (all: readonly (Placement | undefined)[]): number =>
    Math.min(...all.flatMap((at, i) => cornersOf(assembly, i, at).map(([, y]) => y)))
  const table = lowest(names.map((name) => end.get(name)))
  return (folds) => {
    const all = laid(folds)
    const [from, to] = [all[fixed], end.get(anchor)]
    const there = from && to ? all.map(movedTo(from, to)) : all
    const up: Vector = [0, table - lowest(there), 0]
    return named(
      assembly,
      there.map((at) => moved(at, up)),
    )
  }
}

/** Walks one after the other as one way, each as long as it bends. */
function making(walks: readonly Walk[]): Making {
  const lengths = walks.map(({ weight }) => Math.max(weight, leastWeight))
  const whole = lengths.reduce((sum, length) => sum + length, 0)
  let end = 0
  const acts = walks.map(({ bends, joins }, i) => {
    const from = end
    end = i === walks.length - 1 ? 1 : from + (lengths[i] ?? 0) / whole
    return { from, to: end, bends, joins }
  })
  return {
    acts,
    poseAt(share) {
      const i = acts.findIndex(({ to }) => share <= to)
      const [act, walk] = [acts[i], walks[i]]
      return act && walk && share >= 0 ? walk.poseAt((share - act.from) / (act.to - act.from)) : undefined
    },
  }
}

/** How far the links of the sheet are bent where those of the whole card are bent by `folds`; hems are folded. */
function foldsOf(sheet: Sheet, { assembly }: Folded, folds: readonly number[]): number[] {
  const known = new Map(assembly.links.map((_, i) => [keyOf(namesOf(assembly, i)), folds[i] ?? 0]))
  return sheet.assembly.links.map((_, i) => known.get(keyOf(namesOf(sheet.assembly, i))) ?? Math.PI)
}

/** The links of the sheet in the order of creases; undefined when there is no order. */
const orderOf = (
  { assembly }: Sheet,
  folding: readonly (readonly [string, string])[] | undefined,
): number[] | undefined => {
  const keys = assembly.links.map((_, i) => keyOf(namesOf(assembly, i)))
  return folding?.flatMap((names) => keys.flatMap((key, i) => (key === keyOf(names) ? [i] : [])))
}

const keyOf = (names: readonly string[]): string => [...names].sort().join('\n')

function namesOf({ links, plates, model }: Assembly, link: number): [string, string] {
  const { p, q }: Pick<Link, 'p' | 'q'> = links[link] ?? { p: 0, q: 0 }
  const nameOf = (i: number): string => model.plates[plates[i]?.index ?? 0]?.name ?? ''
  return [nameOf(p), nameOf(q)]
}
