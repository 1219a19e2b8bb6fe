/** A computation that is made once, when it is first asked for, and kept. */
export function once<T>(compute: () => T): () => T {
  let kept: { value: T } | undefined
  return () => {
    kept ??= { value: compute() }
    return kept.value
  }
}

/** The same for each of several keys: computed when that key is first asked for, and kept. */
export function onceFor<K, T>(compute: (key: K) => T): (key: K) => T {
  const kept = new Map<K, { value: T }>()
  return (key) => {
    const known = kept.get(key) ?? { value: compute(key) }
    kept.set(key, known)
    return known.value
  }
}
