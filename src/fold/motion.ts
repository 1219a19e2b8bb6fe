import type { Display } from '../card/structure.ts'
import type { Finding } from '../length/finding.ts'
import { listOf } from '../length/finding.ts'
import type { Assembly } from './assembly.ts'
import { crossingsAt, evenly } from './crossings.ts'
import { type Freedom, freedomOf } from './freedom.ts'
import { drivesOf, linkageOf, movingJoints } from './joints.ts'
import type { Linkage } from './linkage.ts'
import { namesOf } from './misses.ts'
import { type Drives, type Opening, openByLeading } from './opening.ts'
import { openByResting } from './resting.ts'
import type { Rings } from './rings.ts'
import { sayNames } from './say.ts'
import { blend, solveFolds } from './solve.ts'

/** How the card opens: the folds of its links at each share of the way, and how many angles are free. */
export interface Motion {
  readonly linkage: Linkage
  readonly freedom: number
  /** Whether its rings and stops lead it all the way; otherwise a hand may take another way to the same end. */
  readonly isLed: boolean
  /** Folds after `share` of the way from shut (0) to standing (1); undefined beyond what can be reached. */
  readonly foldsAt: (share: number) => readonly number[] | undefined
}

/**
 * Opens the shut card to its display angles, or until its stops touch.
 *
 * @param folds of the links in the shut card, in radians.
 * @param unfolding the order in which a hand opens creases that are in no ring, if all at once is too much.
 */
export function motionOf(
  assembly: Assembly,
  rings: Rings,
  folds: readonly number[],
  display: Display,
  findings: Finding[],
  unfolding: () => readonly number[] | undefined,
): Motion {
  const linkage = linkageOf(assembly, rings, folds)
  const { rests } = linkage
  const drives = drivesOf(assembly, display, findings)
  const moving = movingJoints(rings, rests, drives)
  const opening =
    rests.length > 0
      ? openByResting(linkage, folds, moving, drives)
      : rings.cycles.length > 0 && moving.length > 0
        ? openByLeading(linkage, folds, moving, drives)
        : openFreely(assembly, linkage, folds, drives, unfolding)
  if (!opening?.arrives) findings.push(doesNotStand(assembly, display, opening))
  const freedom = freedomOf(linkage, rings, folds, opening?.moments ?? [])
  if (rests.length === 0) findings.push(...floppy(assembly, rings, drives, freedom))
  return {
    linkage,
    freedom: freedom.all,
    isLed: rests.length > 0 || rings.cycles.length > 0,
    foldsAt: (share) => opening && foldsOn(linkage, moving, opening, share),
  }
}

/** Without rings every crease bends as it is told: all together, or one after the other if they would meet. */
function openFreely(
  assembly: Assembly,
  linkage: Linkage,
  shut: readonly number[],
  drives: Drives,
  unfolding: () => readonly number[] | undefined,
): Opening {
  const folds = [...shut]
  for (const { joint, fold } of drives) folds[joint] = fold
  const opening = (stages: readonly (readonly number[])[]): Opening => ({
    moments: stages.map((stage, i) => ({ share: i / (stages.length - 1), folds: stage, reach: [] })),
    led: drives.map(({ joint }) => joint),
    arrives: true,
  })
  const together = opening([shut, folds])
  const crosses = (found: Opening): boolean =>
    crossingsAt(
      assembly,
      linkage,
      evenly((share) => foldsOn(linkage, [], found, share)),
    ).length > 0
  if (drives.length < 2 || !crosses(together)) return together
  const first = (unfolding() ?? []).filter((joint) => folds[joint] !== shut[joint])
  if (first.length === 0) return together
  const stages: (readonly number[])[] = [shut]
  for (const joint of first) stages.push((stages.at(-1) ?? shut).with(joint, folds[joint] ?? 0))
  return opening([...stages.slice(0, -1), folds])
}

/** Between two moments that are known, the folds are blended and the rings closed again. */
export function foldsOn(
  linkage: Linkage,
  moving: readonly number[],
  { moments, led }: Opening,
  share: number,
): readonly number[] | undefined {
  const next = moments.findIndex((moment) => moment.share >= share)
  const [before, after] = [moments[Math.max(0, next - 1)], moments[next]]
  if (!before || !after || !(share >= 0)) return undefined
  if (after.share === share || after === before) return after.share === share ? after.folds : undefined
  const part = (share - before.share) / (after.share - before.share)
  const guess = blend(before.folds, after.folds, part)
  const touching = before.reach.length > 0 && after.reach.length > 0
  return solveFolds(linkage, moving, guess, {
    held: led.map((joint) => ({ joint, fold: guess[joint] ?? 0 })),
    reach: touching ? blend(before.reach, after.reach, part) : [],
  })
}

/** Rings that move in more ways than they are led by: whoever opens the card does not know where they will go. */
function floppy(assembly: Assembly, { groupOf }: Rings, drives: Drives, { inGroup }: Freedom): Finding[] {
  return [...inGroup].flatMap(([group, free]) => {
    const led = drives.filter(({ joint }) => groupOf[joint] === group).length
    if (free < 2 || led === 0 || led >= free) return []
    const ring = groupOf.flatMap((other, joint) => (other === group ? [joint] : []))
    return [
      {
        rule: 'floppy',
        severity: 'warning',
        message: `The ring of ${namesOf(assembly, ring)} is floppy: it moves in ${free} ways at once, and only ${led} of them ${led === 1 ? 'is' : 'are'} led`,
        suggestion: 'Stick one more of its panels down, or leave one of its creases out',
      },
    ]
  })
}

function doesNotStand({ model }: Assembly, display: Display, opening: Opening | undefined): Finding {
  const [stop] = model.stops
  const end = opening?.moments.at(-1)
  const creases = display.angles.map(
    ({ hinge, degrees }) => `the crease between ${sayNames(hinge)} to ${degrees}°`,
  )
  const reached = (opening?.led ?? []).map((joint) => Math.round(((end?.folds[joint] ?? 0) * 180) / Math.PI))
  const [edge, line] = [stop?.plate, stop?.onto].map((i) => model.plates[i ?? -1]?.name ?? '')
  return {
    rule: 'does-not-stand',
    severity: 'error',
    message: stop
      ? `\`${edge}\` does not reach its stop on \`${line}\`, so the card does not stand`
      : reached.length > 0
        ? `Opening ${listOf(creases)} is too much: it stops at ${listOf(reached.map((degrees) => `${degrees}°`))}`
        : `The card cannot be opened at ${listOf(creases)}: its creases hold each other shut`,
    suggestion: stop
      ? 'Put the stop nearer to the crease, or make the panels that hold it up longer'
      : reached.length > 0
        ? 'Make the panels between longer'
        : 'Check which creases are valleys and which are mountains',
  }
}
