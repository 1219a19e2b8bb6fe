import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { timeOfSteps } from '../../../src/lesson/time-of-steps.ts'

const card = `---
title: A
---

\`\`\`card
fold: bridge
closed: 7 x 5 in
layers:
  backdrop: {on: floor, border: 1/8 in}
spans:
  sea wall: {height: 1 1/4 in, at: bottom}
\`\`\`

`
const stepsOf = (steps: string) => fillLesson(readLesson(card + steps)).steps
const dryingOf = (steps: string) => stepsOf(steps)[0]?.drying

describe('what dries waits for the next step that uses the same piece', () => {
  const others = '2. Cut the sea wall to {sea wall.size}.\n'
  test.each([
    ['3. Stick the backdrop on the floor.', 3],
    ['3. Fold the sea wall.\n4. Stick the sea wall over the backdrop.', 4],
    ['3. Fold the base.\n4. Stick all the pieces on.', 4],
  ])('%s', (last, before) => {
    const drying = dryingOf(`1. Paint the backdrop. :drying[20 min]\n${others}${last}`)
    expect(drying).toEqual({ minutes: 20, of: ['backdrop'], before })
  })

  test('where no later step uses it, the next one waits', () => {
    expect(dryingOf(`1. Paint the backdrop. :drying[1 h]\n${others}`)).toMatchObject({
      minutes: 60,
      before: 2,
    })
  })
  test('where the words name no piece, the next one waits', () => {
    expect(dryingOf(`1. Mix the colours. :drying[5]\n${others}`)).toEqual({ minutes: 5, of: [], before: 2 })
  })
  test('behind the last step nothing waits', () => {
    expect(dryingOf('1. Paint the backdrop. :drying[5]')).toEqual({ minutes: 5, of: ['backdrop'] })
  })
  test('two things that dry at once are dry with the last', () => {
    expect(dryingOf('1. Paint the backdrop. :drying[5] Paint the base. :drying[12 min]')?.minutes).toBe(12)
  })
  test('in a call-out it is not that of the step', () => {
    expect(
      dryingOf('1. Paint the backdrop.\n\n   :::ahead\n   Paint one. :drying[5]\n   :::'),
    ).toBeUndefined()
  })
})

describe('the time of steps', () => {
  const paint = '1. Paint the backdrop. :minutes[5] :drying[20 min]\n'
  const cut = '2. Cut the sea wall to {sea wall.size}. :minutes[8]\n'
  const stick = '3. Stick the backdrop on the floor. :minutes[2]'
  // By hand: 5, then 8 meanwhile, dry at 25, then 2.
  test.each([
    [paint + cut + stick, 27],
    [paint + cut.replace('[8]', '[30]') + stick, 37],
    [paint, 25],
  ])('%s', (steps, minutes) => {
    expect(timeOfSteps(stepsOf(steps))).toBe(minutes)
  })
  test('is nothing where no step says its time', () => {
    expect(timeOfSteps(stepsOf('1. Paint the backdrop. :drying[20 min]'))).toBe(0)
  })
})
