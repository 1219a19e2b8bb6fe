import type { Act, Pose } from '../../fold/pose.ts'
import { groupBy } from '../../length/group-by.ts'
import type { Wording } from '../../wording/wording.ts'
import { dot } from '../space.ts'
import { bendsIn, bentBy, isTowards, movesBetween, seenFrom } from './moves.ts'
import type { Stage } from './stages.ts'
import type { Way } from './way.ts'

/** What is done in a stage, in few words: `fold the left door over`. */
export function wordsOf(way: Way, stage: Stage, wording: Wording): string {
  const { say } = wording
  const done = [
    ...(stage.acts.length > 0 ? [bending(way, stage, wording)] : []),
    ...(stage.joins.length > 0
      ? [say('figures.stick-on', { pieces: sticking(way, stage.joins, wording) })]
      : []),
  ]
  switch (stage.kind) {
    case 'flat':
      return flatWords(way, stage, wording)
    case 'held': {
      const glued = gluedAt(way, stage.at)
      const held =
        glued.length > 0
          ? say('figures.stick-down', { panels: the(glued, wording) })
          : say('figures.stands-like-this')
      return [...done, held].join('; ')
    }
    case 'standing':
      return say('figures.standing')
    case 'shut':
      return [...done, say('figures.shut')].join('; ')
    default:
      return done.join('; ')
  }
}

function flatWords({ structure, piece }: Way, { pose, picture }: Stage, { say, name }: Wording): string {
  const base = piece ?? structure.pieces.find(({ kind }) => kind === 'base')
  const plate = structure.plates.find((one) => one.piece === base?.name && pose.has(one.name))
  const normal = pose.get(plate?.name ?? '')?.normal
  const isFace = normal === undefined || dot(normal, picture.camera.eye) >= 0
  const [face, back] = base?.kind === 'base' ? ['inside', 'outside'] : ['face', 'back']
  const side = isFace ? face : back
  return piece
    ? say('figures.lay-piece-flat', { piece: name(piece.name), side })
    : say('figures.lay-sheet-flat', { side })
}

/** Whereto a panel is turned: it ends on what it hangs on, or stands off it. */
type Whereto = 'over' | 'behind' | 'up' | 'forward' | 'back' | 'down'

interface Turned {
  readonly name: string
  readonly whereto: Whereto
}

function bending(way: Way, stage: Stage, wording: Wording): string {
  const { say } = wording
  const { acts } = stage
  const turned = acts.flatMap((act) => turnedIn(way, act, stage.over) ?? [])
  const bends = acts.reduce((sum, { bends }) => sum + bends.length, 0)
  if (shuts(way, acts)) return say('figures.fold-shut')
  const [first] = turned
  if (turned.length < bends || !first) return say('figures.bend-creases', { count: bends })
  const isOneWay = turned.every(({ whereto }) => whereto === first.whereto)
  const isWhole = first.whereto === 'over' || first.whereto === 'behind'
  const names = [...new Set(turned.map(({ name }) => name))]
  return say('figures.fold-panels', {
    whereto: isOneWay ? first.whereto : isWhole ? 'fold' : 'bend',
    panels: the(names, wording),
  })
}

/** Whether these acts shut what has been bent before: the last of them bends the same creases further. */
function shuts(way: Way, acts: readonly Act[]): boolean {
  const last = way.acts.at(-1)
  if (!last || !acts.includes(last)) return false
  const earlier = way.acts.filter((act) => act !== last)
  return way.acts.some(({ joins }) => joins.length > 0) || last.bends.some((bend) => bendsIn(earlier, bend))
}

/** The panels that an act turns about what stays, and whereto; undefined where what turns bends in itself, too. */
function turnedIn(way: Way, act: Act, over: boolean): Turned[] | undefined {
  const turn = over ? way.turnOver : (pose: Pose) => pose
  const [from, half, to] = [act.from + 1e-6, (act.from + act.to) / 2, act.to].map((share) => {
    const pose = way.poseAt(share)
    return pose && turn(pose)
  })
  if (!from || !half || !to) return undefined
  const moves = movesBetween(way.structure, from, half, [act])
  if (moves.reduce((sum, { heads }) => sum + heads.length, 0) !== act.bends.length) return undefined
  const lies = way.structure.display.rests === 'flat'
  return moves.flatMap((move) => {
    const towards = isTowards(way.structure, move, half, way.camera.eye)
    return move.heads.map((name): Turned => {
      const crease = [name, move.stays] as const
      const isWhole = Math.abs(bentBy(to, crease) - bentBy(from, crease)) > 135
      if (isWhole) return { name, whereto: towards ? 'over' : 'behind' }
      return { name, whereto: towards ? (lies ? 'up' : 'forward') : lies ? 'down' : 'back' }
    })
  })
}

/** "the left door and the right door"; of more than two, "the 4 tabs and the 3 walls" by what they are. */
function the(names: readonly string[], wording: Wording): string {
  const { say, name, list } = wording
  // A name that ends in a number is a name of its own, as is "panel 4".
  const alone = (one: string): string =>
    /\d$/.test(one) ? name(one) : say('figures.the-piece', { piece: name(one) })
  if (names.length <= 2) return list(names.map(alone))
  const kinds = groupBy(names, (one) => kindOf(one, wording))
  const groups = [...kinds].map(([kind, own]) =>
    own.length === 1
      ? say('figures.the-piece', { piece: name(own[0] ?? '') })
      : /\d/.test(kind)
        ? list(own.map(name))
        : say('figures.several', { count: own.length, piece: name(kind) }),
  )
  return groups.length <= 2 ? list(groups) : say('figures.panels-in-all', { count: names.length })
}

/**
 * What a panel is: the last word of its name. In a language that puts it elsewhere, only where the name is one of
 * foldlore's own.
 */
function kindOf(panel: string, { name, locale }: Wording): string {
  const last = panel.split(' ').at(-1) ?? panel
  return locale.startsWith('en') || /\d/.test(last) || name(last) !== last ? last : panel
}

/** What is stuck on: its pieces, without what lies on them. */
function sticking({ structure }: Way, joins: readonly string[], wording: Wording): string {
  const { say, name } = wording
  const found = structure.plates.flatMap((plate) =>
    joins.includes(plate.name) ? structure.pieces.filter((one) => one.name === plate.piece) : [],
  )
  const carriers = found.filter(({ kind }) => kind !== 'layer')
  const pieces = [...new Set(carriers.length > 0 ? carriers : found)]
  const [only] = pieces
  if (pieces.length > 1 || !only)
    return the(
      pieces.map((piece) => piece.name),
      wording,
    )
  // Of a piece that is cut several times, as many as are stuck on now: each hangs together by its creases.
  const own = structure.plates.filter((plate) => plate.piece === only.name && joins.includes(plate.name))
  const creases = structure.hinges.filter(({ between: [one] }) => own.some((plate) => plate.name === one))
  const count = own.length - creases.length
  const isThere = structure.plates.some((plate) => plate.piece === only.name && !joins.includes(plate.name))
  if (isThere) return say('figures.other-pieces', { count: Math.max(count, 1) })
  return count > 1 && !only.name.endsWith('s')
    ? say('figures.several', { count, piece: name(only.name) })
    : the([only.name], wording)
}

/** Plates that are stuck down at this moment: they lie as their bonds say from here on, and did not on the flat sheet. */
function gluedAt({ structure, poseAt }: Way, at: number): string[] {
  const [start, now, end] = [poseAt(0), poseAt(at), poseAt(1)]
  if (!start || !now || !end) return []
  return structure.bonds.flatMap(({ plate, onto }) => {
    const seen = [start, now, end].map((pose) => {
      const [a, b] = [pose.get(plate), pose.get(onto)]
      return a && b ? seenFrom(b, a.origin) : undefined
    })
    const [first, second, third] = seen
    if (!first || !second || !third) return []
    const near = (p: readonly number[], q: readonly number[]): boolean =>
      p.every((x, i) => Math.abs(x - (q[i] ?? 0)) < 0.5)
    return near(second, third) && !near(first, third) ? [plate] : []
  })
}
