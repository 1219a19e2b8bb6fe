import { minus, type Size, times } from '../../length/length.ts'
import { type Concertina, creasesByGap, pulledOut, sideStrip, tabBonds } from '../making/concertina.ts'
import { type TunnelLengths, tunnelLimits } from '../making/tunnel-limits.ts'
import { point, rectangle, sheet } from '../strip.ts'
import type { Piece, Plate, Side } from '../structure.ts'
import type { BuildInput, Chosen, FoldStyle, Panels } from '../style.ts'

type Input = BuildInput<TunnelLengths, 'frames'>

const usual = 3

const namesOf = (frames: number): string[] =>
  Array.from({ length: frames }, (_, i) => (i < frames - 1 ? `frame ${i + 1}` : 'backdrop'))

const panelsOf = (frames: number): Panels =>
  Object.fromEntries(namesOf(frames).map((name): [string, Side] => [name, 'face']))

/**
 * n frames, the last of them the backdrop W × H, between two sides. Each side is one strip in zigzag of 3·n - 2 panels
 * of p: a tab for every frame, and two pleats between one tab and the next.
 *
 * A tab has a crease at both ends, since the strip comes to it in front of its frame and goes on behind. It cannot run
 * through the frame, so one of the two lies round the frame's edge. Shut, the tab of the first frame lies behind it and
 * goes outwards to a crease at the edge; there the first gap begins and ends, round the edge of the second frame, behind
 * which its tab goes inwards to p; the second gap begins and ends there, and the third tab goes outwards in front of its
 * frame and round its edge; and so on by turns. The tab of the backdrop lies in front of it. So everything is within p
 * of the edges, and the rim of a window hides it; frames round which a side is folded are narrower by the creep c on
 * both sides. In every gap the two pleats are of one length, so frames that are pulled straight stay parallel, at most
 * 2·p apart.
 */
export const tunnel: FoldStyle<TunnelLengths, 'frames'> = {
  name: 'tunnel',
  summary: 'Frames one behind the other between two zigzag sides, pulled apart by up to two pleats a gap.',
  parameters: {
    pleat: {
      help: 'width of a pleat: two of them lie in each gap',
      usual: 'closed.width / 8',
      round: 'nearest',
    },
    rim: { help: 'what is left of a frame round its window', usual: 'pleat + 1/8 in', round: 'up' },
    creep: {
      help: 'how much narrower the frames are on both sides, for the sides to fold round them',
      usual: '1/16 in',
      round: 'up',
    },
  },
  counts: { frames: { help: 'number of frames, the backdrop among them', usual, least: 2, most: 8 } },
  panels: panelsOf(usual),
  panelsFor: ({ counts }: Chosen<'frames'>) => panelsOf(counts.frames),
  pieces: ['frame', 'sides'],
  limits: tunnelLimits,
  build(input) {
    const { closed, counts, lengths, stock } = input
    const frames = namesOf(counts.frames)
    const concertina: Concertina = { stock, size: closed, frames, ...lengths }
    const [left, right] = [sideStrip(concertina, 'left'), sideStrip(concertina, 'right')]
    const backdrop = sheet('backdrop', stock, closed)
    return {
      pieces: [
        { ...backdrop.piece, name: 'base' },
        framePiece(input),
        ...left.pieces.map((piece): Piece => ({ ...piece, count: 2 })),
      ],
      plates: [
        ...frames.slice(0, -1).map((name) => frame(name, input)),
        ...left.plates,
        ...right.plates,
        { ...backdrop.plate, piece: 'base' },
      ],
      hinges: creasesByGap(concertina, [left, right]),
      bonds: [...tabBonds(concertina, 'left'), ...tabBonds(concertina, 'right')],
      stops: [],
      display: { angles: pulledOut(frames), plate: 'backdrop', rests: 'upright', turn: -15 },
    }
  },
  starter: `fold: tunnel
closed: 7 x 5 in
base: {stock: white card, weight: 250 gsm}
layers:
  front mat:
    on: frame 1
    border: 1/8 in
    stock: patterned paper
  scenery:
    on: backdrop
    border: {sides: pleat + 1/16 in, ends: 1/8 in}
    stock: coloured paper
apertures:
  front window:
    on: front mat
    size: (frame.width - rim * 2 + 1/8 in) x (frame.height - rim * 2 + 1/8 in)`,
}

const frameSize = ({ closed: { width, height }, lengths }: Input): Size => ({
  width: minus(width, times(lengths.creep, 2)),
  height,
})

const framePiece = (input: Input): Piece => ({
  ...sheet('frame', input.stock, frameSize(input)).piece,
  count: input.counts.frames - 1,
})

function frame(name: string, input: Input): Plate {
  const { rim } = input.lengths
  const { width, height } = frameSize(input)
  const opening = { width: minus(width, times(rim, 2)), height: minus(height, times(rim, 2)) }
  return {
    name,
    piece: 'frame',
    outline: rectangle({ width, height }),
    holes: [rectangle(opening, point(rim, rim))],
  }
}
