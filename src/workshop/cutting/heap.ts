/** Numbered things, of which the one with the highest rank comes out first; the earlier one of equal rank. */
export class Heap {
  readonly #ranks: number[] = []
  readonly #items: number[] = []

  get size(): number {
    return this.#items.length
  }

  /** The rank of what comes out next. */
  get top(): number {
    return this.#ranks[0] ?? Number.NEGATIVE_INFINITY
  }

  push(rank: number, item: number): void {
    let at = this.#items.length
    this.#ranks.push(rank)
    this.#items.push(item)
    while (at > 0) {
      const parent = (at - 1) >> 1
      if (!this.#before(at, parent)) break
      this.#swap(at, parent)
      at = parent
    }
  }

  pop(): number | undefined {
    const [first] = this.#items
    const last = this.#items.length - 1
    if (last < 0) return undefined
    this.#swap(0, last)
    this.#items.pop()
    this.#ranks.pop()
    for (let at = 0; ; ) {
      let next = at
      for (const child of [2 * at + 1, 2 * at + 2])
        if (child < last && this.#before(child, next)) next = child
      if (next === at) return first
      this.#swap(at, next)
      at = next
    }
  }

  #before(a: number, b: number): boolean {
    const [x = 0, y = 0] = [this.#ranks[a], this.#ranks[b]]
    return x > y || (x === y && (this.#items[a] ?? 0) < (this.#items[b] ?? 0))
  }

  #swap(a: number, b: number): void {
    const swap = (list: number[]): void => {
      const kept = list[a] as number
      list[a] = list[b] as number
      list[b] = kept
    }
    swap(this.#ranks)
    swap(this.#items)
  }
}
