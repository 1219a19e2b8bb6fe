import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import type { Placement } from '../../src/fold/pose.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { courseOf } from '../../src/motion/course.ts'
import { spotOf, type Vector } from '../../src/motion/rigid.ts'
import type { CardTold } from '../../src/motion/told.ts'
import { actWords, momentWords } from '../../src/motion/words.ts'
import { cardTold } from '../../src/publish/motion/card.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { starterLesson } from '../../src/workshop/starter.ts'
import { filled } from './lesson.ts'
import { lessonText } from './motion-lesson.ts'

const lessons = readdirSync(new URL('../../lessons/', import.meta.url))
  .filter((name) => name.endsWith('.md'))
  .map((name) => [name, lessonText(name.replace('.md', ''))] as const)
const starters = [...foldStyles.values()].map((style) => [style.name, starterLesson(style)] as const)

const english = wordingOf('en', 'in')

const cardsOf = (text: string): { proven: ProvenCard; told: CardTold }[] =>
  filled(text).cards.map((proven) => {
    const told = cardTold(proven, english)
    if (!told) throw new Error('This card has no way')
    return { proven, told }
  })

/** The card of a lesson with one. */
const onlyCard = (name: string): { proven: ProvenCard; told: CardTold } => {
  const [card] = cardsOf(lessonText(name))
  if (!card) throw new Error(`\`${name}\` has no card`)
  return card
}

const spotAt = ({ origin, right, up }: Placement, x: number, y: number): Vector => [
  origin[0] + right[0] * x + up[0] * y,
  origin[1] + right[1] * x + up[1] * y,
  origin[2] + right[2] * x + up[2] * y,
]
const far = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

/** Moments off those that are written, and the three stops. */
const moments = [0, 0.013, 0.21, 0.377, 0.503, 0.73, 0.991, 1, 1.007, 1.19, 1.333, 1.62, 1.987, 2]

test.each([...lessons, ...starters])(
  '%s: every corner keeps to its true way, to a quarter of a millimetre',
  (_, text) => {
    for (const { proven, told } of cardsOf(text)) {
      const { card, proof } = proven
      const course = courseOf(told)
      const making = proof.making()
      expect(told.stops.map(({ name }) => name)).toEqual([...(making ? ['flat'] : []), 'shut', 'standing'])
      // In a box what hangs on something lifted is lifted with it, by so many sheets.
      const slack = proof.closed?.isFlat === false ? 2 : 0.25
      for (const moment of moments) {
        const pose = moment <= 1 ? making?.poseAt(moment) : proof.between(moment - 1)
        if (!pose) continue
        const places = course.placesAt(moment)
        for (const [i, plate] of told.plates.entries()) {
          const [there, place] = [pose.get(plate.name), places[i]]
          expect([plate.name, there !== undefined]).toEqual([plate.name, plate.joins <= moment])
          if (!there || !place) continue
          for (const [x, y] of plate.outline)
            expect(
              far(spotOf(place, [x, y, 0]), spotAt(there, x, y)),
              `${plate.name} at ${moment}`,
            ).toBeLessThan(slack)
        }
      }
      expect(told.plates.map(({ name }) => name)).toEqual(
        card.structure.plates.map(({ name }) => name).filter((name) => proof.closed?.pose.has(name)),
      )
    }
  },
)

test.each(lessons)(
  '%s: what it is told is small, and its acts follow one another from flat to standing',
  (_, text) => {
    for (const { told } of cardsOf(text)) {
      expect(JSON.stringify(told).length).toBeLessThan(80_000)
      let end = 0
      for (const { from, to, text: words } of told.acts) {
        expect([from, words.length > 5]).toEqual([end, true])
        end = to
      }
      expect(end).toBe(2)
    }
  },
)

test('in a box the walls of a nest meet the floor that they hang on', () => {
  const { told } = onlyCard('tide-box')
  const places = courseOf(told).placesAt(0.4)
  for (const {
    between: [p, q],
    line,
  } of told.creases) {
    const [a, b] = [places[p], places[q]]
    const floors = [p, q].map((i) => told.plates[i]?.name ?? '')
    if (!a || !b || !floors.some((name) => /^nest \d floor$/.test(name))) continue
    for (const [x, y] of line) expect(far(spotOf(a, [x, y, 0]), spotOf(b, [x, y, 0]))).toBeLessThan(0.1)
  }
})

test('a card that cannot be followed from the flat sheet starts shut; one that does not open ends there', () => {
  const { proven } = onlyCard('harbour-lights')
  const { card, proof } = proven
  const shut = cardTold({ card, proof: { ...proof, making: () => undefined } }, english)
  expect([shut?.stops.map(({ name }) => name), shut?.at[0], shut?.at.at(-1)]).toEqual([
    ['shut', 'standing'],
    1,
    2,
  ])
  const stays = cardTold({ card, proof: { ...proof, between: () => undefined } }, english)
  expect([stays?.stops.map(({ name }) => name), stays?.at[0], stays?.at.at(-1)]).toEqual([
    ['flat', 'shut'],
    0,
    1,
  ])
  expect(
    cardTold({ card, proof: { ...proof, making: () => undefined, between: () => undefined } }, english),
  ).toBeUndefined()
})

test('windows, film, hatches and letters are told as the figures have them', () => {
  const { told: arches } = onlyCard('harbour-arches')
  expect(arches.plates.filter(({ holes }) => holes.length > 0)).toHaveLength(4)
  const { told } = onlyCard('harbour-lights')
  const plate = (name: string) => told.plates.find((one) => one.name === name)
  expect(
    plate('sea wall')
      ?.letters.map(({ text }) => text)
      .join(''),
  ).toBe('HARBOUR')
  expect(told.stocks[plate('beam')?.stock ?? 0]).toMatchObject({ opacity: 0.6, hatch: null })
  expect([plate('beam')?.glints.length, plate('floor')?.glints.length]).toEqual([2, 0])
  expect(plate('floor')?.cuts).toHaveLength(2)
})

test('moments and acts are said as a teacher would', () => {
  const { told } = onlyCard('low-tide-z-card')
  expect([0, 0.1, 0.25, 0.5, 0.8, 0.95, 1, 1.5, 2].map((moment) => momentWords(told, moment))).toEqual([
    'flat',
    'a little folded',
    'a quarter folded',
    'half folded',
    'three quarters folded',
    'nearly all folded',
    'shut',
    'half open',
    'standing',
  ])
  expect([0, 0.6, 1.5, 2].map((moment) => actWords(told, moment))).toEqual([
    'Fold the crease between the middle and the back.',
    'Fold the crease between the tongue and the middle, and it is shut.',
    'Open it, and it stands.',
    'It stands.',
  ])
})
