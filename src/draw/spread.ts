/** A number that belongs at a mark: where the mark is along its line, and how much of the line the number takes. */
export interface Tag {
  readonly at: number
  readonly width: number
}

/**
 * Where the middles of numbers go so that none comes nearer to the next than `clear`, moved as little as can be (least
 * squares; pooling of adjacent violators). They stay in the order of their marks, so lines from mark to number do not
 * cross.
 *
 * @param tags in the order of their marks.
 */
export function spread(tags: readonly Tag[], clear: number): number[] {
  // With the room of all numbers before it taken off, each only has to lie not before the last.
  let taken = 0
  const offsets = tags.map((tag, i) => {
    const before = tags[i - 1]
    if (before) taken += (before.width + tag.width) / 2 + clear
    return taken
  })
  const blocks: { sum: number; count: number }[] = []
  for (const [i, tag] of tags.entries()) {
    blocks.push({ sum: tag.at - (offsets[i] ?? 0), count: 1 })
    for (;;) {
      const [before, last] = [blocks.at(-2), blocks.at(-1)]
      if (!before || !last || before.sum / before.count <= last.sum / last.count) break
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count })
    }
  }
  const places = blocks.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
  return places.map((place, i) => place + (offsets[i] ?? 0))
}
