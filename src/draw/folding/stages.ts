import type { Act, Pose } from '../../fold/pose.ts'
import { facesOf } from '../face/face.ts'
import { paintOrder } from '../sort.ts'
import { lifted } from './lift.ts'
import { isTowards, movesBetween } from './moves.ts'
import { changeBetween, type Picture, pictureOf } from './seen.ts'
import type { Way } from './way.ts'

/**
 * What a stage shows: the flat sheet, creases that are being bent, pieces about to be stuck on, the sheet held as it
 * stands before it is shut, the shut card, or the standing one.
 */
export type StageKind = 'flat' | 'bent' | 'joined' | 'held' | 'shut' | 'standing'

/** A moment of the way that is worth a picture. */
export interface Moment {
  readonly kind: StageKind
  /** As a share of the way; 1 for the standing card too. */
  readonly at: number
  /** What is done in it. Of several acts, the last is seen. */
  readonly acts: readonly Act[]
  /** Plates that are stuck on in it. */
  readonly joins: readonly string[]
}

export interface Stage extends Moment {
  /** As it is seen: turned over if the other side is worked on; what is stuck on, where it will be. */
  readonly pose: Pose
  /** Whether the other side is seen. */
  readonly over: boolean
  readonly picture: Picture
}

/** An act is caught when so much of it is done. */
const caught = 0.55

/** As many pictures as a strip may have, and the least change, as a share of the picture, that is worth one. */
const [mostStages, fewestStages, leastChange] = [6, 3, 0.08]

/**
 * The stages of a way. There is one for the flat sheet, one for each act, caught part-way, one where pieces are stuck
 * on, one for the shut card and one for the standing one. Of more than six, those go whose pictures are most like the
 * one before or after; what they would have shown is told with the next.
 */
export function stagesOf(way: Way): Stage[] {
  const stages = chosen(way, momentsOf(way))
  const sides = sidesOf(way, stages)
  return stages.map((stage, i) => (sides[i] ? stageOf(way, stage, true) : stage))
}

function momentsOf({ acts, poseAt, standing }: Way): Moment[] {
  const start = poseAt(0)
  const end = poseAt(1)
  return [
    { kind: 'flat', at: 0, acts: [], joins: [] },
    ...acts.flatMap((act, i): Moment[] => {
      const before = acts[i - 1]
      const joins = act.joins.filter((name) => end?.has(name) && !start?.has(name))
      const again = before?.bends.some((one) =>
        act.bends.some(([a, b]) => one.includes(a) && one.includes(b)),
      )
      const begins = act.from + 1e-6
      return [
        ...(joins.length > 0
          ? [{ kind: 'joined' as const, at: begins, acts: [], joins }]
          : again
            ? [{ kind: 'held' as const, at: act.from, acts: [], joins: [] }]
            : []),
        ...(act.bends.length > 0
          ? [{ kind: 'bent' as const, at: act.from + caught * (act.to - act.from), acts: [act], joins: [] }]
          : []),
      ]
    }),
    { kind: 'shut', at: 1, acts: [], joins: [] },
    ...(standing ? [{ kind: 'standing' as const, at: 1, acts: [], joins: [] }] : []),
  ]
}

/** The moments whose pictures differ most. The flat sheet and the shut card always stay. */
function chosen(way: Way, moments: readonly Moment[]): Stage[] {
  let rest = moments.filter((moment) => poseOf(way, moment)).map((moment) => stageOf(way, moment, false))
  const changes = new Map<Picture, Map<Picture, number>>()
  const change = (a: Picture | undefined, b: Picture): number => {
    if (!a) return 1
    const known = changes.get(a) ?? new Map<Picture, number>()
    changes.set(a, known)
    const value = known.get(b) ?? changeBetween(a, b)
    known.set(b, value)
    return value
  }
  for (;;) {
    const losses = rest.map(({ kind, picture }, i) => {
      if (kind === 'flat' || kind === 'shut') return Number.POSITIVE_INFINITY
      const next = rest[i + 1]
      return Math.min(
        change(rest[i - 1]?.picture, picture),
        next ? change(picture, next.picture) : Number.POSITIVE_INFINITY,
      )
    })
    const least = Math.min(...losses)
    const isTooMany = rest.length > mostStages
    if (!isTooMany && (least >= leastChange || rest.length <= fewestStages)) break
    rest = without(way, rest, losses.indexOf(least))
  }
  return rest
}

/** What is done in a picture that is left out is told with the next one. */
function without(way: Way, all: readonly Stage[], left: number): Stage[] {
  const gone = all[left]
  return all.flatMap((stage, i) => {
    if (i === left) return []
    if (i !== left + 1 || !gone || stage.kind === 'standing') return [stage]
    const [acts, joins] = [
      [...gone.acts, ...stage.acts],
      [...gone.joins, ...stage.joins],
    ]
    const told = { ...stage, acts, joins }
    return [stage.kind === 'joined' && gone.joins.length > 0 ? stageOf(way, told, false) : told]
  })
}

/**
 * Whether each moment is seen from the other side, since a hand works there. It does where the sheet lies flat before and
 * after and folds away from the viewer. A strip begins on the side that is worked on first.
 */
function sidesOf(way: Way, moments: readonly Moment[]): boolean[] {
  const wanted = moments.map((moment) => (moment.kind === 'standing' ? false : sideOf(way, moment)))
  let over = wanted.find((side) => side !== undefined) ?? false
  return wanted.map((side) => {
    over = side ?? over
    return over
  })
}

function sideOf(way: Way, { kind, acts, at }: Moment): boolean | undefined {
  const act = acts.at(-1)
  if (kind !== 'bent' || !act) return undefined
  const [from, now, to] = [act.from, at, act.to].map(way.poseAt)
  if (!from || !now || !to || !liesFlat(from) || !liesFlat(to)) return undefined
  const sides = movesBetween(way.structure, from, now, [act]).map((move) =>
    isTowards(way.structure, move, now, way.camera.eye),
  )
  if (sides.length > 0 && sides.every((side) => !side)) return true
  return sides.length > 0 && sides.every((side) => side) ? false : undefined
}

/** Whether all plates lie in parallel planes. */
function liesFlat(pose: Pose): boolean {
  const [first, ...others] = [...pose.values()].map(({ normal }) => normal)
  return others.every((normal) => {
    const along = normal.reduce((sum, x, i) => sum + x * (first?.[i] ?? 0), 0)
    return Math.abs(along) > 0.999
  })
}

const poseOf = (way: Way, { kind, at }: Moment): Pose | undefined =>
  kind === 'standing' ? way.standing : way.poseAt(at)

function stageOf(way: Way, moment: Moment, over: boolean): Stage {
  const { structure, camera, closed } = way
  const plain: Pose = poseOf(way, moment) ?? new Map()
  const pose = over ? way.turnOver(plain) : plain
  const shown = moment.kind === 'joined' ? lifted(way, pose, moment.joins) : pose
  return {
    ...moment,
    pose,
    over,
    picture: pictureOf(paintOrder(facesOf(structure, shown), structure, camera, closed), camera),
  }
}
