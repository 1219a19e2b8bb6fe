import type { Structure } from '../../src/card/structure.ts'
import type { FoldStyle } from '../../src/card/style.ts'
import { readLength } from '../../src/length/text.ts'
import { check } from './block.ts'

/** A square card is one that every fold can be made as. */
const closed = '6 x 6 in'

/** The bare mechanism with one key as given, as text; or why there is none. */
function built(style: FoldStyle, key?: string, value?: string) {
  // A fold that wants a list of parts has one in its starter; all others are built from nothing.
  const lists = check(`fold: ${style.name}\nclosed: ${closed}`).card === undefined
  const block = lists ? style.starter.replace(new RegExp(`^${key}:.*$`, 'm'), '') : `fold: ${style.name}`
  const text = `${block.replace(/^closed:.*$/m, '')}\nclosed: ${closed}${key ? `\n${key}: ${value}` : ''}`
  const { card, findings } = check(text)
  return { structure: card?.structure, text: card && textOf(card.structure), findings }
}

const textOf = (structure: Structure): string =>
  JSON.stringify(structure, (_, x) => (typeof x === 'bigint' ? String(x) : x))

/** `changed` if some other legal value of a key gives another card than its usual one. */
export function otherwise(style: FoldStyle, key: string): string {
  const usual = built(style)
  if (!usual.text) return `no usual card: ${usual.findings.map((f) => f.message)}`
  const others = valuesOf(style, key).flatMap((value) => built(style, key, value).text ?? [])
  if (others.length === 0) return 'no other value is legal'
  return others.some((text) => text !== usual.text) ? 'changed' : 'unchanged'
}

/** Whether a word of a choice makes a card that no other word of it makes. */
export function isOwnWord(style: FoldStyle, key: string, word: string): boolean {
  const cards = (style.choices?.[key]?.words ?? []).map((w) => built(style, key, w).text)
  const own = built(style, key, word).text
  return own !== undefined && cards.filter((text) => text === own).length === 1
}

const plain = ['1/8 in', '1/2 in', '1 in']
const changes = ['+ 1/8 in', '- 1/8 in', '* 2', '/ 2']

function valuesOf(style: FoldStyle, key: string): string[] {
  const parameter = style.parameters[key]
  if (parameter) return [...plain, ...changes.map((change) => `(${parameter.usual}) ${change}`)]
  const count = style.counts?.[key]
  if (count) return [count.usual - 1, count.usual + 1].map(String)
  return [...(style.choices?.[key]?.words ?? [])]
}

const anyLengths = ['0 in - 1 in', '0 in', '1/16 in', '1 in', '3 in', '6 in', '20 in']

/** The card that each of several lengths makes, sensible or not; none where it is refused. */
export const anyLengthsOf = (style: FoldStyle, key: string) =>
  anyLengths.map((length) => ({ length, structure: built(style, key, length).structure }))

/** Lengths of a parameter that are refused with another one that would work, and whether it does. */
export function saidToWork(style: FoldStyle, key: string) {
  return anyLengths.flatMap((refused) => {
    const cure = new RegExp(`the ${key} at (?:most|least) ([\\d /]+ in)\\b`)
    const said = built(style, key, refused)
      .findings.filter(({ rule }) => rule === 'impossible-size')
      .flatMap(({ suggestion = '' }) => suggestion.match(cure)?.[1] ?? [])
    return said.map((length) => ({
      refused,
      said: length,
      works: built(style, key, length).findings.length === 0 && readLength(length).gt(0),
    }))
  })
}
