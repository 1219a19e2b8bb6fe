import { describe, expect, test } from 'vitest'
import { exampleTexts, found, inputOf, starterTexts, withSentences } from './courses.ts'
import { droppedScores, droppedSentences, droppedSteps, type Mutant, swappedSteps } from './mutants.ts'

const inputs = (texts: readonly (readonly [string, string])[]) => texts.map(([, text]) => inputOf(text))
const lessons = { examples: inputs(exampleTexts), starters: inputs(starterTexts) }

/**
 * The share of the mutants that the rules find. Many are no mistakes that they are about: two layers in another order, a
 * look at the whole, a fold that is not told to be folded, a score that is said a second time where it is folded.
 */
function share(kind: keyof typeof lessons, mutate: (sentences: Mutant['sentences']) => Mutant[]) {
  const mutants = lessons[kind].flatMap((input) =>
    mutate(input.prose.sentences()).map(({ sentences }) => found(withSentences(input, sentences)).length > 0),
  )
  return mutants.filter(Boolean).length / mutants.length
}

describe('what the rules find of lessons that have been spoilt', () => {
  test.each([
    ['examples', swappedSteps, 0.18],
    ['examples', droppedSteps, 0.53],
    ['examples', droppedSentences, 0.28],
    ['examples', droppedScores, 0.62],
    ['starters', swappedSteps, 0.29],
    ['starters', droppedSteps, 0.62],
    ['starters', droppedSentences, 0.45],
    ['starters', droppedScores, 0.2],
  ] as const)('%s, %o', (kind, mutate, least) => {
    expect(share(kind, mutate)).toBeGreaterThanOrEqual(least)
  })
})
