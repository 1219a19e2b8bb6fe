import type { Severity } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import type { Paper } from '../../publish/page-css.ts'
import type { ClassAnswer, ClassAsked } from './class.ts'
import type { Completion } from './complete.ts'
import type { Explained } from './explain.ts'
import type { FoldOffered, FoldPicture } from './folds.ts'
import type { CardForm, FormChange } from './form.ts'
import type { MotionAnswer } from './motion.ts'
import type { SizesAnswer } from './sizes.ts'

/** A stretch of the text, in UTF-16 offsets. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** A replacement in the text. Several of one change never overlap, and their offsets are all of the text before it. */
export interface Edit extends Span {
  readonly insert: string
}

/** What a print is made with besides its text: the sentence at the top of the page. */
export interface Settings {
  /** As a teacher writes it; the lesson's own size without it. */
  readonly closed?: string
  readonly units?: Unit
  readonly paper: Paper
  readonly theme: string
  readonly people: number
  readonly spare: number
}

/** What was found in the lesson, at its place in the text. */
export interface Found extends Span {
  readonly rule: string
  readonly severity: Severity
  readonly line: number
  readonly column: number
  readonly message: string
  readonly suggestion?: string
  /** What can be done about it at once. */
  readonly cures: readonly Cure[]
}

/** Something that cures a finding, in the words of a button: ``Write `backdrop` ``. */
export interface Cure {
  readonly words: string
  readonly edits: readonly Edit[]
}

/** A step, where it stands in the text, and what is said of it where only one step is shown. */
export interface StepAt extends Span {
  readonly number: number
  readonly stage?: string
  readonly minutes?: number
}

/** A card block of the lesson. */
export interface CardAt extends Span {
  readonly name: string
  /** Shut size in words, when it is known. */
  readonly shut?: string
}

/** The handout as HTML: the body changes as one types, the rest with the settings alone. */
export interface PageOf {
  readonly lang: string
  readonly title: string
  /** Style sheet of the theme and the page box, without fonts. */
  readonly css: string
  readonly body: string
  readonly foot: PageFoot
  /** Whether its type is as small as it must be for one page. */
  readonly onePage?: boolean
}

/** What stands in the foot of each page, in the language of the page. */
export interface PageFoot {
  /** The lesson. */
  readonly title: string
  /** Which print this is; empty where it is said beside the page number. */
  readonly print: string
  readonly beside?: string
  /** The workshop's own line. */
  readonly own?: string
  /** The page of all, with `{page}` and `{pages}` where their numbers come. */
  readonly number: string
}

/** All that is seen of a lesson. */
export interface Look {
  /** That was looked at. */
  readonly text: string
  readonly title: string
  /** Unit of this print. */
  readonly unit: Unit
  /** Shut size of this print in words: `7 × 5 in`. */
  readonly shut?: string
  /** Why the wished size cannot be, if it cannot. */
  readonly refused?: Refusal
  /** The sizes that the lesson is offered in, as written. */
  readonly sizes: readonly string[]
  readonly findings: readonly Found[]
  /** The handout. Lessons with errors have one too, with what could be worked out. */
  readonly page: PageOf
  readonly steps: readonly StepAt[]
  /** A handout with every step whole, which that of the theme need not have. */
  readonly rows: PageOf
  readonly cards: readonly CardAt[]
  /** Pictures named in the lesson, from its folder, and its own logo. */
  readonly pictures: readonly string[]
}

/** Pictures of the lesson as data, by the address that stands in it; empty for one that was looked for in vain. */
export type PictureData = Readonly<Record<string, string>>

/** A `workshop.yaml` in the lesson's folder or in the one above. */
export interface WorkshopData {
  /** From the folder that is open. */
  readonly path: string
  /** Undefined where it cannot be read. */
  readonly text?: string
  /** The logo that it names, as data; empty where it was looked for in vain. */
  readonly logo?: string
}

/** What lies beside a lesson, as far as the page has read it. */
export interface Beside {
  readonly pictures: PictureData
  readonly workshop?: WorkshopData
}

/** Why something cannot be done, and what would help. */
export interface Refusal {
  readonly refused: string
  readonly suggestion?: string
}

/** A file that is made in the page: a text, or bytes. */
export interface MadeFile {
  readonly name: string
  readonly type: string
  readonly data: string | Uint8Array
}

/**
 * The engine as the page sees it: it runs in a worker, so everything answers later. It keeps the last lesson that it
 * has read, so that asking again about the same text costs little. It never throws because of a text.
 */
export interface Engine {
  look(text: string, settings: Settings, beside: Beside): Promise<Look>
  /** The address of the logo that a `workshop.yaml` names, if it names one. */
  logoIn(text: string): Promise<string | undefined>
  /** What may be written at a place of the text. */
  complete(text: string, at: number, settings: Settings): Promise<readonly Completion[]>
  /** What stands at a place: the value of a measure and where it comes from. */
  explain(text: string, at: number, settings: Settings): Promise<Explained | undefined>
  /** Another name for the piece whose name stands at a place, everywhere. */
  rename(text: string, at: number, to: string): Promise<readonly Edit[] | Refusal>
  /** The name that stands at a place and can be given anew. */
  renamable(text: string, at: number): Promise<(Span & { readonly name: string }) | undefined>
  /** The fields of a card block. */
  form(text: string, card: string): Promise<CardForm | Refusal>
  /** The text after a field was changed. */
  change(text: string, card: string, change: FormChange): Promise<readonly Edit[] | Refusal>
  folds(): Promise<readonly FoldOffered[]>
  /** The picture of a fold; undefined when there is no such fold. */
  foldPicture(fold: string, units: Unit): Promise<FoldPicture | undefined>
  /** A lesson to begin with. */
  starter(fold: string, units: Unit): Promise<string>
  /** The chart of all sizes of the lesson; undefined while the lesson has errors in its own size. */
  sizes(text: string, settings: Settings, beside: Beside): Promise<SizesAnswer | undefined>
  /** The cards of the lesson in motion. */
  motion(text: string, settings: Settings): Promise<MotionAnswer>
  /** Kits, cutting plan, cost and run sheet of a class. */
  classOf(asked: ClassAsked, settings: Settings): Promise<ClassAnswer>
  /** The lessons that a class file names, as they stand in it. */
  lessonsOfClass(text: string): Promise<readonly string[]>
  /** A class file for a lesson, to begin with. */
  classFileFor(text: string, path: string, settings: Settings): Promise<string>
  /**
   * Files of the lesson: the handout or the templates as a page, the measures as text, or what a machine cuts.
   *
   * @param fonts rules for the fonts of a page, with the fonts inside.
   */
  make(
    text: string,
    settings: Settings,
    what: MadeKind,
    beside: Beside,
    fonts: string,
  ): Promise<readonly MadeFile[] | Refusal>
}

export const madeKinds = ['page', 'text', 'template', 'svg', 'dxf', 'fold'] as const
export type MadeKind = (typeof madeKinds)[number]
