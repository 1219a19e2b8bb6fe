import { foldStyles } from '../../src/card/fold-styles.ts'
import { strip } from '../../src/card/strip.ts'
import { proveCard } from '../../src/fold/prove-card.ts'
import { usualGrid } from '../../src/length/grid.ts'
import type { Length, Unit } from '../../src/length/length.ts'
import { readSize } from '../../src/length/text.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { isRefused } from '../card/sizes.ts'

/** Everything at once: layers on one and on two panels, film, foam, letters, an upright pattern, windows. */
export const harbour = `fold: bridge
closed: 8 x 6 in
leg: closed.width / 8
base: {stock: dark blue card, weight: 300 gsm}
layers:
  backdrop:
    on: floor
    border: {sides: 1/16 in, ends: 0 in}
    stock: patterned paper
    direction: upright
  side strip:
    on: [left tab, right tab]
    border: 0 in
    stock: striped paper
spans:
  beam: {height: closed.height * 0.4, at: top, stock: vellum}
  sea wall: {height: closed.height / 5, at: bottom, stock: grey card, raise: 1 mm}
lettering:
  name:
    on: sea wall
    letters: HARBOUR
    widths: closed.width / 14
    margin: 1/4 in
apertures:
  porthole: {on: floor, size: closed.width / 4 x closed.height / 4}`

/** Uneven borders, a layer on a layer, and one on the outside. */
export const gate = `fold: gate
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  door panel: {on: [left door, right door], border: 1/8 in, stock: striped paper, direction: upright}
  sea mat: {on: back, border: {left: 1/4 in, right: 1/8 in, top: 1/2 in, bottom: 3/8 in}, stock: blue card}
  sea picture: {on: sea mat, border: 1/8 in, stock: patterned paper}
pieces:
  door sign: {size: 1 1/4 x 3/4 in, count: 2, stock: white card}`

export const blocks: Readonly<Record<string, string>> = {
  harbour,
  gate,
  ...Object.fromEntries(
    [...foldStyles.values()].filter((f) => f.name !== 'gate').map(({ name, starter }) => [name, starter]),
  ),
}

/** Closed sizes that every block is made in, unless its fold refuses one. */
export const sizes = ['8 x 6 in', '5 x 7 in', '6 x 6 in', 'A6 landscape', '210 x 148 mm'] as const
export const units = ['in', 'mm'] as const

/** A card of a block; throws when the block itself has errors, which no test here is about. */
export function cardOf(block: string, unit: Unit = 'in', closed?: string): ProvenCard {
  const { card, proof, findings } = proveCard(
    { name: 'card', text: block, place: { line: 1, column: 1, offset: 0 } },
    { unit, grid: usualGrid[unit], ...(closed !== undefined && { closed: readSize(closed) }) },
  )
  if (!card || !proof) throw new Error(`The card has errors: ${findings.map((f) => f.message).join('; ')}`)
  return { card, proof }
}

/** Every block at these sizes in both units. */
export const cardsAt = (these: readonly string[] = sizes) =>
  Object.entries(blocks).flatMap(([name, block]) =>
    these
      .filter((size) => !isRefused({ name }, size))
      .flatMap((size) =>
        units.map((unit) => ({ title: `${name}, ${size}, in ${unit}`, unit, ...cardOf(block, unit, size) })),
      ),
  )

/** A card whose base is a strip of `count` panels, each as wide as given, creases upright or level. */
export function pleated(widths: readonly Length[], along: 'width' | 'height', across: Length): ProvenCard {
  const { card, proof } = cardOf(blocks.side ?? '')
  const stock = card.structure.pieces[0]?.stock
  if (!stock) throw new Error('The side card has a base')
  const base = strip({
    stock,
    panels: widths.map((length, i) => ({ name: `panel ${i + 1}`, length })),
    folds: widths.slice(1).map((_, i) => (i % 2 === 0 ? 'valley' : 'mountain')),
    across,
    along,
  })
  return { card: { ...card, layers: [], structure: { ...card.structure, ...base, bonds: [] } }, proof }
}
