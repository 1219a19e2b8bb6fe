import type { BlockContent, Data, Parent, PhrasingContent } from 'mdast'
import type { Literal, Node } from 'unist'
import type { Place } from '../length/finding.ts'
import type { LabelWord } from './label-words.ts'

/** `{base.size}`: a measure. `text` is filled in once the cards are built. */
export interface MeasureNode extends Literal {
  type: 'measure'
  /** The expression as written, without its braces. */
  value: string
  /** `5 7/8 in`; absent before filling, and when the measure has an error. */
  text?: string
  data?: Data & {
    /** Where each line of `value` starts in the file, if it has several. */
    lines?: readonly Place[]
  }
}

/** `:minutes[5]` */
export interface MinutesNode extends Node {
  type: 'minutes'
  minutes: number
}

/** `:drying[20 min]` */
export interface DryingNode extends Node {
  type: 'drying'
  minutes: number
}

export type CalloutKind = 'tip' | 'caution' | 'ahead' | 'variation'

/**
 * `:::tip`, `:::caution`, `:::ahead`, `:::variation`. A title (`:::tip[Title]`) is its first child, a paragraph whose
 * `data.directiveLabel` is true.
 */
export interface CalloutNode extends Parent {
  type: 'callout'
  kind: CalloutKind
  /** Names of the hazards that a caution says it is about: `:::caution{about=blades}`. */
  about?: readonly string[]
  children: BlockContent[]
}

/** What a figure can show. */
export const figureKinds = [
  'flat',
  'place',
  'folding',
  'closed',
  'standing',
  'edge',
  'apart',
  'lettering',
  'sheet',
  'envelope',
] as const
export type FigureKind = (typeof figureKinds)[number]

/** `::figure[caption]{show=flat of=base}` */
export interface FigureNode extends Parent {
  type: 'figure'
  show: FigureKind
  /** Name of a piece, layer or card; absent means the whole card. */
  of?: string
  /** Which numbers and names stand in it: `label="scores size"`. Absent, the figure and its step say. */
  labels?: readonly LabelWord[]
  /** The caption. */
  children: PhrasingContent[]
  data?: Data & {
    /** Where the value of `of` stands in the file. */
    ofPlace?: Place
  }
}

/** `::scan[caption]{link=https://…}`: printed as a code that opens the link. */
export interface ScanNode extends Parent {
  type: 'scan'
  /** The whole address, `http` or `https`. */
  link: string
  /** The caption. */
  children: PhrasingContent[]
}

declare module 'mdast' {
  interface PhrasingContentMap {
    measure: MeasureNode
    minutes: MinutesNode
    drying: DryingNode
  }
  interface BlockContentMap {
    callout: CalloutNode
    figure: FigureNode
    scan: ScanNode
  }
  interface RootContentMap {
    measure: MeasureNode
    minutes: MinutesNode
    drying: DryingNode
    callout: CalloutNode
    figure: FigureNode
    scan: ScanNode
  }
  interface TextData {
    /** Whether it stands in `:meant[…]`. */
    meant?: boolean
  }
  interface ListItemData {
    /** Its number through the whole lesson, if it is a step. */
    step?: number
  }
}
