import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Settings } from '../../../src/desk/engine/engine.ts'
import { motionOf } from '../../../src/desk/engine/motion.ts'
import { de } from '../../../src/wording/messages/de.ts'
import { enGB } from '../../../src/wording/messages/en-gb.ts'

const settings: Settings = { paper: 'a4', theme: 'step-sheet', people: 1, spare: 0 }
const lesson = (path: string) => readFileSync(new URL(`../../../lessons/${path}.md`, import.meta.url), 'utf8')

test.each([
  ['harbour-lights', 'en-GB', enGB.motion, 'left leg'],
  ['deutsch/hafenlichter', 'de', de.motion, de.names['left leg']],
])('the card of %s is shown in space in `%s`', (path, locale, messages, panel) => {
  const { told, lang, labels, cards } = motionOf(lesson(path), settings)
  expect(lang).toBe(locale)
  expect([labels.play, labels.turnIt, labels.stops.shut, labels.turns.home]).toEqual([
    messages.play,
    messages['turn-it'],
    messages.shut,
    messages['as-it-was'],
  ])
  const [card] = told.cards
  expect(card?.words.stands).toBe(messages['it-stands'])
  expect(card?.plates.map(({ name }) => name)).toContain(panel)
  expect(cards[0]?.figures.join('')).toContain(messages['still-standing'])
})
