/** Does one thing after the other where they are about the same; other things at the same time. */
export function inTurn(): <T>(about: string, act: () => Promise<T>) => Promise<T> {
  const last = new Map<string, Promise<unknown>>()
  return async (about, act) => {
    const mine = (last.get(about) ?? Promise.resolve()).then(act, act)
    const settled = mine.catch(() => {})
    last.set(about, settled)
    try {
      return await mine
    } finally {
      if (last.get(about) === settled) last.delete(about)
    }
  }
}
