import { expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const card = `---
title: A
---

\`\`\`card
fold: bridge
closed: 7 x 5 in
layers:
  backdrop: {on: floor, border: 1/8 in}
envelope: {make: diagonal}
\`\`\`

`
const workOf = (step: string) => {
  const work = fillLesson(readLesson(`${card}1. ${step}\n`)).steps[0]?.work
  if (!work) return 'nothing'
  return [work.cuts && 'cut', work.scores && 'score', work.more && 'more'].filter(Boolean).join(' ')
}

test.each([
  ['Cut the base to {base.size}.', 'cut'],
  ['Cut the base to {base.size}. Cut the backdrop to {backdrop.size}.', 'cut'],
  ['Cut the base to {base.size} and score it at {base.scores}.', 'cut score'],
  ['Turn the base over. Score the valleys at {base.valleys}.', 'score'],
  ['Cut the backdrop to {backdrop.size} and stick it on the floor.', 'cut more'],
  ['Cut the base to {base.size}. Lay it with the long side along the bottom.', 'cut more'],
  ['Cut a window out of the front.', 'nothing'],
  ['Cut a square of envelope paper, {envelope.sheet}.', 'cut'],
  ['Cut away the four corners of the envelope.', 'nothing'],
  ['Stick the backdrop on the floor.', 'nothing'],
])('%s', (step, work) => {
  expect(workOf(step)).toBe(work)
})

test('what is cut into a piece that an earlier step has cut is no cutting from the sheet', () => {
  const { steps } = fillLesson(
    readLesson(`${card}1. Cut the base to {base.size}.\n2. Cut the base along the line.\n`),
  )
  expect(steps.map(({ work }) => work?.cuts)).toEqual([true, undefined])
})
