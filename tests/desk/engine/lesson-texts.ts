import { readdirSync, readFileSync } from 'node:fs'
import { type Entry, readYaml } from '../../../src/card/yaml.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { catalogue } from '../../../src/workshop/catalogue.ts'
import { starterLesson } from '../../../src/workshop/starter.ts'

/** A card block with every way of writing something that a teacher may use. */
const allWays = `---
title: All ways
units: in
---

\`\`\`card
# what it is
fold: "bridge"   # the fold
closed: '7 x 5 in'
leg: 3/4 in # a note

base: { stock: card,
        weight: 300 gsm }
layers:
    backdrop:   # behind
        on: floor
        border:
            sides: 1/16 in
            # the ends are flush
            ends: 0 in
        stock: "patterned paper"
    strips:
        on:
          - left tab
          - right tab
        border: [0 in, 0 in, 1/8 in, 1/8 in]
        stock: >-
          striped
          paper
spans: {
  beam: {height: closed.height / 2, at: top},
  wall: {height: 1 in, stock: grey card}
}
envelope: diagonal
\`\`\`

1. Cut the base to {base.size}.
`

const lessons = readdirSync('lessons')
  .filter((name) => name.endsWith('.md'))
  .map((name) => ({ name, text: readFileSync(`lessons/${name}`, 'utf8') }))
const starters = [...catalogue.values()].map((fold) => ({ name: fold.name, text: starterLesson(fold) }))

/** The lessons up to their card, a starter of each fold, and one written in every way; half of them again with the line endings of Windows. */
export const lessonTexts: readonly { readonly name: string; readonly text: string }[] = [
  { name: 'all ways', text: allWays },
  ...lessons,
  ...starters,
].flatMap(({ name, text: whole }, i) => {
  // Reading all steps again and again takes minutes.
  const text = whole.replace(/(?<=\n```card\n.*?\n```\n).*/s, '\n1. Cut the base to {base.size}.\n')
  const crlf = { name: `${name}, CRLF`, text: text.replace(/\n/g, '\r\n') }
  return i % 2 === 0 ? [{ name, text }, crlf] : [{ name, text }]
})

/** A value of a card block and where it stands, found without the form. */
export interface Leaf {
  readonly path: readonly string[]
  readonly text: string
  readonly from: number
  readonly to: number
}

/** Every text in a card block. */
export function leavesOf(text: string, card = 'card'): Leaf[] {
  const block = readLesson(text).cards.find(({ name }) => name === card)
  return block ? leavesIn(readYaml(block).top.value, []) : []
}

function leavesIn(entry: Entry, path: readonly string[]): Leaf[] {
  if (entry.kind === 'list') return entry.items.flatMap((item, i) => leavesIn(item, [...path, String(i)]))
  if (entry.kind === 'map')
    return [...entry.fields].flatMap(([key, { value }]) => leavesIn(value, [...path, key]))
  const { offset = 0, end = 0 } = entry.place
  return [{ path, text: entry.kind === 'text' ? entry.text : '', from: offset, to: end }]
}
