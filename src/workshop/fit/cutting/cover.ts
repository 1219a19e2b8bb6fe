import type { Area, Box } from './boxes.ts'
import type { Selections } from './selections.ts'

/**
 * Shares all pieces out over the sheets, so that what each gets comes out of it. Every way of sharing is looked at,
 * and one with the fewest sheets is taken.
 *
 * @param boxes the smallest boxes of each selection.
 * @returns for each sheet that is needed the box that is cut from it; undefined when the pieces do not come out.
 */
export function cover(
  selections: Selections,
  boxes: readonly (readonly Box[])[],
  sheets: readonly Area[],
): { sheet: number; box: Box }[] | undefined {
  const { whole } = selections
  /** For each selection that the sheets so far hold: how many of them it takes, and what each holds. */
  let held = new Map<number, readonly Share[]>([[0, []]])
  for (const [sheet, area] of sheets.entries()) {
    const fitting = boxes.map((front) => snuggest(front, area))
    const next = new Map(held)
    for (const [n, shares] of held) {
      const left = selections.digits(whole - n)
      selections.parts(left, (part) => {
        const box = fitting[part]
        if (!box) return
        const before = next.get(n + part)
        if (!before || before.length > shares.length + 1) next.set(n + part, [...shares, { sheet, box }])
      })
    }
    held = next
  }
  const found = held.get(whole)
  return found && [...found]
}

interface Share {
  readonly sheet: number
  readonly box: Box
}

/** The smallest of the boxes that the sheet holds. */
function snuggest(front: readonly Box[], area: Area): Box | undefined {
  const fitting = front.filter(({ width, height }) => width <= area.width && height <= area.height)
  return fitting.reduce<Box | undefined>(
    (best, box) => (best && best.width * best.height <= box.width * box.height ? best : box),
    undefined,
  )
}
