import type { Use } from './problem.ts'

/** So many sheets with these pieces. */
export interface Batch {
  readonly shape: number
  readonly counts: readonly number[]
  readonly times: number
}

/**
 * The sheets without the pieces that are more than were wanted: taken from all sheets that are cut alike where the
 * surplus goes round, so that they stay alike, and else from some of them.
 */
export function exactly(uses: readonly Use[], wanted: readonly number[]): Batch[] {
  let batches: Batch[] = uses.map(({ pattern: { shape, counts }, times }) => ({ shape, counts, times }))
  for (const [kind, count] of wanted.entries()) {
    let surplus = batches.reduce((sum, batch) => sum + batch.times * (batch.counts[kind] ?? 0), 0) - count
    batches.sort((a, b) => b.times - a.times)
    batches = batches.map((batch) => {
      const each = Math.max(0, Math.min(batch.counts[kind] ?? 0, Math.floor(surplus / batch.times)))
      surplus -= each * batch.times
      return each > 0 ? without(batch, kind, each) : batch
    })
    // Fewer are left than there are sheets of any batch with this piece: one each of some sheets of the smallest one.
    while (surplus > 0) {
      const at = batches.findLastIndex((batch) => (batch.counts[kind] ?? 0) > 0)
      const batch = batches[at]
      if (!batch) break
      const times = Math.min(surplus, batch.times)
      const rest = times < batch.times ? [{ ...batch, times: batch.times - times }] : []
      batches.splice(at, 1, ...rest, without({ ...batch, times }, kind, 1))
      surplus -= times
    }
  }
  return merged(batches)
}

const without = (batch: Batch, kind: number, each: number): Batch => ({
  ...batch,
  counts: batch.counts.map((count, i) => (i === kind ? count - each : count)),
})

/** Those alike together; empty ones are left out. */
export function merged(batches: readonly Batch[]): Batch[] {
  const known = new Map<string, Batch>()
  for (const batch of batches) {
    if (batch.counts.every((count) => count === 0) || batch.times === 0) continue
    const key = `${batch.shape}: ${batch.counts}`
    const before = known.get(key)
    known.set(key, before ? { ...before, times: before.times + batch.times } : batch)
  }
  return [...known.values()]
}
