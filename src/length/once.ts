/** A computation that is made once, when it is first asked for, and kept. */
export function once<T>(compute: () => T): () => T {
  let kept: { value: T } | undefined
  return () => {
    kept ??= { value: compute() }
    return kept.value
  }
}
