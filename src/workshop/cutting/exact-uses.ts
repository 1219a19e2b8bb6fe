import type { Use } from './problem.ts'

/** So many sheets with these pieces. */
export interface Batch {
  readonly shape: number
  readonly counts: readonly number[]
  readonly times: number
}

/**
 * The sheets without the pieces that are more than were wanted: taken from all sheets that are cut alike where the
 * surplus goes round, so that they stay alike, and else all together from as few sheets as will do.
 */
export function exactly(uses: readonly Use[], wanted: readonly number[]): Batch[] {
  let batches: Batch[] = uses
    .map(({ pattern: { shape, counts }, times }) => ({ shape, counts, times }))
    .sort((a, b) => b.times - a.times)
  const surplus = wanted.map(
    (count, kind) => batches.reduce((sum, { times, counts }) => sum + times * (counts[kind] ?? 0), 0) - count,
  )
  batches = batches.map((batch) => {
    const each = batch.counts.map((count, kind) =>
      Math.max(0, Math.min(count, Math.floor((surplus[kind] ?? 0) / batch.times))),
    )
    return without(batch, each, surplus)
  })
  while (surplus.some((count) => count > 0)) {
    // One sheet of the batch that most can be left out of; best one that is alone anyway.
    const taken = batches.map(({ counts }) =>
      counts.map((count, kind) => Math.min(count, surplus[kind] ?? 0)),
    )
    const [at] = [...batches.keys()].sort(
      (a, b) =>
        Number((batches[b]?.times ?? 0) === 1 && total(taken[b]) > 0) -
          Number((batches[a]?.times ?? 0) === 1 && total(taken[a]) > 0) || total(taken[b]) - total(taken[a]),
    )
    const batch = at === undefined ? undefined : batches[at]
    if (at === undefined || !batch || total(taken[at]) === 0) break
    const others = batch.times > 1 ? [{ ...batch, times: batch.times - 1 }] : []
    batches.splice(at, 1, ...others, without({ ...batch, times: 1 }, taken[at] ?? [], surplus))
  }
  return merged(batches)
}

const total = (counts: readonly number[] = []): number => counts.reduce((sum, count) => sum + count, 0)

/** A batch with so many fewer of each kind on every sheet; they are surplus no more. */
function without(batch: Batch, each: readonly number[], surplus: number[]): Batch {
  for (const [kind, count] of each.entries()) surplus[kind] = (surplus[kind] ?? 0) - count * batch.times
  return { ...batch, counts: batch.counts.map((count, kind) => count - (each[kind] ?? 0)) }
}

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
