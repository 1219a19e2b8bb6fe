import type { Card, Envelope } from '../card/card.ts'
import type { Wording } from '../wording/wording.ts'
import { boxOf } from './box.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from './fit.ts'
import { flatMarks } from './flat/flat.ts'
import { type FlatParts, flatParts } from './flat/parts.ts'
import { flatLegend, flatWords } from './flat/words.ts'
import { foldedOver, tipOf } from './fold-over.ts'
import type { Sheet } from './frame.ts'
import { nameShare, point, usualText, weights } from './ink.ts'
import { capHeight, label, wrap } from './label.ts'
import { legend } from './legend.ts'
import type { Mark } from './mark.ts'
import type { Spot } from './num.ts'
import { painted } from './painted.ts'
import { sentence } from './phrases.ts'
import { type Picked, picked } from './picked.ts'
import { type Flat, flatLoop, toMm } from './plane.ts'
import { makePalette, type Palette } from './stock.ts'
import { swing } from './swing.ts'

/** One drawing of the row: what is folded over already, what is being folded, and what is said below it. */
interface Stage {
  readonly folded: readonly string[]
  readonly moving: readonly string[]
  readonly words: string
}

/** The sheet of an envelope with its measures, and beside it (or below, in a narrow room) how it is folded, step by step. */
export function drawEnvelope(
  card: Card,
  envelope: Envelope,
  wording: Wording,
  options: FigureOptions,
): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const { structure } = envelope
  const sheet = { ...card, structure, layers: [], lettering: [] }
  const [piece] = structure.pieces
  if (!piece) throw new RangeError('Expected an envelope with a sheet')
  const parts = withFewerMeasures(flatParts(sheet, piece))
  const palette = makePalette(structure)
  const has = picked(options.labels)
  const stages = stagesOf(envelope, wording)
  const grid = room.maxWidth >= leastRow ? 'row' : room.maxWidth >= leastBeside ? 'beside' : 'below'
  const draw = (scale: number): Mark[] => {
    const flat = flatMarks(parts, palette(piece.stock), scale, size, wording, has)
    return [...flat, ...stageMarks(envelope, stages, flat, { scale, size, palette, has, grid })]
  }
  const long = Math.max(toMm(piece.size.width), toMm(piece.size.height))
  const { least, most } = leastAndMost(long, size)
  const entries = options.legend === false ? [] : flatLegend(parts, wording, has)
  return {
    marks: fitted(
      (scale) => {
        const drawn = draw(scale)
        return [...drawn, ...legend(drawn, entries, size, room.maxWidth - 1.5)]
      },
      room,
      { least: grid === 'row' ? least : least * narrowLeast, most },
    ),
    title: wording.say('figures.envelope'),
    alternative: `${flatWords(parts, wording, has)} ${said(envelope, stages, wording)}`,
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** Where slanting scores begin and end tells all of them; the cuts run from there at right angles. */
const withFewerMeasures = (parts: FlatParts): FlatParts =>
  parts.slants.length > 0 ? { ...parts, inner: parts.inner.filter(({ slant }) => slant) } : parts

/** The two flaps that go in first are folded together, then one flap at a time. */
function stagesOf({ folding }: Envelope, { say, name }: Wording): Stage[] {
  const [first = '', second = '', seamed = '', last = ''] = folding
  return [
    {
      folded: [],
      moving: [first, second],
      words: say('figures.fold-in', { first: name(first), second: name(second) }),
    },
    {
      folded: [first, second],
      moving: [seamed],
      words: say('figures.glue-fold-over', { panel: name(seamed) }),
    },
    {
      folded: [first, second, seamed],
      moving: [last],
      words: say('figures.put-in-shut', { panel: name(last) }),
    },
    { folded: [...folding], moving: [], words: say('figures.shut') },
  ]
}

function said({ inside }: Envelope, stages: readonly Stage[], { say, size }: Wording): string {
  const [first = '', second = '', third = ''] = stages.map(({ words }) => words)
  return say('figures.envelope-folded', { first: sentence(first), second, third, size: size(inside) })
}

/** Small drawings, as large as leaves each of them this share of the sheet. */
const share = 0.5
const gap = 4
/** Words need this much, in text sizes, however narrow the drawing above them is. */
const wordsWidth = 8
const wideWords = 11.4
/** Room that is less wide than this, in mm, has none for the row: then they stand two by two, beside the sheet or below. */
const leastRow = 140
const leastBeside = 100
/** There the sheet may be drawn this much smaller than alone. */
const narrowLeast = 0.7

interface StageLook {
  readonly scale: number
  readonly size: number
  readonly palette: Palette
  readonly has: Picked
  /** A row beside the sheet; two by two beside it; two by two below it. */
  readonly grid: 'row' | 'beside' | 'below'
}

function stageMarks(
  { structure }: Envelope,
  stages: readonly Stage[],
  flat: readonly Mark[],
  { scale, size, palette, has, grid }: StageLook,
): Mark[] {
  const [piece] = structure.pieces
  if (!piece) return []
  const own = scale * share
  const width = Math.max(toMm(piece.size.width) * own, (grid === 'below' ? wideWords : wordsWidth) * size)
  const { left: first, right, bottom: lowest } = boxOf(flat.map(({ box }) => box))
  const bottom = toMm(piece.size.height) * scale
  const words = (grid === 'below' ? 2 : 3) * size * 1.25
  const tall = toMm(piece.size.height) * own + words + gap
  const top = grid === 'below' ? lowest : 0
  return stages.flatMap(({ folded, moving, words: said }, i) => {
    const column = grid === 'row' ? i : i % 2
    const left = (grid === 'below' ? first : right + gap) + column * (width + gap)
    // Its words stand under it, at the level of the sheet's lower edge.
    const lines = wrap(has('names') ? `${i + 1} ${said}` : `${i + 1}`, width + gap - 1, size * nameShare)
    const low = (grid === 'row' ? bottom : top + (1 + Math.floor(i / 2)) * tall) - words
    const place = ([x, y]: Flat): Spot => [left + x * own, low - y * own]
    const loopOf = (name: string): Flat[] =>
      flatLoop(structure.plates.find((plate) => plate.name === name)?.outline ?? [])
    return [
      ...foldedOver(structure, 'front', folded).flatMap(({ loop, over }) =>
        painted([loop.map(place)], palette(piece.stock, over), {
          class: 'panel',
          stroke: { width: weights.crease },
        }),
      ),
      ...moving.flatMap((name) => {
        const target = foldedOver(structure, 'front', [name]).find((panel) => panel.name === name)?.loop ?? []
        const tip = tipOf(loopOf(name), target)
        return swing(place(loopOf(name)[tip] ?? [0, 0]), place(target[tip] ?? [0, 0]))
      }),
      ...lines.map((text, k) =>
        label(text, [left, low + (capHeight + 0.7 + k * 1.2) * size], {
          class: 'legend',
          size: size * nameShare,
        }),
      ),
    ]
  })
}
