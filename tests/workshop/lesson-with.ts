import { checkCard } from '../../src/card/check.ts'
import { usualGrid } from '../../src/length/grid.ts'
import type { Unit } from '../../src/length/length.ts'
import type { FilledLesson, Supplies, Supply } from '../../src/lesson/lesson.ts'
import { wordingOf } from '../../src/wording/wording.ts'

const place = { line: 1, column: 1, offset: 0 }

/** A bridge card with a span, letters and an envelope. */
export const bridgeBlock = `fold: bridge
closed: 7 x 5 in
leg: 3/4 in
base: {stock: dark blue card, weight: 300 gsm}
layers:
  side strip: {on: [left tab, right tab], border: 0 in, stock: patterned paper}
  backdrop: {on: floor, border: {sides: 1/16 in, ends: 0 in}, stock: patterned paper}
spans:
  sea wall: {height: 1 1/4 in, at: bottom, stock: grey card}
lettering:
  name: {on: sea wall, letters: HARBOUR, widths: 5/8 in, margin: 1/4 in}
envelope: {make: diagonal, clearance: 1/4 in}`

/** A supply of the kind that the lesson stage gives. */
export const supply = (item: string, amount: Supply['amount']): Supply => ({ item, amount, place })

/** A filled lesson of these card blocks and supplies, without folding anything. */
export function lessonWith(
  blocks: Readonly<Record<string, string>>,
  supplies: Partial<Supplies> = {},
  unit: Unit = 'in',
): FilledLesson {
  const grid = usualGrid[unit]
  const cards = Object.entries(blocks).map(([name, text]) => {
    const { card, findings } = checkCard({ name, text, place }, { unit, grid })
    if (!card) throw new Error(findings.map((f) => f.message).join('\n'))
    return {
      card,
      proof: {
        freedom: 1,
        between: () => undefined,
        folding: () => undefined,
        making: () => undefined,
        findings: [],
      },
    }
  })
  return {
    frontMatter: {
      title: 'Harbour lights',
      level: 'improver',
      units: unit,
      sizes: [],
      for: 'anyone',
      allow: [],
      lang: 'en',
    },
    unit,
    wording: wordingOf('en', unit),
    grid,
    tree: { type: 'root', children: [] },
    cards,
    supplies: { each: [], shared: [], tutor: [], ...supplies },
    steps: [],
    said: new Map(),
    cautions: [],
    findings: [],
  }
}
