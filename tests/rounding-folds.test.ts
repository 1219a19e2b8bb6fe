import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { foldStyles } from '../src/card/fold-styles.ts'
import { free } from '../src/card/folds/free.ts'
import type { FoldStyle } from '../src/card/style.ts'
import { readLesson } from '../src/lesson/read.ts'
import { blockOf } from './rounding/blocks.ts'
import { printed } from './rounding/prints.ts'
import { anySize, rulers, squareSize } from './rounding/sizes.ts'

const styles: FoldStyle[] = [...foldStyles.values(), { ...free, parameters: {} } as unknown as FoldStyle]

const lessonOf = (block: string) =>
  readLesson(`---
title: A card
---

\`\`\`card
${block.trimEnd()}
\`\`\`

1. Cut the base to {base.size} and score it at {base.scores}.
`)

/** On a machine that does much else, in milliseconds. */
const patience = 240_000

/** Eight cards of each fold, a few of them its starter, each in both units: a print costs about 15 ms. */
test.each(styles)(
  '$name holds with any lengths, at any size, in both units',
  (style) => {
    const square = style.name === 'endless' || style.name === 'exploding box'
    const card = fc.record({
      block: fc.oneof(
        { weight: 2, arbitrary: fc.constant(style.starter) },
        { weight: 4, arbitrary: blockOf(style) },
      ),
      size: square ? squareSize : anySize,
      inch: fc.constantFrom(...rulers.in),
      metric: fc.constantFrom(...rulers.mm),
    })
    let proven = 0
    fc.assert(
      fc.property(card, ({ block, size, inch, metric }) => {
        const lesson = lessonOf(block)
        const first = printed(lesson, size, 'in', inch)
        const second = printed(lesson, first.closed, 'mm', metric)
        expect([...first.troubles, ...second.troubles]).toEqual([])
        if (first.proven && second.proven) proven++
      }),
      { numRuns: 8, seed: 1959 },
    )
    expect(proven).toBeGreaterThan(1)
  },
  patience,
)
