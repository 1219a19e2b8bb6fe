import type { Act, Pose } from '../../fold/pose.ts'
import { listOf } from '../../length/finding.ts'
import { groupBy } from '../../length/group-by.ts'
import { dot } from '../space.ts'
import { bendsIn, bentBy, isTowards, movesBetween, seenFrom } from './moves.ts'
import type { Stage } from './stages.ts'
import type { Way } from './way.ts'

/** What is done in a stage, in few words: `fold the left door over`. */
export function wordsOf(way: Way, stage: Stage): string {
  const done = [
    ...(stage.acts.length > 0 ? [bending(way, stage)] : []),
    ...(stage.joins.length > 0 ? [`stick ${sticking(way, stage.joins)} on`] : []),
  ]
  switch (stage.kind) {
    case 'flat':
      return flatWords(way, stage)
    case 'held': {
      const glued = gluedAt(way, stage.at)
      return [...done, glued.length > 0 ? `stick ${the(glued)} down` : 'it stands like this'].join('; ')
    }
    case 'standing':
      return 'standing'
    case 'shut':
      return [...done, 'shut'].join('; ')
    default:
      return done.join('; ')
  }
}

function flatWords({ structure, piece }: Way, { pose, picture }: Stage): string {
  const base = piece ?? structure.pieces.find(({ kind }) => kind === 'base')
  const plate = structure.plates.find((one) => one.piece === base?.name && pose.has(one.name))
  const normal = pose.get(plate?.name ?? '')?.normal
  const isFace = normal === undefined || dot(normal, picture.camera.eye) >= 0
  const sides = base?.kind === 'base' ? ['inside', 'outside'] : ['face', 'back']
  return `${piece ? `the ${piece.name}` : 'the sheet'} flat, ${sides[isFace ? 0 : 1]} up`
}

interface Turned {
  readonly name: string
  readonly word: string
}

function bending(way: Way, stage: Stage): string {
  const { acts } = stage
  const turned = acts.flatMap((act) => turnedIn(way, act, stage.over) ?? [])
  const bends = acts.reduce((sum, { bends }) => sum + bends.length, 0)
  if (shuts(way, acts)) return 'fold it shut'
  if (turned.length < bends || turned.length === 0)
    return bends === 1 ? 'bend it at the heavy crease' : `bend it at the ${bends} heavy creases`
  const words = [...new Set(turned.map(({ word }) => word))]
  const names = [...new Set(turned.map(({ name }) => name))]
  const word = words.length === 1 ? ` ${words[0]}` : ''
  return `${/^(up|forward|back|down)$/.test(words[0] ?? '') ? 'bend' : 'fold'} ${the(names)}${word}`
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
    return move.heads.map((name) => {
      const crease = [name, move.stays] as const
      const isWhole = Math.abs(bentBy(to, crease) - bentBy(from, crease)) > 135
      if (isWhole) return { name, word: towards ? 'over' : 'behind' }
      return { name, word: towards ? (lies ? 'up' : 'forward') : lies ? 'down' : 'back' }
    })
  })
}

/** "the left door and the right door"; of more than two, "the 4 tabs and the 3 walls" by their last words. */
function the(names: readonly string[]): string {
  // A name that ends in a number is a name of its own, as is "panel 4".
  if (names.length <= 2) return listOf(names.map((name) => (/\d$/.test(name) ? name : `the ${name}`)))
  const kinds = groupBy(names, (name) => name.split(' ').at(-1) ?? name)
  const groups = [...kinds].map(([end, own]) =>
    own.length === 1 ? `the ${own[0]}` : /\d/.test(end) ? listOf(own) : `the ${own.length} ${end}s`,
  )
  return groups.length <= 2 ? listOf(groups) : `${names.length} panels`
}

/** What is stuck on: its pieces, without what lies on them. */
function sticking({ structure }: Way, joins: readonly string[]): string {
  const found = structure.plates.flatMap(({ name, piece }) =>
    joins.includes(name) ? structure.pieces.filter((one) => one.name === piece) : [],
  )
  const carriers = found.filter(({ kind }) => kind !== 'layer')
  const pieces = [...new Set(carriers.length > 0 ? carriers : found)]
  const [only] = pieces
  if (pieces.length > 1 || !only) return the(pieces.map(({ name }) => name))
  // Of a piece that is cut several times, as many as are stuck on now: each hangs together by its creases.
  const own = structure.plates.filter(({ name, piece }) => piece === only.name && joins.includes(name))
  const creases = structure.hinges.filter(({ between: [one] }) => own.some(({ name }) => name === one))
  const count = own.length - creases.length
  const isThere = structure.plates.some(({ name, piece }) => piece === only.name && !joins.includes(name))
  if (isThere) return count > 1 ? `the other ${count} pieces` : 'the other piece'
  return count > 1 && !only.name.endsWith('s') ? `the ${count} ${only.name}s` : the([only.name])
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
