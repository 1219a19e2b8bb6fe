import type Fraction from 'fraction.js'
import type { Held } from '../../card/origins.ts'
import { type Length, plus, same, times } from '../../length/length.ts'
import type { Work } from './exactly.ts'
import type { Values } from './numbers.ts'
import type { Answer } from './slopes.ts'

/** Something that a number changes with when the card is printed at another size, and its share of it if it is plain. */
export interface Follow {
  /** `size`: both sides at once, where a card is always square. `ruler`: what does not divide on it. */
  readonly of: 'width' | 'height' | 'size' | 'thickness' | 'ruler'
  readonly share?: Fraction
}

/** Other sizes to look at, as parts of the card's own. */
const parts: readonly (readonly [number, number])[] = [
  [1, 2],
  [3, 4],
  [9, 10],
  [11, 10],
  [5, 4],
  [3, 2],
  [2, 1],
]

/**
 * Says of every number what it follows: the card is worked out again at other widths, other heights and another
 * thickness, everything else following as it is written. A number that none of them changes is fixed.
 *
 * @param exactly works the card out with nothing rounded, `onRuler` on the ruler of the print.
 * @param base what the card comes to exactly, `printed` as it is printed.
 * @param answers how the numbers answer to all that is written out plainly.
 */
export function followsOf(
  { exactly, onRuler }: { exactly: Work; onRuler: Work },
  { base, printed, grid }: { base: Values; printed: Values; grid: Length },
  answers: ReadonlyMap<string, Answer>,
): ReadonlyMap<string, readonly Follow[]> {
  const at = (side: 'width' | 'height') => base.get(`closed.${side}`)
  const [width, height] = [at('width'), at('height')]
  if (!width || !height) return new Map()
  const sized = (w: Length, h: Length): Held =>
    new Map([
      ['closed.width', w],
      ['closed.height', h],
    ])
  const scaled = (x: Length): Length[] => parts.map(([n, d]) => times(x, n).div(d) as Length)
  const tried = (sizes: readonly Held[], work: Work): Values[] => sizes.flatMap((size) => work(size) ?? [])
  const wider = tried(
    scaled(width).map((w) => sized(w, height)),
    exactly,
  )
  const higher = tried(
    scaled(height).map((h) => sized(width, h)),
    exactly,
  )
  const isSquare = wider.length === 0 && higher.length === 0
  const larger = isSquare
    ? tried(
        parts.map(([n, d]) => sized(times(width, n).div(d) as Length, times(height, n).div(d) as Length)),
        exactly,
      )
    : []
  const thickness = base.get('card.thickness')
  const thicker = thickness ? tried([new Map([['card.thickness', times(thickness, 2)]])], exactly) : []
  const marks = [1, 2, 3, 5, 7].map((n) => times(grid, n))
  const shifted = tried(
    isSquare
      ? marks.map((by) => sized(plus(width, by), plus(height, by)))
      : marks.flatMap((by) => [sized(plus(width, by), height), sized(width, plus(height, by))]),
    onRuler,
  )

  return new Map(
    [...base].map(([key, value]) => {
      const changes = (all: readonly Values[], from: Length = value): boolean =>
        all.some((values) => !same(values.get(key) ?? from, from))
      const answer = answers.get(key)
      const follow = (of: Follow['of'], all: readonly Values[], by: string): Follow[] => {
        if (!changes(all)) return []
        const share = answer?.slopes.get(by)
        const given = base.get(by)
        // Only a share that holds at all the other sizes is told.
        const holds =
          share !== undefined &&
          given !== undefined &&
          all.every((values) => {
            const [now, then] = [values.get(by), values.get(key)]
            return now && then && same(then, plus(value, times(now.sub(given) as Length, share)))
          })
        return [holds ? { of, share } : { of }]
      }
      const follows = [
        ...follow('width', wider, 'closed.width'),
        ...follow('height', higher, 'closed.height'),
        ...follow('size', larger, 'closed.width'),
        ...follow('thickness', thicker, 'card.thickness'),
      ]
      const restsOnRuler = follows.length === 0 && changes(shifted, printed.get(key))
      return [key, restsOnRuler ? [{ of: 'ruler' }] : follows]
    }),
  )
}
