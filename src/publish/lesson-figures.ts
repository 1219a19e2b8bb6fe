import type { Nodes, Root } from 'mdast'
import type { Finding } from '../length/finding.ts'
import { figureTargets } from '../lesson/figure-target.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { FigureNode } from '../lesson/nodes.ts'
import { placeOf } from '../lesson/source.ts'
import { type Draw, type Fitted, fitFigure, type Rooms, rooms } from './figure.ts'
import { atOneScale, familyOf } from './shared-scale.ts'

/** A figure of the lesson as it is printed, with an id that no other one on the page has. */
export interface PlacedFigure {
  readonly drawn: Fitted
  readonly id: string
}

/** A figure, and where in the lesson it stands. */
interface Standing {
  readonly node: FigureNode
  readonly id: string
  readonly step: number | undefined
  /** The headings and lists before it: figures of one stage have the same. */
  readonly stage: number
}

/**
 * Draws every figure of a lesson. Those of one kind and card that sit together, in one step or in steps that follow each
 * other directly within a stage, have one scale.
 *
 * @returns the figures that could be drawn, and what was found about the others.
 */
export function lessonFigures(
  tree: Root,
  cards: readonly ProvenCard[],
  draw: Draw,
  space: Rooms = rooms,
): { figures: ReadonlyMap<FigureNode, PlacedFigure>; findings: readonly Finding[] } {
  const findings: Finding[] = []
  const figures = new Map<FigureNode, PlacedFigure>()
  const drawnAs = ({ node, id, step }: Standing, mostScale?: number) =>
    fitFigure(
      draw,
      node.show,
      node.of,
      {
        key: id,
        ...(node.labels && { labels: node.labels }),
        ...(step !== undefined && { step }),
        ...(mostScale !== undefined && { mostScale }),
      },
      space,
    )
  const standing = standingIn(tree)
  for (const one of standing) {
    const drawn = drawnAs(one)
    if ('findings' in drawn)
      findings.push(...drawn.findings.map((finding) => ({ ...finding, place: placeOf(one.node.position) })))
    else figures.set(one.node, { drawn, id: one.id })
  }
  for (const run of runsOf(standing, cards)) {
    const members = run.flatMap((one) => {
      const made = figures.get(one.node)
      return made ? [{ one, made }] : []
    })
    const scaled = atOneScale(
      members.map(({ one, made: { drawn } }) => ({
        drawn,
        again: (mostScale) => {
          const again = drawnAs(one, mostScale)
          return 'findings' in again ? undefined : again
        },
      })),
    )
    for (const [i, { one }] of members.entries()) {
      const drawn = scaled[i]
      if (drawn) figures.set(one.node, { drawn, id: one.id })
    }
  }
  return { figures, findings }
}

function standingIn(tree: Root): Standing[] {
  const all: Standing[] = []
  let stage = 0
  const walk = (node: Nodes, parent: Nodes | undefined, step: number | undefined): void => {
    if (node.type === 'heading' && parent === tree) stage++
    if (node.type === 'figure') all.push({ node, id: `figure-${all.length + 1}`, step, stage })
    const own = node.type === 'listItem' ? node.data?.step : undefined
    if ('children' in node) for (const child of node.children) walk(child, node, own ?? step)
  }
  walk(tree, undefined, undefined)
  return all
}

/** Figures of one family and card, in steps one directly after the other. */
function runsOf(standing: readonly Standing[], cards: readonly ProvenCard[]): Standing[][] {
  const runs: Standing[][] = []
  const latest = new Map<string, Standing[]>()
  for (const one of standing) {
    const family = familyOf(one.node.show)
    if (family === undefined || one.step === undefined) continue
    const card = figureTargets(one.node.of, cards)[0]?.card.card.name ?? ''
    const key = `${family} ${card}`
    const before = latest.get(key)?.at(-1)
    const follows = before?.step !== undefined && before.stage === one.stage && one.step - before.step <= 1
    const run = (follows && latest.get(key)) || []
    if (run.length === 0) runs.push(run)
    run.push(one)
    latest.set(key, run)
  }
  return runs.filter((run) => run.length > 1)
}
