import type { Closed } from '../fold/pose.ts'
import type { Camera } from './camera.ts'
import type { Face } from './face/face.ts'
import { type Lead, leadOf, type Seen } from './overlap.ts'
import { dot } from './space.ts'
import type { Level } from './stack.ts'

/** Which of two faces is in front of the other. */
export interface Front {
  /** 1 for the first, -1 for the second, 0 when nothing tells. */
  readonly nearer: -1 | 0 | 1
  /** By how many mm it is nearer at the most: how wrong it would be to paint them the other way round. */
  readonly by: number
  /** Whether each is in front of the other somewhere, by more than paper is thick. */
  readonly crosses: boolean
}

/** What is known of sheets that lie on one another, where the depths say nothing. */
export interface Known {
  readonly levels: ReadonlyMap<string, Level>
  readonly closed?: Pick<Closed, 'order' | 'pose'>
}

/** Depths are computed to this, in mm: the thinnest film is thicker. */
const exact = 0.01

/**
 * Sheets run into one another by no more than this, in mm: poses are those of planes, which bend in their middles, and
 * have the thickness of what lies on them added. Paper gives way there, and what was in front stays in front.
 */
const givesWay = 0.6

/** Compares two faces where their images overlap; nothing when they do not. */
export function frontOf(a: Seen, b: Seen, camera: Camera, known: Known): Front | undefined {
  const lead = leadOf(a, b, camera)
  if (!lead) return undefined
  const by = Math.max(lead.most, -lead.least)
  const into = Math.min(lead.most, -lead.least)
  const crosses = into > givesWay
  // One is in front everywhere, or the other sticks through it no farther than paper gives way.
  const sure = into <= exact ? by > exact : crosses || by > 4 * into
  const nearer = sure ? side(lead) : lying(a.face, b.face, camera, known) || (by > exact ? side(lead) : 0)
  return { nearer, by, crosses }
}

const sign = (n: number): -1 | 0 | 1 => (n > 0 ? 1 : n < 0 ? -1 : 0)
const side = ({ least, most }: Lead): -1 | 0 | 1 => sign(most + least)

/** Whether A (1) or B (-1) lies on the other, of two that touch: by the bonds, or else as they lay in the shut card. */
function lying(a: Face, b: Face, camera: Camera, { levels, closed }: Known): -1 | 0 | 1 {
  return onStack(a, b, levels, camera) || (closed ? asShut(a, b, closed, camera) : 0)
}

function onStack(a: Face, b: Face, levels: Known['levels'], camera: Camera): -1 | 0 | 1 {
  const [la, lb] = [levels.get(a.plate.name), levels.get(b.plate.name)]
  if (!la || !lb || la.stack !== lb.stack || la.root !== lb.root) return 0
  const towards = dot(a.place.normal, camera.eye) > 0 === la.sameWay ? 1 : -1
  return sign((la.level - lb.level) * towards)
}

/** Two sheets that still look the same way as in the shut card lie as they did there. */
function asShut(
  a: Face,
  b: Face,
  { order, pose }: Pick<Closed, 'order' | 'pose'>,
  camera: Camera,
): -1 | 0 | 1 {
  const [i, j] = [order.indexOf(a.plate.name), order.indexOf(b.plate.name)]
  const [shutA, shutB] = [pose.get(a.plate.name), pose.get(b.plate.name)]
  if (i < 0 || j < 0 || !shutA || !shutB) return 0
  const same = dot(shutA.normal, shutB.normal) * dot(a.place.normal, b.place.normal)
  if (same < parallel) return 0
  const front = dot(shutA.normal, [0, 0, 1]) * dot(a.place.normal, camera.eye)
  return sign((j - i) * front)
}

/** Cosine of the angle up to which two sheets lie on one another, 15°. */
const parallel = 0.966
