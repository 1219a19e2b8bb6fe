import type { Wording } from '../../wording/wording.ts'
import type { StepView } from '../body.ts'
import { escapeHtml, type Html, html } from '../html-text.ts'
import type { HandoutView } from '../view.ts'

/** One slide: a step, or what stands between two of them. */
export interface SlideView {
  readonly id: string
  /** Missing where it is none. */
  readonly number: number | null
  /** `Step 5`, of which only the number is seen. */
  readonly numbered: Html | null
  /** `Step 5 of 15` */
  readonly place: string
  /** Both, for who listens. */
  readonly told: string
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
  wording: Wording,
): SlideView[] {
  const blocks = [
    ...before.map((block) => ({ block, stage: '' })),
    ...stages.flatMap(({ blocks: own, name }) => own.map((block) => ({ block, stage: plain(name) }))),
  ]
  const count = blocks.reduce((sum, { block }) => sum + (block.steps?.length ?? 0), 0)
  const slides = blocks.flatMap(({ block, stage }, i) => [
    ...(block.steps ?? []).map((step) =>
      stepSlide(step, names.get(step.number) ?? '', stage, count, wording),
    ),
    ...(block.prose ? [wordsSlide(`words-${i + 1}`, stage, block.prose, wording)] : []),
  ])
  return [...(intro ? [wordsSlide('intro', '', intro, wording)] : []), ...slides]
}

function stepSlide(
  { number, body, figures, across, minutes, drying }: StepView,
  name: string,
  stage: string,
  count: number,
  { say }: Wording,
): SlideView {
  const place = say('screen.place', { number, count })
  const told = say('screen.place-name', { place, name })
  const numbered = numberedHtml(number, say)
  return {
    id: `step-${number}`,
    number,
    numbered,
    place,
    told,
    name,
    stage,
    body,
    figures,
    across,
    minutes,
    drying,
  }
}

const mark = '\ue000'

const numberedHtml = (number: number, say: Wording['say']): Html =>
  html(
    say('screen.step', { number: mark })
      .split(mark)
      .map((words) => (words === '' ? '' : `<span class="unseen">${escapeHtml(words)}</span>`))
      .join(`<span class="number">${number}</span>`),
  )

function wordsSlide(id: string, stage: string, body: Html, { say }: Wording): SlideView {
  const place = stage === '' ? say('screen.to-begin-with') : stage
  const name = stage === '' ? place : say('screen.more-of', { stage })
  const none = { figures: [], across: [], minutes: null, drying: null }
  return {
    id,
    number: null,
    numbered: null,
    place,
    told: say('screen.place-name', { place, name }),
    name,
    stage,
    body,
    ...none,
  }
}

/** A heading comes as what stands in a page. */
const plain = (text: string): string =>
  text.replace(/&#x([0-9a-f]+);/gi, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))
