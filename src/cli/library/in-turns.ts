/**
 * Does something with each item, so many at a time: a computer opens only so many files at once.
 *
 * @returns what came of them, in their order.
 */
export async function inTurns<T, R>(
  items: readonly T[],
  act: (item: T) => Promise<R>,
  most = 16,
): Promise<R[]> {
  const results: R[] = []
  const waiting = items.entries()
  const hands = Array.from({ length: most }, async () => {
    for (const [i, item] of waiting) results[i] = await act(item)
  })
  await Promise.all(hands)
  return results
}
