import { type Length, minus, plus, times, zero } from '../../length/length.ts'
import { entriesOf } from '../chosen.ts'
import { closedBySpine } from '../making/on-top.ts'
import { chosenBefore, sidesOf, spineChoice, spineOf } from '../making/spine.ts'
import { vLimits } from '../making/v-limits.ts'
import { vBonds, vPiece } from '../making/v-piece.ts'
import type { VLengths } from '../making/v-reach.ts'
import { point } from '../strip.ts'
import type { Plate, Point } from '../structure.ts'
import type { BuildInput, Built, FoldStyle, Parameter } from '../style.ts'

type Key = keyof VLengths

/**
 * front · V · back, and across the spine a piece: left tab · left wing · M · right wing · right tab, with a mountain
 * between each wing and its tab.
 *
 * The three creases of the piece and the spine meet in one point, the apex on the spine. From there the glue lines run
 * along both panels, `run` away from the spine for every `rise` along it: at g to the spine. In the flat piece each base
 * crease rises by `lift` over the `wing`: at s to the crease between the wings. Both halves are alike, so the sectors
 * g, s, s, g about the apex close for every opening of the card, and it folds flat (Kawasaki–Justin: g + s = s + g).
 * The tabs lie behind the wings, on the open side of the V, and shut they lie flat on with them: their creases are open
 * then, and the crease between the wings is folded. See `vReach` for where the wings lie then.
 *
 * Open flat, the crease between the wings stands at p to the spine with cos p = cos s / cos g: upright when there is no
 * lift, leaning back over the open side of the V otherwise. Its tip is height · sin p above the card.
 */
const styleOf = (spine: 'left' | 'top'): FoldStyle<Key, never, 'spine'> => ({
  name: 'v-fold',
  summary: 'A card with a piece across its fold that stands up as a V when the card is opened.',
  parameters: parametersOf(spine),
  choices: { spine: spineChoice },
  panels: { front: 'back', back: 'face', 'left wing': 'face', 'right wing': 'face' },
  pieces: ['wings'],
  read(reading, fields) {
    const style = generic(styleOf(spineOf(chosenBefore(reading, fields, generic(vFold)))))
    return { style, entries: entriesOf(style, fields) }
  },
  limits(input) {
    const { width, height } = closedBySpine(input)
    return vLimits({ ...input, across: width, along: height })
  },
  build,
  starter: `fold: v-fold
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  cover:
    on: front
    border: 1/8 in
    stock: patterned paper
  sail:
    on: [left wing, right wing]
    border: 1/8 in
    stock: patterned paper`,
})

const generic = (style: FoldStyle<Key, never, 'spine'>): FoldStyle => style as unknown as FoldStyle

function parametersOf(spine: 'left' | 'top'): Record<Key, Parameter> {
  const { along } = sidesOf(spine)
  return {
    apex: {
      help: `how far the point of the V is from the ${spine === 'left' ? 'lower' : 'left'} end of the fold`,
      usual: `${along} * 2 / 5`,
      round: 'nearest',
    },
    run: {
      help: 'a mark that the glue line goes through on each panel: how far from the fold',
      usual: `${along} / 3`,
      round: 'nearest',
    },
    rise: {
      help: 'the same mark: how far beyond the point of the V, along the fold',
      usual: `${along} / 3`,
      round: 'nearest',
    },
    wing: { help: 'width of each half of the piece', usual: `${along} / 3`, round: 'down' },
    lift: {
      help: 'how far the base of the piece rises from its middle to its ends; with 0 it stands upright, with more it leans back',
      usual: '0',
      round: 'down',
    },
    height: {
      help: 'height of the piece in its middle, above its tabs',
      usual: `${along} * 2 / 5`,
      round: 'down',
    },
    tab: { help: 'width of the tabs that are glued on, behind the piece', usual: '1/2 in', round: 'nearest' },
  }
}

function build(input: BuildInput<Key, never, 'spine'>): Built {
  const { lengths, stock, grid } = input
  const spine = spineOf(input)
  const { width: across, height: along } = closedBySpine(input)
  const whole = times(across, 2)
  // Turning the sheet a quarter clockwise brings a spine on the left of the front to its top.
  const at = (u: Length, v: Length): Point => (spine === 'left' ? point(u, v) : point(v, minus(whole, u)))
  const panel = (name: string, from: Length): Plate => ({
    name,
    piece: 'base',
    outline: [at(from, zero), at(plus(from, across), zero), at(plus(from, across), along), at(from, along)],
    holes: [],
  })
  const size = spine === 'left' ? { width: whole, height: along } : { width: along, height: whole }
  const wings = vPiece(lengths, stock, grid)
  return {
    pieces: [{ name: 'base', kind: 'base', stock, count: 1, size, cuts: [] }, wings.piece],
    plates: [panel('front', zero), panel('back', across), ...wings.plates],
    hinges: [
      {
        between: ['front', 'back'],
        line: { from: at(across, zero), to: at(across, along) },
        fold: 'valley',
      },
      ...wings.hinges,
    ],
    bonds: vBonds(
      lengths,
      (out, up) => at(plus(across, out), plus(lengths.apex, up)),
      spine === 'left' ? 0 : -90,
    ),
    stops: [],
    shut: [
      { hinge: ['left tab', 'left wing'], degrees: 0 },
      { hinge: ['right tab', 'right wing'], degrees: 0 },
    ],
    ...(spine === 'top' && { upsideDown: ['front'] }),
    display: {
      angles: [{ hinge: ['front', 'back'], degrees: 0 }],
      plate: 'back',
      rests: 'flat',
      turn: 0,
    },
  }
}

/** See `styleOf`. */
export const vFold = styleOf('left')
