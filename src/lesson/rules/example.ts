import type { RuleDoc } from './rule.ts'

/** The card of the examples of the manual: a bridge with a backdrop, a wall across it and an envelope. */
const card = `\`\`\`card
fold: bridge
closed: 7 x 5 in
leg: 3/4 in
layers:
  backdrop: {on: floor, border: {sides: 1/16 in}, stock: patterned paper}
spans:
  sea wall: {height: 1 1/4 in, at: bottom, stock: grey card}
envelope: {make: diagonal, stock: envelope paper}
\`\`\``

const front = ['---', 'title: An example', '---']

/**
 * A whole lesson round the example of a rule. What it says itself stands in place of the card (a block \`card\`) or of the
 * front matter.
 */
export function exampleLesson({ example }: Pick<RuleDoc, 'example'>): string {
  const own = example.startsWith('---') ? [] : front
  const block = /^```card/m.test(example) || own.length === 0 ? [] : [card]
  return [
    ...own.flatMap((line, i) => (i === own.length - 1 ? [line, ''] : [line])),
    ...block.flatMap((text) => [text, '']),
    example,
    '',
  ].join('\n')
}
