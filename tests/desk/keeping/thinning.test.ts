import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Earlier } from '../../../src/desk/page/keeping/drafts.ts'
import { thinned } from '../../../src/desk/page/keeping/thinning.ts'

const minute = 60_000
const day = 24 * 60 * minute

/** Keeps a text at each of these times, thinning out each time as the drafts do. */
const kept = (times: readonly number[], why: Earlier['why'] = 'written'): number[] => {
  let versions: { id: number; lesson: string; changed: number; why: Earlier['why'] }[] = []
  times.forEach((changed, id) => {
    versions.push({ id, lesson: 'a', changed, why })
    const gone = thinned(versions, changed)
    versions = versions.filter((version) => !gone.includes(version.id))
  })
  return versions.map((version) => version.changed)
}

it('one text of every hour stays for a day, however often texts are kept', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: day }), (apart, start) => {
      const times = Array.from(
        { length: Math.floor((20 * 60) / apart) },
        (_, n) => start + n * apart * minute,
      )
      const left = kept(times)
      const hours = new Set(times.map((time) => Math.floor(time / (60 * minute))))
      // Thirty stay in all, so that only the oldest hours can be gone.
      const there = new Set(left.map((time) => Math.floor(time / (60 * minute))))
      expect(there.size).toBeGreaterThanOrEqual(Math.min(hours.size, 30 - 12))
      expect(left.at(-1)).toBe(times.at(-1))
      expect(left.length).toBeLessThanOrEqual(30)
    }),
    { numRuns: 30 },
  )
})

it('the newest text stays, and thinning again takes nothing more', () => {
  const version = fc.record({
    changed: fc.integer({ min: 0, max: 100 * day }),
    why: fc.constantFrom('saved' as const, 'written' as const, 'aside' as const),
  })
  fc.assert(
    fc.property(fc.array(version, { minLength: 1, maxLength: 80 }), (given) => {
      const versions = given.map((one, id) => ({ ...one, id, lesson: 'a' }))
      const gone = new Set(thinned(versions, 100 * day))
      const left = versions.filter((one) => !gone.has(one.id))
      expect(Math.max(...left.map((one) => one.changed))).toBe(
        Math.max(...versions.map((one) => one.changed)),
      )
      expect(thinned(left, 100 * day)).toEqual([])
    }),
  )
})

it('a text that was put aside for another one stays, also beside a newer one', () => {
  const now = 50 * day
  const near = [now - 3000, now - 2000, now - 1000]
  expect(kept(near, 'aside')).toEqual(near)
  expect(kept(near, 'written').at(-1)).toBe(now - 1000)
})
