import { listOf, suggestWord } from '../length/finding.ts'
import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { FigureKind } from '../lesson/nodes.ts'
import { type Wording, wordingOf } from '../wording/wording.ts'
import { drawApart } from './apart/apart.ts'
import { drawShutBox } from './closed/box.ts'
import { drawClosed } from './closed/closed.ts'
import { drawEdgeOn } from './edge-on/edge-on.ts'
import { drawEnvelope } from './envelope.ts'
import type { Figure, FigureFinding } from './figure.ts'
import type { FigureOptions } from './fit.ts'
import { drawFlat } from './flat/flat.ts'
import { drawFolding } from './folding/folding.ts'
import { frame, type Sheet } from './frame.ts'
import { drawLettering } from './lettering/lettering.ts'
import { drawPlace } from './place/place.ts'
import { spanView } from './place/span.ts'
import { layerView } from './place/view.ts'
import { drawStanding } from './standing.ts'

export type { FigureFinding } from './figure.ts'
export type { FigureOptions } from './fit.ts'

export type Drawn = Figure | { readonly findings: readonly FigureFinding[] }

type Draw = (
  card: ProvenCard,
  of: string | undefined,
  wording: Wording,
  options: FigureOptions,
) => Sheet | FigureFinding

const flat: Draw = ({ card }, of = 'base', wording, options) => {
  const piece = card.structure.pieces.find((p) => p.name === of)
  return piece
    ? drawFlat(card, piece, wording, options)
    : unknown(
        of,
        card.structure.pieces.map((p) => p.name),
      )
}

const place: Draw = ({ card, proof }, of, wording, options) => {
  const spans = card.structure.pieces.filter((p) => p.kind === 'span')
  const known = [...card.layers.map((l) => l.name), ...spans.map((s) => s.name)]
  const name = of ?? known[0]
  if (name === undefined) return nothingOnIt
  const layer = card.layers.find((l) => l.name === name)
  const span = spans.find((s) => s.name === name)
  if (!layer && !span) return unknown(name, known)
  const view = layer
    ? layerView(card, layer)
    : span && proof.standing && spanView(card, span, proof.standing.pose)
  return view ? drawPlace(view, card.structure, wording, options) : doesNotFold
}

const standing: Draw = ({ card, proof }, of, wording, options) => {
  const pieces = card.structure.pieces.map((p) => p.name)
  if (of !== undefined && of !== card.name && !pieces.includes(of)) return unknown(of, pieces)
  const accent = of === card.name ? undefined : of
  return proof.standing ? drawStanding(card, proof, proof.standing, accent, wording, options) : doesNotFold
}

const closed: Draw = ({ card, proof }, _of, wording, options) => {
  if (!proof.closed) return doesNotFold
  return proof.closed.isFlat
    ? drawClosed(card, proof.closed, wording, options)
    : drawShutBox(card, proof.closed, proof.between(0) ?? proof.closed.pose, wording, options)
}

const envelope: Draw = ({ card }, _of, wording, options) =>
  card.envelope ? drawEnvelope(card, card.envelope, wording, options) : noEnvelope

const kinds: Partial<Record<FigureKind, Draw>> = {
  flat,
  place,
  folding: drawFolding,
  closed,
  standing,
  edge: drawEdgeOn,
  apart: drawApart,
  lettering: drawLettering,
  envelope,
}

/**
 * Draws a figure of a card.
 *
 * @param of name of a piece, layer or span; without it the figure's usual subject.
 * @param said how it speaks, or the unit of an English one.
 * @param options the room it may take, in mm at print size (82 × 70 unless said), and its text size in points.
 * @returns the figure, or findings that say why there is none.
 */
export function drawFigure(
  show: FigureKind,
  card: ProvenCard,
  of: string | undefined,
  said: Unit | Wording,
  options: FigureOptions = {},
): Drawn {
  const draw = kinds[show]
  const wording = typeof said === 'string' ? wordingOf('en', said) : said
  const drawn = draw ? draw(card, of, wording, options) : ofNoOneCard(show)
  return 'rule' in drawn ? { findings: [drawn] } : frame(drawn)
}

const unknown = (name: string, known: readonly string[]): FigureFinding => ({
  rule: 'unknown-name',
  severity: 'error',
  message: `Unexpected name \`${name}\`, expected a piece of this card`,
  suggestion: suggestWord(name, known),
})

const ofNoOneCard = (show: string): FigureFinding => ({
  rule: 'figure-not-drawn',
  severity: 'warning',
  message: `A figure that shows \`${show}\` is not drawn from one card: it wants the pieces of a kit and their sheet`,
  suggestion: `Show ${listOf(
    Object.keys(kinds).map((k) => `\`${k}\``),
    'or',
  )} instead`,
})

const nothingOnIt: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'Nothing is stuck on this card, so there is no place to show',
  suggestion: 'Show `flat`, or add a layer to the card',
}

const noEnvelope: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'This card has no envelope to draw',
  suggestion: 'Add `envelope:` to the card block, such as `envelope: {make: diagonal}`',
}

const doesNotFold: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'This figure needs a card that folds, and this one does not yet',
  suggestion: 'Cure what the check says of its folding first',
}
