/** What this browser remembers between visits, where it remembers anything. */
export const memory = {
  get(name: string): string | undefined {
    try {
      return localStorage.getItem(`foldlore ${name}`) ?? undefined
    } catch {
      return undefined
    }
  },
  set(name: string, value: string | undefined): void {
    try {
      if (value === undefined) localStorage.removeItem(`foldlore ${name}`)
      else localStorage.setItem(`foldlore ${name}`, value)
    } catch {
      // It lasts as long as the page then.
    }
  },
}
