import { s } from 'hastscript'
import { type Box, boxAround } from '../box.ts'
import { colours, nameShare, weights } from '../ink.ts'
import { capHeight, label, textWidth } from '../label.ts'
import { line, type Mark } from '../mark.ts'
import { num, type Spot } from '../num.ts'
import { spread } from '../spread.ts'

/** A piece's number and name, and where it is pointed at. */
export interface Tagged {
  readonly number: number
  readonly lines: readonly string[]
  readonly at: Spot
}

/** Between the picture and the names, and between a leader and its number. */
const [aside, clear] = [5, 0.9]

/** A column of names to the right of the picture, each with a leader to its piece. */
export function tags(all: readonly Tagged[], picture: Box, size: number): Mark[] {
  if (all.length === 0) return []
  const small = size * nameShare
  const pitch = small * 1.2
  const widest = Math.max(...all.map(({ number }) => textWidth(String(number), small)))
  const left = picture.right + aside
  const sorted = uncrossed(
    [...all].sort((a, b) => a.at[1] - b.at[1]),
    (list) => seats(list, pitch, size),
    left,
  )
  const at = seats(sorted, pitch, size)
  return sorted.flatMap(({ number, lines, at: end }, i): Mark[] => {
    const middle = at[i] ?? 0
    const first = middle - ((lines.length - 1) * pitch) / 2
    const base = first + (capHeight * small) / 2
    const named = left + clear + widest + 1.1
    return [
      line([left, first], end, { class: 'leader', width: weights.dimension, colour: colours.slate }),
      dot(end),
      label(String(number), [left + clear + widest, base], {
        class: 'number',
        size: small,
        bold: true,
        anchor: 'end',
        colour: colours.rust,
      }),
      ...lines.map((text, k) =>
        label(text, [named, base + k * pitch], {
          class: k === 0 ? 'piece' : 'measure',
          size: small,
          colour: k === 0 ? colours.ink : colours.slate,
        }),
      ),
    ]
  })
}

const seats = (all: readonly Tagged[], pitch: number, size: number): number[] =>
  spread(
    all.map(({ at, lines }) => ({ at: at[1], width: lines.length * pitch })),
    size * 0.3,
  )

/** The names in an order in which no leader crosses another: two that cross change places, which makes both shorter. */
function uncrossed(
  all: readonly Tagged[],
  seat: (list: readonly Tagged[]) => number[],
  left: number,
): readonly Tagged[] {
  let list = [...all]
  for (let round = 0; round < all.length * all.length; round++) {
    const at = seat(list)
    const crossing = list.findIndex((one, i) => {
      const next = list[i + 1]
      return next && cross(one.at, [left, at[i] ?? 0], next.at, [left, at[i + 1] ?? 0])
    })
    if (crossing < 0) return list
    const [one, next] = [list[crossing], list[crossing + 1]]
    if (one && next) list = list.with(crossing, next).with(crossing + 1, one)
  }
  return list
}

function cross(a: Spot, b: Spot, c: Spot, d: Spot): boolean {
  const turn = (p: Spot, q: Spot, r: Spot) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0
}

/** The dot at the end of a leader. */
const dot = ([x, y]: Spot): Mark => ({
  node: () => s('circle', { class: 'dot', cx: num(x), cy: num(y), r: '0.5', fill: colours.slate }),
  box: boxAround([[x, y]], 0.5),
})
