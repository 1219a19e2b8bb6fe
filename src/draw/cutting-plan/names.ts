import type { Wording } from '../../wording/wording.ts'
import type { Box } from '../box.ts'
import { capHeight, label, textWidth, wrap } from '../label.ts'
import type { Entry } from '../legend.ts'
import type { Mark } from '../mark.ts'
import type { Picked } from '../picked.ts'
import { tints } from '../stock.ts'
import { upMark } from '../up.ts'
import { half, loopOf, type Place, type SheetPlan } from './sheet-plan.ts'

/** Names with sizes in the pieces; where there is no room, a letter that is explained below. */
export function pieceNames(
  plan: SheetPlan,
  place: Place,
  size: number,
  wording: Wording,
  has: Picked,
): { names: Mark[]; keys: Entry[] } {
  const keyed = new Map<string, string>()
  const names = plan.placed.flatMap((piece): Mark[] => {
    const [[left, bottom] = [0, 0], , [right, top] = [0, 0]] = loopOf(piece, place)
    const inset = half * size + 0.5
    const room: Box = { left: left + inset, right: right - inset, top: top + inset, bottom: bottom - inset }
    const said = [
      ...(has('names') ? [wording.name(piece.name)] : []),
      ...(has('size') ? [wording.size(piece)] : []),
    ]
    if (said.length === 0) return []
    const lines = linesIn(room, said, size, piece.upright)
    if (lines) return centred(lines, room, size, piece.upright, wording)
    const what = said.join(', ')
    const key = keyed.get(what) ?? letter(keyed.size)
    keyed.set(what, key)
    return centred([key], { left, right, top, bottom }, size, false, wording)
  })
  return { names, keys: [...keyed].map(([what, key]) => ({ text: `${key}: ${what}` })) }
}

/** The lines if they fit; a pattern with a top needs room for its mark. */
function linesIn(room: Box, said: readonly string[], size: number, upright: boolean): string[] | undefined {
  const [width, height] = [room.right - room.left, room.bottom - room.top]
  const lines = said.flatMap((text) => wrap(text, width, size))
  const high = lines.length * size * 1.25 + (upright ? upHeight(size) : 0)
  const fits = high <= height && lines.every((text) => textWidth(text, size) <= width)
  return fits ? lines : undefined
}

const upHeight = (size: number): number => Math.max(4, size * 1.3) + 2

function centred(
  lines: readonly string[],
  box: Box,
  size: number,
  upright: boolean,
  wording: Wording,
): Mark[] {
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2]
  const step = size * 1.25
  const extra = upright ? upHeight(size) / 2 : 0
  const first = y - ((lines.length - 1) * step) / 2 + (capHeight * size) / 2 - extra
  return [
    ...lines.map((text, i) =>
      label(text, [x, first + i * step], {
        class: 'name',
        size,
        anchor: 'middle',
        ...(i === 0 && { bold: true }),
      }),
    ),
    ...(upright
      ? upMark(
          [x - 2, first + (lines.length - 1) * step + upHeight(size)],
          size,
          { tint: tints.sand.tint, film: false },
          wording,
        )
      : []),
  ]
}

/** A, B … Z, A2, B2 … */
const letter = (n: number): string =>
  String.fromCharCode(65 + (n % 26)) + (n >= 26 ? String(Math.floor(n / 26) + 1) : '')
