import { describe, expect, test } from 'vitest'
import { check } from './block.ts'

const top = 'fold: free\nclosed: 6 x 4 in\n'
const fold = `${top}panels: {front: 6 in, back: 6 in}\ncreases: [valley]\n`
/** Two strips; the second one is left to the mistake. */
const strips = `${top}strips:
  upper:
    panels: {front: 6 in, back: 6 in}
    creases: [valley]
`
const lower = `${strips}  lower:
    height: 1 in
`
const sheet = `${fold}sheets:\n`

/** Every mistake has a rule, a place and a cure. */
describe('mistakes in a free fold', () => {
  test.each<[string, string, string, number, number, string]>([
    ['no panels', top, 'missing-key', 1, 1, 'Add `panels:`'],
    ['a panel without a length', `${top}panels: {front: , back: 6 in}`, 'missing-key', 3, 10, 'Write one'],
    ['a panel of no length', `${top}panels: {front: 0 in}`, 'impossible-size', 3, 17, 'above zero'],
    [
      'a misspelt panel in a length',
      `${top}panels: {front: 6 in, back: frunt.width}\ncreases: [valley]`,
      'unknown-name',
      3,
      29,
      'Write `front.width`',
    ],
    [
      'panels that need each other',
      `${top}panels: {front: back.width, back: front.width}\ncreases: [valley]`,
      'name-circle',
      3,
      35,
      'does not depend',
    ],
    ['a crease too few', `${top}panels: {a: 1 in, b: 1 in}`, 'value', 3, 1, 'List 1 crease'],
    ['a crease too many', `${fold}`.replace('[valley]', '[valley, valley]'), 'value', 4, 10, 'List 1'],
    ['a crease where none is', `${top}panels: {a: 6 in}\ncreases: [valley]`, 'value', 4, 10, 'out'],
    ['a crease of no kind', fold.replace('[valley]', '[vally]'), 'value', 4, 11, 'Write `valley`'],
    ['a key of no use', `${fold}bond: []`, 'unknown-key', 5, 1, 'Write `bonds`'],
    ['panels beside strips', `${strips}panels: {a: 1 in}`, 'value', 7, 1, 'Move `panels:`'],
    ['creases beside strips', `${strips}creases: [valley]`, 'value', 7, 1, 'Move `creases:`'],
    ['a strip without keys', `${strips}  lower: 3 in`, 'value', 7, 10, 'indented below'],
    ['a strip without panels', `${lower}    creases: []`, 'missing-key', 7, 3, 'Add `panels:`'],
    ['a misspelt key of a strip', `${lower}    panel: {front: , back: }`, 'unknown-key', 9, 5, '`panels`'],
    [
      'a strip whose length is said twice',
      `${lower}    width: 12 in\n    panels: {front: , back: }\n    creases: [valley]`,
      'value',
      9,
      5,
      'Take `width:` out',
    ],
    [
      'a strip that is not of the sheet',
      `${lower}    panels: {a: 6 in, b: 6 in}\n    creases: [valley]`,
      'no-shared-panel',
      7,
      3,
      'under `sheets:`',
    ],
    [
      'strips in another order than on the sheet',
      `${lower}    panels: {back, tab: 1 in}
    creases: [valley]
  lowest:
    height: 1 in
    panels: {front: , tag: 1 in}
    creases: [valley]`,
      'no-shared-panel',
      11,
      3,
      'from top to bottom',
    ],
    [
      'a panel in two places',
      `${lower}    panels: {front: 5 in, wall: 2 in, back: 6 in}\n    creases: [valley, valley]`,
      'shared-panel',
      9,
      39,
      'Write `back:` without a length',
    ],
    [
      'a panel with another strip between its parts',
      `${lower}    panels: {back: }
  lowest:
    height: 1 in
    panels: {front: , back: }
    creases: [valley]`,
      'shared-panel',
      12,
      14,
      'in the strip between too',
    ],
    [
      'a strip that reaches too far before a panel that ends in line',
      `${lower}    panels: {front: , wall: 7 in, back: }\n    creases: [valley, mountain]`,
      'impossible-size',
      9,
      35,
      'above zero',
    ],
    [
      'one crease that folds two ways',
      `${lower}    panels: {front: , back: }\n    creases: [mountain]`,
      'unlike-creases',
      7,
      3,
      'Write `valley` in both',
    ],
    [
      'strips that leave nothing',
      `${lower.replace('1 in', '4 in')}    panels: {front: , back: }\n    creases: [valley]`,
      'sticks-out',
      8,
      13,
      'at most 4 in high together',
    ],
    [
      'strips that are higher than the sheet',
      `${lower.replace('upper:', 'upper:\n    height: 4 in')}    panels: {front: , back: }\n    creases: [valley]`,
      'sticks-out',
      9,
      13,
      'at most 4 in high together',
    ],
    [
      'two strips that do not say how high they are',
      `${strips}  lower:\n    panels: {front: , back: }\n    creases: [valley]`,
      'missing-key',
      4,
      3,
      'Add `height:`',
    ],
    [
      'a crossing strip that is longer than what it crosses',
      `${strips}  flap:\n    along: height\n    panels: {front: 5 in, tab: 1 in}\n    creases: [valley]`,
      'shared-panel',
      9,
      21,
      'Write `front:` without a length',
    ],
    [
      'a crossing strip that is wider than what it crosses',
      `${strips}  flap:\n    along: height\n    width: 7 in\n    panels: {front: , tab: 1 in}\n    creases: [valley]`,
      'shared-panel',
      9,
      12,
      'at most 6 in wide',
    ],
    [
      'two strips that are wider together than what they cross',
      `${strips}  one:
    along: height
    panels: {front: , tab: 1 in}
    creases: [valley]
  two:
    along: height
    panels: {front: , tag: 1 in}
    creases: [valley]`,
      'shared-panel',
      7,
      3,
      'at most 6 in wide together',
    ],
    [
      'a strip that crosses what is described later',
      `${strips.replace('upper:', 'upper:\n    height: 2 in')}  flap:
    along: height
    panels: {tab: 1 in, tag: 1 in}
    creases: [valley]
  wing:
    height: 1 in
    panels: {tag: 6 in, back: 6 in}
    creases: [valley]`,
      'missing-key',
      8,
      3,
      'Add `width:`',
    ],
    [
      'a strip that crosses two others where they are not',
      `${strips}  left column:
    along: height
    panels: {foot: 1 in, front: }
    creases: [valley]
  lowest:
    panels: {foot: , toe: 6 in}
    creases: [valley]
  right column:
    along: height
    panels: {toe: , gap: 1 in, back: }
    creases: [valley, valley]`,
      'shared-panel',
      16,
      32,
      'Make the panels before it 1 in shorter',
    ],
    [
      'panels that would be cut from the same place',
      `${lower}    panels: {wing: 2 in, back: }
    creases: [valley]
  flap:
    along: height
    panels: {tab: 1 in, front: }
    creases: [valley]`,
      'overlap',
      13,
      14,
      'under `sheets:`',
    ],
    ['a strip with the name of a panel', strips.replace('upper', 'front'), 'name-taken', 5, 14, 'of its own'],
    ['a panel called base', `${top}panels: {base: 6 in}`, 'name-taken', 3, 10, 'of its own'],
    [
      'a panel of two sheets',
      `${sheet}  tag: {height: 1 in, panels: {front: 1 in}}`,
      'name-taken',
      6,
      32,
      'of its own',
    ],
    [
      'a layer with the name of a strip',
      `${strips}layers:\n  upper: {on: front}`,
      'name-taken',
      8,
      3,
      'of its own',
    ],
    ['a sheet without keys', `${sheet}  tag: red`, 'value', 6, 8, 'indented below'],
    ['a misspelt key of a sheet', `${sheet}  tag: {widht: 1 in}`, 'unknown-key', 6, 9, 'Write `width`'],
    ['a sheet without a width', `${sheet}  tag: {height: 1 in}`, 'missing-key', 6, 3, 'Write one'],
    ['a sheet without a height', `${sheet}  tag: {width: 1 in}`, 'missing-key', 6, 3, 'Add `height:`'],
    [
      'a sheet that is stuck on nothing',
      `${sheet}  tag: {width: 1 in, height: 1 in}`,
      'loose-sheet',
      6,
      3,
      'under `pieces:`',
    ],
    [
      'a panel of several with the name of its sheet',
      `${sheet}  tag: {height: 1 in, panels: {tag: 1 in, tab: 1 in}, creases: [valley]}`,
      'name-taken',
      6,
      32,
      'of its own',
    ],
    [
      'a slit with the name of a panel',
      `${fold}slits: {back: {on: front, length: 1 in}}`,
      'name-taken',
      5,
      9,
      'of its own',
    ],
    ['a length with the name of a panel', `${fold}lengths: {back: 1 in}`, 'name-taken', 5, 11, 'of its own'],
    ['lengths in a list', `${fold}lengths: [1 in]`, 'value', 5, 10, 'a line'],
    ['a length without a unit', `${fold}lengths: {leg: 3/4}`, 'no-unit', 5, 16, 'Write `3/4 in`'],
    ['bonds that are no list', `${fold}bonds: {panel: front, onto: back}`, 'value', 5, 8, 'a line'],
    ['a bond that is no group', `${fold}bonds: [front]`, 'value', 5, 9, 'onto: wall'],
    [
      'a misspelt bonded panel',
      `${fold}bonds:\n  - {panel: frnt, onto: back}`,
      'unknown-name',
      6,
      13,
      '`front`',
    ],
    ['a bond without a panel', `${fold}bonds:\n  - {onto: back}`, 'unknown-name', 6, 5, 'Choose one of'],
    ['a panel on itself', `${fold}bonds:\n  - {panel: back, onto: back}`, 'value', 6, 25, 'stuck on'],
    [
      'a misspelt key of a bond',
      `${fold}bonds:\n  - {panel: front, onto: back, botom: 0}`,
      'unknown-key',
      6,
      32,
      'Write `bottom`',
    ],
    [
      'a bond that is placed twice',
      `${fold}bonds:\n  - {panel: front, onto: back, left: 0, right: 0}`,
      'value',
      6,
      41,
      'one of the two',
    ],
    [
      'a bond turned by a word',
      `${fold}bonds:\n  - {panel: front, onto: back, turn: half}`,
      'value',
      6,
      38,
      'from -360 to 360',
    ],
    ['creases of a shut card that are no list', `${fold}shut: flat`, 'value', 5, 7, 'a line'],
    ['a crease of one panel', `${fold}shut:\n  - {between: front, bent: flat}`, 'value', 6, 15, 'bent: 90'],
    [
      'a crease that is not bent',
      `${fold}shut:\n  - {between: [front, back]}`,
      'missing-key',
      6,
      5,
      'Add `bent:`',
    ],
    [
      'a crease bent too far',
      `${fold}shut:\n  - {between: [front, back], bent: 270}`,
      'value',
      6,
      36,
      'from 0 to 180',
    ],
    [
      'a crease that is not there',
      `${top}panels: {a: 6 in, b: 3 in, c: 3 in}
creases: [valley, valley]
shut:
  - {between: [a, c], bent: flat}`,
      'unknown-crease',
      6,
      15,
      '`a` has a crease to `b`',
    ],
    [
      'a crease of a sheet that has none',
      `${sheet}  tag: {width: 1 in, height: 1 in}
bonds: [{panel: tag, onto: front}]
shut:
  - {between: [tag, front], bent: flat}`,
      'unknown-crease',
      9,
      15,
      '`tag` has no creases',
    ],
    ['a stand of one word', `${fold}stand: upright`, 'value', 5, 8, 'stand: {panel: back'],
    ['a misspelt panel that stays put', `${fold}stand: {panel: bck}`, 'unknown-name', 5, 16, 'Write `back`'],
    ['a card that rests oddly', `${fold}stand: {rests: uprihgt}`, 'value', 5, 16, 'Write `upright`'],
    ['a card turned too far', `${fold}stand: {turn: 720}`, 'value', 5, 15, 'from -360 to 360'],
    [
      'a stop on nothing',
      `${fold}stand: {until: {panel: front, edge: left, left: 1 in}}`,
      'unknown-name',
      5,
      16,
      'Choose one of',
    ],
    [
      'a slit without a panel',
      `${fold}slits:\n  slot: {length: 1 in}`,
      'unknown-name',
      6,
      3,
      'Choose one of',
    ],
    ['a slit without a length', `${fold}slits:\n  slot: {on: back}`, 'missing-key', 6, 3, 'Add `length:`'],
    [
      'a slit that ends outside its panel',
      `${fold}slits:\n  slot: {on: back, length: 3 in, left: 3 in}`,
      'sticks-out',
      6,
      28,
      'Make it shorter',
    ],
    [
      'a slit of no length',
      `${fold}slits:\n  slot: {on: back, length: 0 in}`,
      'sticks-out',
      6,
      28,
      'move it away',
    ],
  ])('%s', (_, text, rule, line, column, cure) => {
    const { card, findings } = check(text)
    expect(card).toBeUndefined()
    const found = findings.find((f) => f.rule === rule)
    expect([found?.place?.line, found?.place?.column], JSON.stringify(findings)).toEqual([line, column])
    expect(found?.suggestion).toContain(cure)
  })
})
