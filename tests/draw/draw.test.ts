import { expect, test } from 'vitest'
import { drawFigure } from '../../src/draw/draw.ts'
import { colours } from '../../src/draw/ink.ts'
import { cardOf, gate, harbour } from './cards.ts'

const card = cardOf(harbour)

test('an unknown piece is named, with the nearest', () => {
  for (const show of ['flat', 'place', 'standing'] as const)
    expect(drawFigure(show, card, 'bakdrop', 'in')).toEqual({
      findings: [
        {
          rule: 'unknown-name',
          severity: 'error',
          message: 'Unexpected name `bakdrop`, expected a piece of this card',
          suggestion: 'Write `backdrop`',
        },
      ],
    })
})

test.each(['sheet'] as const)('%s is not drawn from one card, and says so', (show) => {
  expect(drawFigure(show, card, undefined, 'in')).toEqual({
    findings: [
      {
        rule: 'figure-not-drawn',
        severity: 'warning',
        message: `A figure that shows \`${show}\` is not drawn from one card: it wants the pieces of a kit and their sheet`,
        suggestion:
          'Show `flat`, `place`, `folding`, `closed`, `standing`, `edge`, `apart`, `lettering` or `envelope` instead',
      },
    ],
  })
})

test('a card that does not fold can be drawn flat, but not standing, shut or with a span', () => {
  const proof = {
    freedom: 0,
    between: () => undefined,
    folding: () => undefined,
    making: () => undefined,
    findings: [],
  }
  const flat = { card: card.card, proof }
  expect(drawFigure('flat', flat, undefined, 'in')).toHaveProperty('svg')
  for (const [show, of] of [
    ['standing', undefined],
    ['closed', undefined],
    ['place', 'beam'],
  ] as const)
    expect(drawFigure(show, flat, of, 'in')).toMatchObject({
      findings: [{ rule: 'figure-not-drawn', message: expect.stringContaining('needs a card that folds') }],
    })
})

test('a bare card has no place to show', () => {
  const bare = {
    ...card,
    card: {
      ...card.card,
      layers: [],
      structure: { ...card.card.structure, pieces: card.card.structure.pieces.slice(0, 1) },
    },
  }
  expect(drawFigure('place', bare, undefined, 'in')).toMatchObject({
    findings: [
      { rule: 'figure-not-drawn', message: expect.stringContaining('Nothing is stuck on this card') },
    ],
  })
})

test('a piece is drawn in the accent colour where it stands, and the words say so', () => {
  const drawing = drawFigure('standing', cardOf(gate), 'sea mat', 'in')
  expect(drawing).toHaveProperty(
    'alternative',
    expect.stringContaining('Drawn in the accent colour and with a heavier line: sea mat.'),
  )
  expect(JSON.stringify(drawing)).toContain(colours.rust)
})
