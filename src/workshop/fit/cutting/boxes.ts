import type { Selections } from './selections.ts'

/** A rectangle to cut, and how many of it. Sides are whole numbers of one small mark. */
export interface Kind {
  readonly width: number
  readonly height: number
  readonly count: number
  /** Whether it may be turned a quarter. */
  readonly turns: boolean
}

/** A sheet to cut from, in the same marks. */
export interface Area {
  readonly width: number
  readonly height: number
}

/** A rectangle that some pieces come out of with cuts from edge to edge, and how. */
export interface Box extends Area {
  readonly made:
    | { readonly of: 'piece'; readonly kind: number; readonly turned: boolean }
    | { readonly of: 'parts'; readonly first: Box; readonly second: Box; readonly lies: 'beside' | 'above' }
}

/**
 * The smallest boxes of every selection of the pieces: those from which no width can be taken without more height.
 *
 * Whatever is cut from edge to edge falls apart at its first cut into two boxes, each with some of the pieces. So the
 * boxes of a selection are those of its parts put side by side, or one above the other, for every way of parting it in
 * two; and a single piece is a box itself. What is too large for every sheet, or leaves too little paper for the other
 * pieces, is dropped at once.
 *
 * @param sheets none to find the smallest boxes there are.
 * @returns the boxes by the number of the selection; see `selectionsOf`.
 */
export function smallestBoxes(
  kinds: readonly Kind[],
  selections: Selections,
  sheets: readonly Area[],
): readonly (readonly Box[])[] {
  const paper = sheets.reduce((sum, { width, height }) => sum + width * height, 0)
  const all = selections.digits(selections.whole)
  const areaOf = (digits: readonly number[]): number =>
    kinds.reduce((sum, { width, height }, i) => sum + width * height * (digits[i] ?? 0), 0)
  const boxes: Box[][] = [[]]
  for (let n = 1; n <= selections.whole; n++) {
    const digits = selections.digits(n)
    const others = areaOf(all) - areaOf(digits)
    const front: Box[] = []
    const offer = (width: number, height: number, made: () => Box['made']): void => {
      if (sheets.length > 0) {
        if (width * height + others > paper) return
        if (!sheets.some((sheet) => width <= sheet.width && height <= sheet.height)) return
      }
      if (front.some((box) => box.width <= width && box.height <= height)) return
      const kept = front.filter((box) => box.width < width || box.height < height)
      front.splice(0, front.length, ...kept, { width, height, made: made() })
    }
    const single = selections.single(n)
    const kind = single === undefined ? undefined : kinds[single]
    if (kind && single !== undefined) {
      const { width, height, turns } = kind
      offer(width, height, () => ({ of: 'piece', kind: single, turned: false }))
      if (turns) offer(height, width, () => ({ of: 'piece', kind: single, turned: true }))
    }
    selections.parts(digits, (part) => {
      // Each way of parting once: which of the two stands first makes no difference to the box.
      if (part === 0 || part > n - part) return
      for (const first of boxes[part] ?? [])
        for (const second of boxes[n - part] ?? []) {
          const made = (lies: 'beside' | 'above') => (): Box['made'] => ({
            of: 'parts',
            first,
            second,
            lies,
          })
          offer(first.width + second.width, Math.max(first.height, second.height), made('beside'))
          offer(Math.max(first.width, second.width), first.height + second.height, made('above'))
        }
    })
    boxes.push(front)
  }
  return boxes
}
