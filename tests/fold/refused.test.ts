import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { mm, zero } from '../../src/length/length.ts'
import { card, point, sheet, strip, stuck } from './build.ts'
import { bridge, easel, popUp } from './cards.ts'

const refusal = (structure: Parameters<typeof foldCard>[0]) => {
  const { closed, standing, between, findings } = foldCard(structure)
  expect(between(1)).toBeUndefined()
  expect(standing).toBeUndefined()
  return { closed, findings }
}

test('folds-flat names the ring, how far it misses, and which panel cures it', () => {
  const { closed, findings } = refusal(popUp({ a: 30, b: 50, c: 40, d: 35 }))
  expect(closed).toBeUndefined()
  expect(findings).toEqual([
    {
      rule: 'folds-flat',
      severity: 'error',
      message:
        'The ring of `page 2`, `page 1`, `tab 2`, `c`, `b` and `tab 1` does not close when the card is shut: it misses by 5 mm',
      suggestion: 'Make `b` 5 mm shorter',
    },
  ])
  expect(foldCard(popUp({ a: 30, b: 45, c: 40, d: 35 })).findings).toEqual([])
})

test('folds-flat: legs of a bridge that differ, with a strip that spans them square', () => {
  const base = strip({
    panels: [
      ['left tab', mm(20)],
      ['left leg', mm(20)],
      ['floor', mm(120)],
      ['right leg', mm(25)],
      ['right tab', mm(20)],
    ],
    folds: 'MVVM',
    across: mm(50),
  })
  const structure = card({
    parts: [base, sheet('film', mm(160), mm(50))],
    bonds: [stuck('film', 'left tab', zero, zero), stuck('film', 'right tab', mm(45), zero)],
    plate: 'floor',
  })
  const { findings } = refusal(structure)
  expect(findings.map((f) => [f.rule, f.message.includes('misses by 5 mm')])).toEqual([['folds-flat', true]])
})

test('layers-cross names the panel that is in the way and the crease it would pass through', () => {
  const panels = [
    ['long', mm(30)],
    ['narrow', mm(10)],
    ['longer', mm(32)],
  ] as const
  const { closed, findings } = refusal(
    card({ parts: [strip({ panels, folds: 'VV', across: mm(40) })], plate: 'narrow' }),
  )
  expect(closed).toBeUndefined()
  expect(findings.map(({ rule, severity, message }) => ({ rule, severity, message }))).toEqual([
    {
      rule: 'layers-cross',
      severity: 'error',
      message:
        'When the card is shut, `longer` would have to pass through the crease between `long` and `narrow`',
    },
  ])
})

test('layers-cross: a layer that sticks out over the spine is pinched in it', () => {
  const panels = [
    ['front', mm(50)],
    ['back', mm(50)],
  ] as const
  const base = strip({ panels, folds: 'V', across: mm(40) })
  const layer = (left: number) =>
    card({
      parts: [base, sheet('note', mm(40), mm(30))],
      bonds: [stuck('note', 'back', mm(left), zero)],
      plate: 'back',
    })
  expect(refusal(layer(45)).findings.map((f) => f.rule)).toEqual(['layers-cross'])
  expect(foldCard(layer(50)).findings).toEqual([])
})

test('stuck-across-a-crease names both panels, what is stuck on them, and the cure', () => {
  const panels = [
    ['front', mm(50)],
    ['back', mm(50)],
  ] as const
  const structure = card({
    parts: [strip({ panels, folds: 'V', across: mm(40) }), sheet('ribbon', mm(60), mm(10))],
    bonds: [stuck('ribbon', 'front', mm(20), zero), stuck('ribbon', 'back', mm(20), zero)],
    plate: 'back',
  })
  expect(refusal(structure).findings).toEqual([
    {
      rule: 'stuck-across-a-crease',
      severity: 'error',
      message: '`ribbon` is stuck on both `front` and `back`, so the crease between them cannot fold',
      suggestion: 'Cut `ribbon` in two at the crease, or stick it on one side of the crease only',
    },
  ])
})

describe('bond-mismatch', () => {
  const parts = [sheet('card', mm(80), mm(60)), sheet('mat', mm(60), mm(40)), sheet('label', mm(20), mm(20))]
  test('two bonds that put one piece in two places, and by how much', () => {
    const bonds = [
      stuck('mat', 'card', mm(10), mm(10)),
      stuck('label', 'mat', mm(5), mm(5)),
      stuck('label', 'card', mm(15), mm(17)),
    ]
    expect(refusal(card({ parts, bonds, plate: 'card' })).findings).toEqual([
      {
        rule: 'bond-mismatch',
        severity: 'error',
        message:
          '`label` cannot be stuck on `card` there, because the two are held together elsewhere already: they are 2 mm apart',
        suggestion: 'Move `label` by that much, or leave one of the bonds out',
      },
    ])
  })
  test('a strip that is stuck higher on one tab of a bridge than on the other', () => {
    const good = bridge({})
    const [first, second] = good.bonds
    if (!first || !second) throw new Error('a bridge has two bonds')
    const bonds = [first, { ...second, at: point(second.at.x, mm(3)) }]
    const { findings } = refusal({ ...good, bonds })
    expect(findings.map((f) => [f.rule, f.message.includes('3 mm apart along the crease')])).toEqual([
      ['bond-mismatch', true],
    ])
  })
})

test('stuck-nowhere: a layer beside what it is stuck on', () => {
  const structure = card({
    parts: [sheet('card', mm(80), mm(60)), sheet('mat', mm(60), mm(40))],
    bonds: [stuck('mat', 'card', mm(80), zero)],
    plate: 'card',
  })
  expect(refusal(structure).findings).toEqual([
    {
      rule: 'stuck-nowhere',
      severity: 'error',
      message: '`mat` is stuck on `card`, but does not lie on it anywhere',
      suggestion: 'Move `mat` so that it lies on `card`',
    },
  ])
})

describe('does-not-stand', () => {
  test('pages that a short strip holds back, and where they stop', () => {
    const { closed, findings } = refusal(popUp({ a: 50, b: 30, c: 45, d: 35, degrees: 180 }))
    expect(closed).toBeDefined()
    // B and C stretched: 75² = 50² + 35² - 2·50·35·cos ω, so ω = 122.9° and the spine is still bent by 57°.
    expect(findings.map(({ rule, message }) => ({ rule, message }))).toEqual([
      {
        rule: 'does-not-stand',
        message: 'Opening the crease between `page 2` and `page 1` to 0° is too much: it stops at 57°',
      },
    ])
  })
  test('a stop that the easel cannot come down to', () => {
    const findings = refusal(easel(mm(100), mm(-20))).findings
    expect(findings.map((f) => [f.rule, f.message])).toEqual([
      ['does-not-stand', '`front` does not reach its stop on `base`, so the card does not stand'],
    ])
  })
  test('an angle that no crease has, and one of a crease that is not there', () => {
    const panels = [
      ['front', mm(50)],
      ['back', mm(50)],
    ] as const
    const parts = [strip({ panels, folds: 'V', across: mm(40) })]
    for (const angles of [[['front', 'back', 200]], [['front', 'front', 90]]] as const)
      expect(foldCard(card({ parts, plate: 'back', angles })).findings.map((f) => f.rule)).toEqual([
        'does-not-stand',
      ])
  })
})

test('unknown-plate names the nearest plate there is', () => {
  const good = bridge({})
  const display = { ...good.display, plate: 'flor' }
  expect(refusal({ ...good, display }).findings).toEqual([
    {
      rule: 'unknown-plate',
      severity: 'error',
      message: 'The plate that the card is shown by names a plate `flor` that the card does not have',
      suggestion: 'Write `floor`',
    },
  ])
})

test('crease-off-edge: a crease that runs through a panel', () => {
  const panels = [
    ['front', mm(50)],
    ['back', mm(50)],
  ] as const
  const parts = strip({ panels, folds: 'V', across: mm(40) })
  const line = { from: point(mm(60), zero), to: point(mm(60), mm(40)) }
  const hinges = parts.hinges.map((hinge) => ({ ...hinge, line }))
  expect(refusal(card({ parts: [{ ...parts, hinges }], plate: 'back' })).findings.map((f) => f.rule)).toEqual(
    ['crease-off-edge'],
  )
})

test('too-fine: lengths that whole numbers cannot compare exactly', () => {
  // Denominators without a common factor, so their common measure is finer than 2^53 of it can count.
  const fine = [1000003, 1000033, 1000037].map((d) => mm(new Fraction(d * 40 + 1, d)))
  const panels = fine.map((length, i) => [`panel ${i + 1}`, length] as const)
  const { closed, findings } = refusal(
    card({ parts: [strip({ panels, folds: 'VM', across: mm(50) })], plate: 'panel 1' }),
  )
  expect([closed, findings.map((f) => f.rule)]).toEqual([undefined, ['too-fine']])
})
