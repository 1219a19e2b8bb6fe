import type { Root } from 'mdast'
import type { Card } from '../card/card.ts'
import type { YamlBlock } from '../card/yaml.ts'
import type { Proof } from '../fold/pose.ts'
import type { Area } from '../length/area.ts'
import type { Finding, Place } from '../length/finding.ts'
import type { Length, Size, Unit } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import type { BrandWish } from './brand/brand.ts'
import type { Dose } from './dose.ts'
import type { Said } from './figures/said.ts'
import type { Caution } from './safety/cautions.ts'
import type { Source } from './source.ts'

/** The front matter of a lesson, checked. */
export interface FrontMatter {
  readonly title: string
  readonly summary?: string
  readonly level: 'beginner' | 'improver' | 'advanced'
  readonly units: Unit
  readonly grid?: Length
  /** The unit `grid` is written in: in a print with another unit it does not count. */
  readonly gridUnit?: Unit
  /** Other closed sizes the lesson is offered in, as written and as read. */
  readonly sizes: readonly OtherSize[]
  /** The sheets that the stocks are cut from, in the figures that show it. */
  readonly sheets?: readonly StockSheet[]
  /** Whom the lesson is for: cautions speak to children's helpers too. */
  readonly for: 'anyone' | 'children'
  /** How long the class is that the lesson is taught in. */
  readonly time?: ClassTime
  /** Rules that the lesson breaks on purpose. */
  readonly allow: readonly Allowed[]
  /** BCP 47 language tag; `en` unless it says otherwise. */
  readonly lang: string
  readonly video?: string
  readonly credits?: string
  /** What is on all prints of the workshop, as far as the lesson says it itself. */
  readonly brand?: BrandWish
}

/** A closed size that a lesson is offered in besides its own. */
export interface OtherSize {
  readonly text: string
  readonly size: Size
  readonly place: Place
}

/** The sheet that a stock is cut from; without a stock, that of all others. */
export interface StockSheet {
  readonly stock?: string
  readonly size: Size
  readonly place: Place
}

/** How long a class is. */
export interface ClassTime {
  readonly minutes: number
  readonly place: Place
}

/** A rule about the lesson as a whole whose findings are not told, because the teacher has a reason. */
export interface Allowed {
  readonly rule: string
  readonly reason: string
  readonly place: Place
}

/** How much of something is wanted: a quantity, one for so many people or for a table, or as the teacher put it. */
export type Amount =
  /** `of`: what is counted, where it is no thing of its own, such as `drops`. */
  | { readonly kind: 'count'; readonly count: number; readonly of?: string }
  | { readonly kind: 'length'; readonly length: Length }
  | { readonly kind: 'area'; readonly area: Area }
  | { readonly kind: 'dose'; readonly dose: Dose }
  | { readonly kind: 'per'; readonly count: number; readonly people: number }
  | { readonly kind: 'per table'; readonly count: number }
  | { readonly kind: 'text'; readonly text: string }

export interface Supply {
  readonly item: string
  readonly amount: Amount
  readonly place: Place
}

/** What the lesson needs besides the pieces of its cards. */
export interface Supplies {
  readonly each: readonly Supply[]
  readonly shared: readonly Supply[]
  readonly tutor: readonly Supply[]
}

/** One step: the item of an ordered list, numbered on through the lesson. */
export interface Step {
  readonly number: number
  /** The heading above its list. */
  readonly stage?: string
  readonly minutes?: number
  readonly drying?: Drying
  /** What can be done before the class; missing where nothing can. */
  readonly work?: StepWork
  readonly place: Place
}

/** What a step asks for, as far as it can be done before the class. */
export interface StepWork {
  /** A piece is cut from its sheet. */
  readonly cuts: boolean
  /** Something is scored. */
  readonly scores: boolean
  /** And something else is done, or may be. */
  readonly more: boolean
}

/** How long what a step leaves must lie before it is used again. Hands are free meanwhile. */
export interface Drying {
  readonly minutes: number
  /** Names of what dries, as far as the words of the step say it. */
  readonly of: readonly string[]
  /**
   * The step that must wait for it: the next one that uses the same piece, or else the next one. None behind the last
   * step, and as long as the words have not been read.
   */
  readonly before?: number
}

/** A lesson as read, before any card is built. */
export interface Lesson {
  /** The file it was read from: offsets count in its text. */
  readonly source: Source
  readonly frontMatter: FrontMatter
  /** The front matter as written, if there is any. */
  readonly frontMatterBlock?: YamlBlock
  /**
   * The body, with the nodes of `nodes.ts` in place of directives and braces, and without front matter, card blocks and
   * supplies. Positions are those of the file.
   */
  readonly tree: Root
  readonly cards: readonly YamlBlock[]
  readonly supplies?: YamlBlock
  readonly steps: readonly Step[]
  readonly findings: readonly Finding[]
}

/** One card of a lesson with what folding it found out. */
export interface ProvenCard {
  readonly card: Card
  readonly proof: Proof
}

/** What a lesson is evaluated with, besides what it says itself. */
export interface Wishes {
  readonly closed?: Size
  /** The lesson's own closed size standing or lying, where no other one is wished. */
  readonly turned?: 'portrait' | 'landscape'
  readonly units?: Unit
  readonly grid?: Length
}

/** A lesson with all names resolved and all measures filled in. */
export interface FilledLesson {
  readonly frontMatter: FrontMatter
  /** The unit and ruler grid of this print. */
  readonly unit: Unit
  /** How it speaks: the language of the lesson, in that unit. */
  readonly wording: Wording
  readonly grid: Length
  /** As in `Lesson`, with every measure's `text` filled in. */
  readonly tree: Root
  readonly cards: readonly ProvenCard[]
  readonly supplies: Supplies
  readonly steps: readonly Step[]
  /** What each step speaks of in numbers, by its number. */
  readonly said: ReadonlyMap<number, Said>
  /**
   * What its tools and supplies call for and it does not say itself: to be printed before the first step, with
   * `closingAdvice` below.
   */
  readonly cautions: readonly Caution[]
  /** All of them: of the reading, the cards, the folding and the measures, in the order of the file. */
  readonly findings: readonly Finding[]
}
