import { describe, expect, test } from 'vitest'
import { flatParts } from '../../src/draw/flat/parts.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { publishHandout } from '../../src/publish/handout.ts'
import { catalogue } from '../../src/workshop/catalogue.ts'
import { starterLesson } from '../../src/workshop/starter.ts'
import { starterCard } from '../../src/workshop/starter-card.ts'
import { memory } from '../cli/memory.ts'

const folds = [...catalogue.values()].map((fold) => {
  const text = starterLesson(fold)
  return { name: fold.name, text, card: starterCard(fold, 'in'), steps: stepsIn(text) }
})

/** The steps as they are written, each in one line. */
function stepsIn(text: string): string[] {
  const [, list = ''] = text.split(/^## .*$/m)
  return list.split(/^\d+\. /m).slice(1)
}

describe.each(folds)('the starter lesson for $name', ({ text, card, steps }) => {
  const { pieces, plates, bonds, shut = [] } = card.structure

  test('checks without a word', () => {
    for (const units of ['in', 'mm'] as const)
      expect(fillLesson(readLesson(text), { units }).findings).toEqual([])
  })

  test('cuts every piece, and sticks nothing on one that is not cut yet', () => {
    const cutAt = new Map(
      pieces.map(({ name }) => [
        name,
        steps.findIndex((step) => step.startsWith('Cut') && step.includes(`{${name}.size}`)),
      ]),
    )
    for (const [name, at] of cutAt) expect(at, name).toBeGreaterThan(-1)
    const pieceOf = new Map(plates.map((plate) => [plate.name, plate.piece]))
    for (const { plate, onto } of bonds) {
      const needed = [plate, onto].map((name) => cutAt.get(pieceOf.get(name) ?? '') ?? 0)
      const said = steps.findIndex(
        (step, i) =>
          i >= Math.max(...needed) && / (?:Stick|Put) .*(?:with|without) /.test(step.split('\n')[0] ?? ''),
      )
      expect(said, `${plate} on ${onto}`).toBeGreaterThan(-1)
    }
  })

  test('a knife where there is a slit or a window, and a caution at its first use', () => {
    const opened = pieces.filter((piece) => {
      const { slits, holes } = flatParts(card, piece)
      return slits.length + holes.length > 0
    })
    const first = steps.findIndex((step) => step.includes('craft knife'))
    expect(first >= 0).toBe(opened.length > 0)
    expect(text.includes('  craft knife: 1 per 2')).toBe(opened.length > 0)
    expect(steps.findIndex((step) => step.includes(':::caution{about=blades}'))).toBe(first)
  })

  test('a box is set up, a card is pressed flat', () => {
    const isBox = shut.some(({ degrees }) => degrees % 180 !== 0)
    expect(/Press every fold flat\.[^\n]* Shut the card/.test(text) && isBox).toBe(false)
    expect(text.includes('to a right angle')).toBe(isBox)
  })

  test('what slides is put in without tape', () => {
    const slides = bonds.some(({ slide }) => slide !== undefined)
    expect(/without tape, so that (?:it slides|they slide)/.test(text)).toBe(slides)
  })
})

test('a name that says what it is needs no `card` behind it', () => {
  const starter = catalogue.get('side')?.starter ?? ''
  const title = (name: string): string | undefined =>
    /title: (.*)/.exec(starterLesson({ name, summary: 'A.', starter }))?.[1]
  expect(['gate', 'box card', 'match box', 'belly band'].map(title)).toEqual([
    'Gate card',
    'Box card',
    'Match box',
    'Belly band',
  ])
})

test('one crease is a crease, two are creases; numbered panels need no article', () => {
  const text = (name: string): string => folds.find((fold) => fold.name === name)?.text ?? ''
  expect(text('side')).toContain('Fold the valley at {base.valleys} towards you.')
  expect(text('letter')).toContain('Fold the valleys at {base.valleys} towards you.')
  expect(text('accordion')).toContain('Stick it to the outside of panel 1 with double-sided tape.')
  expect(text('accordion')).toContain('Stick them to panel 2, panel 3 and panel 4 with')
  expect(text('easel')).toContain('Stick it to the floor with foam tape.')
})

test.each(['bridge', 'easel', 'tunnel'])('the handout of %s is made', async (name) => {
  const { outside, disk } = memory()
  const lesson = fillLesson(readLesson(folds.find((fold) => fold.name === name)?.text ?? ''))
  const options = { paper: 'a4', theme: 'step-sheet', out: 'a', force: false, pdf: false } as const
  const { findings } = await publishHandout(lesson, options, outside)
  expect([findings, [...disk.keys()]]).toEqual([[], ['a.html']])
})
