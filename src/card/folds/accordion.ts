import { bySpine } from '../making/on-top.ts'
import { spineChoice } from '../making/spine.ts'
import { upright } from '../strip.ts'
import type { Side } from '../structure.ts'
import type { Chosen, FoldStyle, Panels } from '../style.ts'

/** How far each crease of the standing card is bent, in degrees; half of it turns the zigzag square to the table's edge. */
const bend = 60

const namesOf = (panels: number): string[] => Array.from({ length: panels }, (_, i) => `panel ${i + 1}`)

/** Seen on the shut card is the outside of the first panel, then the insides as it is pulled out. */
const panelsOf = (panels: number): Panels =>
  Object.fromEntries(namesOf(panels).map((name, i): [string, Side] => [name, i === 0 ? 'back' : 'face']))

const usual = 4

/**
 * n panels of W, V M V M …: no panel lies in a fold of others, so all are of one size. The second panel stays put, since
 * shut its face looks to the front, with the outside of the first one over it.
 */
export const accordion: FoldStyle<never, 'panels', 'spine'> = {
  name: 'accordion',
  summary: 'A long strip in zigzag, which stands when it is pulled out.',
  parameters: {},
  counts: { panels: { help: 'number of panels', usual, least: 2, most: 12 } },
  choices: { spine: spineChoice },
  panels: panelsOf(usual),
  panelsFor: ({ counts }: Chosen<'panels'>) => panelsOf(counts.panels),
  limits: () => [],
  build(input) {
    const names = namesOf(input.counts.panels)
    return bySpine(
      input,
      ({ width, height }) =>
        upright(
          {
            stock: input.stock,
            panels: names.map((name) => ({ name, length: width })),
            folds: names.slice(1).map((_, i) => (i % 2 === 0 ? 'valley' : 'mountain')),
            across: height,
          },
          'panel 2',
          names.slice(1).map((name, i) => [names[i] ?? '', name, bend]),
          -bend / 2,
        ),
      'upright',
    )
  },
  starter: `fold: accordion
closed: 4 x 6 in
base: {stock: white card, weight: 250 gsm}
layers:
  cover panel:
    on: panel 1
    border: 1/8 in
    stock: patterned paper
  picture:
    on: [panel 2, panel 3, panel 4]
    border: 1/4 in
    stock: coloured paper`,
}
