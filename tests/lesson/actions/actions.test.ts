import { describe, expect, test } from 'vitest'
import { actionsOf } from '../../../src/lesson/actions/actions.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { proseOf } from '../../../src/lesson/rules/prose.ts'

const card = `---
title: Shells
---

\`\`\`card
fold: bridge
closed: 7 x 5 in
layers:
  backdrop: {on: floor, border: {sides: 1/16 in}}
spans:
  sea wall: {height: 1 in}
pieces:
  gull: {size: 1 x 1/2 in, count: 3}
  nest 1: {size: 2 x 2 in}
\`\`\`

`
/** Each action as `kind objects > onto`, or what the words say instead of an object in brackets. */
function read(steps: string): string[] {
  const lesson = readLesson(card + steps)
  const filled = fillLesson(lesson)
  const { sentences, mentions } = proseOf({ lesson, filled })
  return actionsOf(sentences(), mentions).map(({ kind, objects, onto, says }) => {
    const names = (things: typeof objects) => things.map(({ named }) => named.name).join('+')
    return `${kind} ${names(objects) || `(${says})`}${onto.length > 0 ? ` > ${names(onto)}` : ''}`
  })
}

describe('what a step does, and to what', () => {
  test.each([
    ['Cut the backdrop to {backdrop.size}.', ['cut backdrop']],
    ['Cut a piece of patterned paper, {backdrop.size}.', ['cut backdrop']],
    ['Cut out the backdrop with scissors.', ['cut backdrop']],
    ['Cut the backdrop and stick it on the floor.', ['cut backdrop', 'stick backdrop > floor']],
    ['The next step is to stick the backdrop to the base.', ['stick backdrop > base']],
    ['You now carefully adhere the backdrop onto the base.', ['stick backdrop > base']],
    ['The backdrop is glued to the base.', ['stick backdrop > base']],
    [
      'Cut {gull.count} gulls, {gull.size} each, and glue them on the backdrop.',
      ['cut gull', 'stick gull > backdrop'],
    ],
    ['Stick the gull on the backdrop and the nest 1 on the base.', ['stick gull+nest 1 > backdrop+base']],
    ['Lay the first nest on the base.', ['lay nest 1 > base']],
    ['Put double-sided tape on the backdrop.', ['lay (glue) > backdrop']],
    ['Press the wall on the backdrop.', ['lay sea wall > backdrop']],
    ['Score it at {base.valleys}.', ['score base']],
    ['Cut all the pieces.', ['cut (several)']],
    ['Stick the picture on the base.', ['stick (other) > base']],
    ['Cut the notch out of the base.', ['cut (other)']],
    ['After cutting the backdrop, score the base.', ['cut backdrop', 'score base']],
  ])('%s', (words, actions) => expect(read(`1. ${words}`)).toEqual(actions))
})

describe('what is not done', () => {
  test.each([
    'Do not cut the backdrop.',
    'Check that the fold is sharp before you stick the backdrop.'.replace('Check', 'See'),
    'If you cut the backdrop, take care.'.replace(', take care', ''),
    'A score belongs on the outside of the fold.',
    'The fold line is in the middle of the backdrop.',
    'The glue stick and the tape are on the table.',
    'The backdrop is what people look at.',
  ])('%s', (words) => expect(read(`1. ${words}`)).toEqual([]))

  test('in a variation', () => {
    expect(read('1. See.\n\n:::variation\nCut the backdrop.\n:::')).toEqual([])
  })
})

test('they stand for what has been spoken of last, over steps too', () => {
  expect(read('1. Cut the backdrop.\n2. Score the base.\n3. Fold it, and press.')).toEqual([
    'cut backdrop',
    'score base',
    'fold base',
    'handle base',
  ])
})
