import { groupBy } from '../../length/group-by.ts'
import { type Length, minus, plus, type Size, times } from '../../length/length.ts'
import type { Box } from '../fit/cutting/boxes.ts'
import type { Along, TrimmerCut } from './cutting.ts'
import { inRow, isTrimmed, rowOf } from './row.ts'

/** A piece as it lies on the sheet. */
export interface LaidKind extends Size {
  readonly kind: number
  readonly x: Length
  readonly y: Length
  readonly turned: boolean
}

/** What is in hand: a part of the sheet, with the box that is cut out of its lower left. */
interface InHand extends Size {
  readonly x: Length
  readonly y: Length
  readonly box: Box
}

/** A cut that can be made now. */
interface Ready {
  /** Which of what is in hand. */
  readonly part: number
  readonly across: Along
  readonly set: Length
  /** What is cut out of the part at the stop, and of the part beyond, if that is not waste. */
  readonly first: Box
  readonly rest?: Box | undefined
}

/** Marks and the knife's gap as lengths. */
export interface Scale {
  readonly mark: Length
  readonly gap: Length
}

/**
 * The cuts that take a box out of the lower left of a sheet, and where its pieces lie.
 *
 * Of what is in hand the cut that needs no new setting comes next, else the setting that does for most; so cuts at the
 * same distance come together. Pieces in a row are cut off one by one, each to its own width, so that a setting is the
 * size of a piece and not of several together.
 *
 * @param usual settings that are used anyway.
 */
export function strokesOf(
  box: Box,
  area: Size & { readonly x: Length; readonly y: Length },
  { mark, gap }: Scale,
  usual: ReadonlySet<string> = new Set(),
): { laid: LaidKind[]; cuts: TrimmerCut[] } {
  const side = (marks: number): Length => minus(times(mark, marks), gap)
  const inHand: InHand[] = [{ ...area, box }]
  const laid: LaidKind[] = []
  const cuts: TrimmerCut[] = []
  let set: string | undefined
  for (;;) {
    const ready = inHand.flatMap((one, part) => readyCuts(one, side).map((cut) => ({ ...cut, part })))
    const cut = nextCut(ready, set, usual)
    const part = cut && inHand[cut.part]
    if (!part) break
    set = keyOf(cut.set)
    cuts.push(strokeOf(part, cut))
    inHand.splice(cut.part, 1, ...partsOf(part, cut, gap))
  }
  for (const { box, x, y, width, height } of inHand)
    if (box.made.of === 'piece') laid.push({ ...box.made, x, y, width, height })
  return { laid, cuts }
}

/** The same for the same length. */
export const keyOf = (length: Length): string => length.toFraction()

/** The cuts that may come next on a part: what is beyond its box is trimmed off, then one of its row is cut off. */
function readyCuts(part: InHand, side: (marks: number) => Length): Omit<Ready, 'part'>[] {
  const { box } = part
  const across = (along: Along): Omit<Ready, 'part'>[] =>
    side(box[along]).lt(part[along]) ? [{ across: along, set: side(box[along]), first: box }] : []
  if (box.made.of === 'piece') return [...across('width'), ...across('height')]
  const { along, boxes } = rowOf(box)
  const over = isTrimmed(box) ? across(along === 'width' ? 'height' : 'width') : []
  if (over.length > 0) return over
  return boxes.flatMap((first, i) => {
    if (boxes.findIndex((other) => other[along] === first[along]) < i) return []
    const others = boxes.filter((_, k) => k !== i)
    return [{ across: along, set: side(first[along]), first, rest: inRow(others, along) }]
  })
}

/** The cut at the setting there is; else at one that is used anyway and does for most, the largest of these. */
function nextCut(
  ready: readonly Ready[],
  set: string | undefined,
  usual: ReadonlySet<string>,
): Ready | undefined {
  const same = ready.find((cut) => keyOf(cut.set) === set)
  if (same) return same
  const [most] = [...groupBy(ready, (cut) => keyOf(cut.set))].sort(
    ([a, alike], [b, others]) =>
      Number(usual.has(b)) - Number(usual.has(a)) ||
      others.length - alike.length ||
      (others[0] && alike[0] ? others[0].set.compare(alike[0].set) : 0),
  )
  return most?.[1][0]
}

const strokeOf = (part: InHand, { across, set }: Ready): TrimmerCut =>
  across === 'width'
    ? { across, at: plus(part.x, set), from: part.y, to: plus(part.y, part.height), against: 'left', set }
    : { across, at: plus(part.y, set), from: part.x, to: plus(part.x, part.width), against: 'bottom', set }

/** What a part falls into: what is cut off it, and what the knife leaves beyond, unless that is waste. */
function partsOf(part: InHand, { across, set, first, rest }: Ready, gap: Length): InHand[] {
  const cutOff = { ...part, [across]: set, box: first }
  if (!rest) return [cutOff]
  const beyond = plus(set, gap)
  const at = across === 'width' ? 'x' : 'y'
  return [cutOff, { ...part, [at]: plus(part[at], beyond), [across]: minus(part[across], beyond), box: rest }]
}
