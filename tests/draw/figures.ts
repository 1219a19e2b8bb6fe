import type { Element } from 'hast'
import { drawFigure, type FigureOptions } from '../../src/draw/draw.ts'
import type { Figure } from '../../src/draw/figure.ts'
import type { Unit } from '../../src/length/length.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import type { FigureKind } from '../../src/lesson/nodes.ts'
import { byClass, text } from './svg.ts'

/** A figure that can be drawn. */
export function drawn(
  show: FigureKind,
  card: ProvenCard,
  of?: string,
  unit: Unit = card.card.unit,
  options?: FigureOptions,
): Figure {
  const figure = drawFigure(show, card, of, unit, options)
  if ('findings' in figure) throw new Error(figure.findings.map((f) => f.message).join('; '))
  return figure
}

/** All figures of a card that can be drawn, each with what it shows. */
export const figuresOf = (
  card: ProvenCard,
  options: FigureOptions = {},
): { name: string; figure: Figure }[] =>
  shownOf(card).map(([show, of]) => ({
    name: `${show} ${of ?? ''}`,
    figure: drawn(show, card, of, card.card.unit, options),
  }))

/** What can be shown of a card: the kind of figure, and what it is of. */
export function shownOf(card: ProvenCard): (readonly [show: FigureKind, of: string | undefined])[] {
  const { pieces } = card.card.structure
  const spans = card.proof.standing ? pieces.filter((p) => p.kind === 'span') : []
  return [
    ...pieces.map((p) => ['flat', p.name] as const),
    ...[...card.card.layers, ...spans].map((p) => ['place', p.name] as const),
    ...(card.proof.standing ? [['standing', undefined] as const] : []),
    ...(card.proof.closed ? [['closed', undefined] as const, ['edge', undefined] as const] : []),
    ...(card.proof.making() ? [['folding', undefined] as const] : []),
    ...(card.card.envelope ? [['envelope', undefined] as const] : []),
    ...(card.proof.standing && card.card.structure.bonds.length > 0 ? [['apart', undefined] as const] : []),
    ...card.card.lettering.map((l) => ['lettering', l.name] as const),
  ]
}

/** The texts of a class, with plain spaces. */
export const textsOf = (svg: Element, name: string): string[] =>
  byClass(svg, name).map((node) => text(node).replaceAll(/[\u202f\u00a0]/g, ' '))
