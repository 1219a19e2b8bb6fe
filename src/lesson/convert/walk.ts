import type { Nodes } from 'mdast'
import type { YamlBlock } from '../../card/yaml.ts'
import type { Finding } from '../../length/finding.ts'
import type { Step } from '../lesson.ts'
import type { Source } from '../source.ts'

/** What the handlers of one walk over a lesson's tree share: its text, and what they have found so far. */
export interface Walk {
  readonly source: Source
  readonly findings: Finding[]
  readonly cards: YamlBlock[]
  readonly supplies: YamlBlock[]
  readonly steps: Step[]
  /** Text of the last heading. */
  stage?: string
  /** How many call-outs are still open that have been told already: their closing colons are no mistake of their own. */
  toldOpen: number
  /** How many figures there have been. */
  figures: number
}

/** Where the walk is. */
export interface At {
  /** At the top level of the document, where ordered lists are steps. */
  readonly top: boolean
  /** In a block quote, whose marks stand between the lines. */
  readonly quoted: boolean
  /** In a call-out. */
  readonly callout: boolean
  /** Adds minutes to the step around; absent outside of steps and call-outs. */
  readonly addMinutes?: (minutes: number) => void
  /** Says that what the step around leaves must dry so long, in minutes; absent as above. */
  readonly addDrying?: (minutes: number) => void
  /** Lines that look like a directive but are none: offsets from and to. What is in them stays text. */
  readonly stray: [number, number][]
}

/** Turns the children of a node into ours, in place. */
export type Descend = (parent: Nodes, at: At) => void

/** Turns one node into what stands in its place: itself, others, or nothing. */
export type Handler<N extends Nodes = Nodes> = (
  node: N,
  walk: Walk,
  at: At,
  descend: Descend,
) => Nodes | Nodes[]

/** Whether an offset lies in a line that looks like a directive but is none. */
export const isStray = (at: At, offset: number): boolean =>
  at.stray.some(([start, end]) => start <= offset && offset < end)
