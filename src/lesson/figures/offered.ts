import type { ListItem, Nodes, Root } from 'mdast'
import { hingesOf } from '../../card/scores.ts'
import type { Segment, Structure } from '../../card/structure.ts'
import { same } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Course } from '../actions/course.ts'
import { figureTargets } from '../figure-target.ts'
import type { ProvenCard } from '../lesson.ts'
import type { FigureNode } from '../nodes.ts'
import { captionOf } from './directive.ts'
import { type Wanted, wantedFigures } from './wanted.ts'

/** A figure that a step has not and could have. */
export interface Offered {
  readonly step: number
  /** The step in the tree. */
  readonly item: ListItem
  readonly show: FigureNode['show']
  /** As it is written in `of=`, with the card's name in front where it needs one. */
  readonly of?: string
  readonly caption: string
}

/**
 * The figures that steps without one could have, at most one for each: what another figure of the lesson shows already is
 * not offered again, and of pieces that are alike but for their size one is enough. With all of them put in, nothing more
 * is offered.
 */
export function offeredFigures(
  {
    tree,
    cards,
    wording,
  }: { readonly tree: Root; readonly cards: readonly ProvenCard[]; readonly wording: Wording },
  course: Course,
): Offered[] {
  const shown = new Set(figuresIn(tree).flatMap((figure) => keysOfNode(figure, cards)))
  const wanted = wantedFigures(course, cards)
  return [...stepsIn(tree)].flatMap(([step, item]): Offered[] => {
    if (hasPicture(item)) return []
    const one = wanted.find(
      (candidate) => candidate.step === step && !keysOf(candidate).some((key) => shown.has(key)),
    )
    const of = one && writtenOf(one, cards)
    if (!one || of === null) return []
    for (const key of keysOf(one)) shown.add(key)
    return [{ step, item, show: one.show, ...(of !== undefined && { of }), caption: captionOf(one, wording) }]
  })
}

/** What a figure shows, so that two of the same are known; of a flat piece also what it looks like. */
function keysOf({ show, card: { card }, of = 'base' }: Pick<Wanted, 'show' | 'card' | 'of'>): string[] {
  const key = (...what: readonly string[]) => JSON.stringify([show, card.name, ...what])
  if (!ofPiece.has(show)) return [key()]
  return [key(of), ...(show === 'flat' ? [key('like', shapeOf(card.structure, of))] : [])]
}

/** Kinds that show one piece; the others show the whole card, whatever they point out. */
const ofPiece: ReadonlySet<FigureNode['show']> = new Set(['flat', 'place', 'lettering'])

/** The creases and cuts of a piece without its measures: a smaller box has the same. */
function shapeOf(structure: Structure, name: string): string {
  const way = ({ from, to }: Segment) => (same(from.x, to.x) ? '|' : same(from.y, to.y) ? '-' : '/')
  const creases = hingesOf(structure, name).map(({ fold, line }) => `${fold} ${way(line)}`)
  const cuts = structure.pieces.find((piece) => piece.name === name)?.cuts.map(way) ?? []
  return [...creases.sort(), ...cuts.sort()].join()
}

function keysOfNode({ show, of }: FigureNode, cards: readonly ProvenCard[]): string[] {
  return figureTargets(of, cards).flatMap((target) => {
    const strip = show === 'lettering' && !target.of ? target.card.card.lettering[0]?.on : undefined
    return keysOf({ show, ...target, ...(strip && { of: strip }) })
  })
}

/** How the directive names it; null when no name says it. */
function writtenOf({ card, of }: Wanted, cards: readonly ProvenCard[]): string | undefined | null {
  const { name } = card.card
  const names = of === undefined ? [undefined, name] : [of, `${name}.${of}`]
  for (const written of names) {
    const targets = figureTargets(written, cards)
    if (targets.length === 1 && targets[0]?.card === card && targets[0].of === of) return written
  }
  return null
}

function stepsIn(tree: Root): Map<number, ListItem> {
  const items = new Map<number, ListItem>()
  for (const node of tree.children)
    if (node.type === 'list')
      for (const item of node.children) if (item.data?.step !== undefined) items.set(item.data.step, item)
  return items
}

function figuresIn(node: Nodes): FigureNode[] {
  if (node.type === 'figure') return [node]
  return 'children' in node ? node.children.flatMap((child) => figuresIn(child as Nodes)) : []
}

const hasPicture = (node: Nodes): boolean =>
  node.type === 'figure' ||
  node.type === 'image' ||
  node.type === 'imageReference' ||
  ('children' in node && node.children.some((child) => hasPicture(child as Nodes)))
