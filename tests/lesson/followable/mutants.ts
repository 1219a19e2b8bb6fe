import type { SaidMeasure, Sentence } from '../../../src/lesson/prose/sentence.ts'

/** A lesson's sentences with one thing spoilt. */
export interface Mutant {
  readonly what: string
  readonly sentences: readonly Sentence[]
}

type Sentences = readonly Sentence[]

const numbersOf = (sentences: Sentences): number[] => [
  ...new Set(sentences.flatMap(({ step }) => (step === undefined ? [] : [step]))),
]

/** The same steps in another order, numbered anew. */
function inOrder(sentences: Sentences, order: readonly number[]): Sentence[] {
  return [
    ...sentences.filter(({ step }) => step === undefined),
    ...order.flatMap((old, i) =>
      sentences.filter(({ step }) => step === old).map((sentence) => ({ ...sentence, step: i + 1 })),
    ),
  ]
}

/** Every two steps that stand one behind the other, or one apart, change places. */
export function swappedSteps(sentences: Sentences): Mutant[] {
  const numbers = numbersOf(sentences)
  return [1, 2].flatMap((apart) =>
    numbers.slice(apart).map((later, i) => {
      const earlier = numbers[i] ?? later
      const order = numbers.map((n) => (n === later ? earlier : n === earlier ? later : n))
      return { what: `steps ${earlier} and ${later} swapped`, sentences: inOrder(sentences, order) }
    }),
  )
}

/** Every step is left out once. */
export function droppedSteps(sentences: Sentences): Mutant[] {
  const numbers = numbersOf(sentences)
  return numbers.map((step) => ({
    what: `step ${step} left out`,
    sentences: inOrder(
      sentences,
      numbers.filter((n) => n !== step),
    ),
  }))
}

/** Every sentence of a step is left out once. */
export function droppedSentences(sentences: Sentences): Mutant[] {
  return sentences.flatMap((sentence) =>
    sentence.step !== undefined && sentence.callout === undefined && sentence.kind === 'text'
      ? [
          {
            what: `${sentence.step}: “${sentence.words}” left out`,
            sentences: sentences.filter((other) => other !== sentence),
          },
        ]
      : [],
  )
}

const scorePart = /^(?:scores|valleys|mountains|uprights|levels|slants)$/

/** Every measure that says scores is left out once. */
export function droppedScores(sentences: Sentences): Mutant[] {
  return sentences.flatMap((sentence) =>
    sentence.step === undefined || sentence.kind !== 'text'
      ? []
      : sentence.measures
          .filter(({ paths }) => paths.some((path) => path.some((part) => scorePart.test(part))))
          .map((measure) => ({
            what: `${sentence.step}: {${measure.node.value}} left out`,
            sentences: sentences.map((other) => (other === sentence ? without(sentence, measure) : other)),
          })),
  )
}

function without(sentence: Sentence, { start, end }: SaidMeasure): Sentence {
  const by = end - start
  const moved = (at: number): number => (at >= end ? at - by : at)
  return {
    ...sentence,
    words: sentence.words.slice(0, start) + sentence.words.slice(end),
    measures: sentence.measures
      .filter((measure) => measure.start !== start)
      .map((measure) => ({ ...measure, start: moved(measure.start), end: moved(measure.end) })),
  }
}
