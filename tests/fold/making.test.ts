import { describe, expect, test } from 'vitest'
import type { Structure } from '../../src/card/structure.ts'
import type { Pose, Vector } from '../../src/fold/pose.ts'
import { toMm } from '../../src/length/length.ts'
import { cardsAt } from '../draw/cards.ts'
import { inSpace, troublesIn } from './checker.ts'

const apart = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

/** The structure with only those plates that have a place. */
const present = (structure: Structure, pose: Pose): Structure => ({
  ...structure,
  plates: structure.plates.filter(({ name }) => pose.has(name)),
  hinges: structure.hinges.filter(({ between }) => between.every((name) => pose.has(name))),
  bonds: [],
})

/** How far the farthest corner of a plate is from where it was; of plates that are in both poses. */
function moved(structure: Structure, before: Pose, after: Pose): number {
  const ways = structure.plates.flatMap(({ name, outline }) => {
    const [one, other] = [before.get(name), after.get(name)]
    if (!one || !other) return []
    return outline.map(({ x, y }) =>
      apart(inSpace(one, [toMm(x), toMm(y)]), inSpace(other, [toMm(x), toMm(y)])),
    )
  })
  return Math.max(0, ...ways)
}

const cards = cardsAt(['8 x 6 in', '6 x 6 in', 'A6 landscape'])

describe.each(cards)('made from the flat sheet: $title', ({ card, proof }) => {
  const { structure } = card
  const making = proof.making()
  const poseAt = (share: number): Pose => making?.poseAt(share) ?? new Map()

  test('there is a way, act by act', () => {
    expect(making).toBeDefined()
    const acts = making?.acts ?? []
    expect(acts[0]?.from).toBe(0)
    expect(acts.at(-1)?.to).toBe(1)
    for (const [i, act] of acts.entries()) {
      expect(act.to).toBeGreaterThan(act.from)
      if (i > 0) expect(act.from).toBe(acts[i - 1]?.to)
    }
  })

  test('it begins with the sheet flat: plates of one piece lie as they are cut', () => {
    const pose = poseAt(0)
    const there = structure.hinges.filter(({ between }) => between.every((name) => pose.has(name)))
    if (there.length === 0) expect(pose.has(structure.display.plate)).toBe(true)
    expect(there.length > 0).toBe(structure.hinges.length > 0)
    for (const { between } of structure.hinges) {
      const [one, other] = between.map((name) => pose.get(name))
      if (!one || !other) continue
      expect(apart(one.normal, other.normal)).toBeLessThan(1e-6)
      expect(apart(one.right, other.right)).toBeLessThan(1e-6)
      // Layers of it may lie higher by their thickness.
      expect(apart(one.origin, other.origin)).toBeLessThan(1.5)
    }
  })

  test('it ends where opening begins, with all plates in their places', () => {
    const shut = proof.between(0) ?? new Map()
    expect([...poseAt(1).keys()].sort()).toEqual([...shut.keys()].sort())
    expect(moved(structure, poseAt(1), shut)).toBeLessThan(0.01)
  })

  test('on the way creases hold, bend the right way, and nothing leaves again', () => {
    const steps = 40
    let before = poseAt(0)
    for (let i = 1; i <= steps; i++) {
      const pose = poseAt(i / steps)
      expect(troublesIn(present(structure, pose), pose, { gap: 0.5, thickness: 2.5 })).toEqual([])
      for (const name of before.keys()) expect(pose.has(name)).toBe(true)
      before = pose
    }
  })

  test('nothing jumps from one act to the next', () => {
    for (const { from } of making?.acts.slice(1) ?? []) {
      // Layers settle by a few thicknesses of paper.
      expect(moved(structure, poseAt(from - 1e-6), poseAt(from + 1e-6))).toBeLessThan(2.5)
    }
  })
})
