import type { Card, Envelope } from '../card/card.ts'
import type { Wording } from '../wording/wording.ts'
import { type StageRoom, share, stagePlaces } from './envelope-places.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from './fit.ts'
import { flatMarks } from './flat/flat.ts'
import { type FlatParts, flatParts } from './flat/parts.ts'
import { flatLegend, flatWords } from './flat/words.ts'
import { foldedOver, tipOf } from './fold-over.ts'
import type { Sheet } from './frame.ts'
import { nameShare, point, usualText, weights } from './ink.ts'
import { capHeight, label } from './label.ts'
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

/** The sheet of an envelope with its measures, and beside it (in a narrow room below it too) how it is folded, step by step. */
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
  const grid = room.maxWidth >= leastRow ? 'row' : room.maxWidth >= leastBeside ? 'beside' : 'round'
  const draw = (scale: number): Mark[] => {
    const flat = flatMarks(parts, palette(piece.stock), scale, size, wording, has)
    return [
      ...flat,
      ...stageMarks(envelope, stages, flat, { scale, size, palette, has, grid, wide: room.maxWidth }),
    ]
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

/** Room that is less wide than this, in mm, has none for the row: then they stand two by two, or round the sheet's corner. */
const leastRow = 140
const leastBeside = 100
/** There the sheet may be drawn this much smaller than alone. */
const narrowLeast = 0.7

interface StageLook extends StageRoom {
  readonly palette: Palette
  readonly has: Picked
}

function stageMarks(
  { structure }: Envelope,
  stages: readonly Stage[],
  flat: readonly Mark[],
  look: StageLook,
): Mark[] {
  const [piece] = structure.pieces
  if (!piece) return []
  const { scale, size, palette, has } = look
  const own = scale * share
  const said = stages.map(({ words }, i) => (has('names') ? `${i + 1} ${words}` : `${i + 1}`))
  const places = stagePlaces(said, flat, piece.size, look)
  return stages.flatMap(({ folded, moving }, i) => {
    const { at, lines } = places[i] ?? { at: [0, 0], lines: [] }
    const [left, low] = at
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
