import type { StepView } from '../body.ts'
import type { Html } from '../html-text.ts'
import type { HandoutView } from '../view.ts'

/** One slide: a step, or what stands between two of them. */
export interface SlideView {
  readonly id: string
  /** Missing where it is none. */
  readonly number: number | null
  /** `Step 5 of 15` */
  readonly place: string
  /** What it is called in the list of steps. */
  readonly name: string
  /** The heading of its stage, as plain text; empty where there is none. */
  readonly stage: string
  readonly body: Html
  readonly figures: readonly Html[]
  readonly across: readonly Html[]
  readonly minutes: string | null
  readonly drying: string | null
}

/**
 * The slides of a lesson in their order: what stands before its first step, its steps, and what is between them.
 *
 * @param names of the steps, by their numbers.
 */
export function slidesOf(
  { intro, before, stages }: HandoutView,
  names: ReadonlyMap<number, string>,
): SlideView[] {
  const blocks = [
    ...before.map((block) => ({ block, stage: '' })),
    ...stages.flatMap(({ blocks: own, name }) => own.map((block) => ({ block, stage: plain(name) }))),
  ]
  const count = blocks.reduce((sum, { block }) => sum + (block.steps?.length ?? 0), 0)
  const slides = blocks.flatMap(({ block, stage }, i) => [
    ...(block.steps ?? []).map((step) => stepSlide(step, names.get(step.number) ?? '', stage, count)),
    ...(block.prose ? [wordsSlide(`words-${i + 1}`, stage, block.prose)] : []),
  ])
  return [...(intro ? [wordsSlide('intro', '', intro)] : []), ...slides]
}

const stepSlide = (step: StepView, name: string, stage: string, count: number): SlideView => ({
  id: `step-${step.number}`,
  number: step.number,
  place: `Step ${step.number} of ${count}`,
  name,
  stage,
  body: step.body,
  figures: step.figures,
  across: step.across,
  minutes: step.minutes,
  drying: step.drying,
})

const wordsSlide = (id: string, stage: string, body: Html): SlideView => ({
  id,
  number: null,
  place: stage === '' ? 'To begin with' : stage,
  name: stage === '' ? 'To begin with' : `${stage}: more`,
  stage,
  body,
  figures: [],
  across: [],
  minutes: null,
  drying: null,
})

/** A heading comes as what stands in a page. */
const plain = (text: string): string =>
  text.replace(/&#x([0-9a-f]+);/gi, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))
