import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, minus, part, plus, same, shorter, smaller, times } from '../../length/length.ts'
import { entriesOf } from '../chosen.ts'
import { cross, renamed } from '../making/cross.ts'
import { glued } from '../making/glue.ts'
import { chosenBefore } from '../making/spine.ts'
import { trayParts } from '../making/tray.ts'
import { point } from '../strip.ts'
import type { Bend, Bond } from '../structure.ts'
import type { BuildInput, Built, FoldStyle, Limit, Panels } from '../style.ts'

type Key = 'step' | 'gap' | 'rim'
type Input = BuildInput<Key, 'nests'>

/** What slides over something is wider by this and two thicknesses of the sheet. Common practice, no source. */
const play = inches(1, 16)

/** How the walls are shown open, in degrees from flat: those of the box, and of each nest so much further up. */
const [widestOpen, furtherUp] = [15, 25]

const sides = ['left wall', 'right wall', 'upper wall', 'lower wall'] as const
const nestNames = (nests: number): string[] => Array.from({ length: nests }, (_, i) => `nest ${i + 1}`)

const panelsOf = (nests: number): Panels =>
  Object.fromEntries([
    ...['', ...nestNames(nests).map((name) => `${name} `)].flatMap((prefix) =>
      ['floor', ...sides].map((part) => [`${prefix}${part}`, 'face'] as const),
    ),
    ...['top', ...sides].map((part) => [`lid ${part}`, 'back'] as const),
  ])

/**
 * Five squares of side a in a cross, a sheet 3a × 3a scored at a and 2a both ways with its corners cut away. Its walls
 * stand while the lid is on, and fall open when it is taken off.
 *
 * The nests are smaller crosses, each by a step smaller than the one it is stuck in, half a step inside its left and lower
 * edge; what does not halve on the ruler is on the right and above. The lid is a tray as wide as the box and the gap; its
 * corners are glued, the tabs half as long as the rim is high, to the mark below.
 */
const styleOf = (nests: number): FoldStyle<Key, 'nests'> => ({
  name: 'exploding box',
  summary:
    'A square box whose walls fall open when its lid is taken off. Its closed size is that of the box without the lid.',
  remainder: 'the right of each nest and above it',
  parameters: {
    step: { help: 'how much smaller each nest is than what it stands in', usual: '1/4 in', round: 'up' },
    gap: { help: 'how much wider the lid is than the box', usual: '1/8 in', round: 'up' },
    rim: { help: 'height of the rim of the lid', usual: '1 in', round: 'nearest' },
  },
  counts: { nests: { help: 'how many smaller crosses are stuck inside', usual: 1, least: 0, most: 3 } },
  panels: panelsOf(nests),
  pieces: [...nestNames(nests), 'lid'],
  read(reading, fields) {
    const { counts } = chosenBefore(reading, fields, generic(explodingBox))
    const style = generic(styleOf(counts.nests ?? 0))
    return { style, entries: entriesOf(style, fields) }
  },
  limits,
  build,
  starter: `fold: exploding box
closed: 4 x 4 in
base: {stock: white card, weight: 300 gsm}
layers:
  wall panel:
    on: [left wall, right wall, upper wall, lower wall]
    border: 1/8 in
    stock: patterned paper
  lid panel:
    on: lid top
    border: 1/8 in
    stock: patterned paper`,
})

const generic = (style: FoldStyle<Key, 'nests'>): FoldStyle => style as unknown as FoldStyle

function limits({
  closed: { width, height },
  counts: { nests },
  lengths,
  stock,
  grid,
  say,
}: Input): Limit<Key>[] {
  const { step, gap, rim } = lengths
  const limit = (about: Key | 'closed', message: string, suggestion: string) => [
    { about, message, suggestion },
  ]
  const side = smaller(width, height)
  if (!same(width, height))
    return limit(
      'closed',
      `An exploding box is square, and this one is ${say(width)} × ${say(height)}`,
      `Make it ${say(side)} both ways`,
    )
  // A nest stands off by half a step on every side, and each half lies on the ruler.
  const room = plus(play, times(stock.caliper, 2))
  const leastOf = { gap: mustCover(room, grid), step: times(mustCover(part(room, 2), grid), 2) }
  const tight = (['gap', ...(nests > 0 ? (['step'] as const) : [])] as const).find((key) =>
    shorter(lengths[key], leastOf[key]),
  )
  if (tight)
    return limit(
      tight,
      tight === 'gap'
        ? `A lid ${say(gap)} wider than the box does not slide over it`
        : `A nest ${say(step)} smaller than what it stands in does not fit into it`,
      `Make the ${tight} at least ${say(leastOf[tight])}`,
    )
  const widest = nests > 0 ? fitInside(part(minus(side, grid), nests), grid) : step
  if (shorter(widest, step))
    return limit(
      'step',
      `With steps of ${say(step)} nothing is left of the last nest`,
      `Make the step at most ${say(widest)}`,
    )
  if (shorter(rim, times(grid, 4)))
    return limit(
      'rim',
      `A rim of ${say(rim)} has no room for its glue tabs`,
      `Make the rim at least ${say(times(grid, 4))}`,
    )
  return shorter(side, rim)
    ? limit('rim', `A rim of ${say(rim)} is higher than the box`, `Make the rim at most ${say(side)}`)
    : []
}

function build({
  closed: { width: side },
  counts: { nests },
  lengths: { step, gap, rim },
  stock,
  grid,
}: Input): Built {
  const box = cross({ piece: 'base', side, stock })
  const nested = nestNames(nests).map((piece, i) =>
    cross({ piece, prefix: `${piece} `, side: minus(side, times(step, i + 1)), stock }),
  )
  const crosses = [box, ...nested]
  const wide = plus(side, gap)
  const tray = trayParts(
    { floor: { width: wide, height: wide }, wall: rim },
    fitInside(part(rim, 2), grid),
    stock,
  )
  const lid = renamed(tray, 'lid', (plate) => (plate === 'floor' ? 'lid top' : `lid ${plate}`))
  const parts = [...crosses, lid]
  const hinges = parts.flatMap((each) => each.hinges)
  // Its walls are a step shorter, so its floor begins a step nearer to the corner of its sheet, and half a step further in.
  const inset = plus(step, fitInside(part(step, 2), grid))
  const nestBonds = nestNames(nests).map(
    (name, i): Bond => glued(`${name} floor`, i === 0 ? 'floor' : `nest ${i} floor`, point(inset, inset)),
  )
  return {
    pieces: parts.map(({ piece }) => piece),
    plates: parts.flatMap(({ plates }) => plates),
    hinges,
    bonds: [...nestBonds, ...lid.bonds],
    stops: [],
    shut: hinges.map(({ between }): Bend => ({ hinge: between, degrees: 90 })),
    display: {
      angles: crosses.flatMap((each, i) =>
        each.hinges.map(({ between }): Bend => ({ hinge: between, degrees: widestOpen + i * furtherUp })),
      ),
      plate: 'floor',
      rests: 'flat',
      turn: 0,
    },
  }
}

/** See `styleOf`. */
export const explodingBox = styleOf(1)
