import { listOf } from '../length/finding.ts'
import { type Reading, report, wordOf } from './reading.ts'
import { type Choice, type Chosen, type FoldStyle, type ReadFold, wordsOf } from './style.ts'
import type { Entry, Fields } from './yaml.ts'

/** The keys of a card block that a fold style asks for. Lengths of the parts that it lists, such as `tower.height`, have none of their own. */
export const keysOf = ({ parameters, counts = {}, choices = {}, keys = [] }: FoldStyle): string[] => [
  ...Object.keys(parameters).filter((key) => !key.includes('.')),
  ...Object.keys(counts),
  ...Object.keys(choices),
  ...keys,
]

/** The entries of a fold's parameters, each under its own key. */
export const entriesOf = ({ parameters }: FoldStyle, fields: Fields): ReadFold['entries'] =>
  new Map(
    Object.keys(parameters).flatMap((key) => {
      const entry = fields.get(key)?.value
      return entry ? [[key, entry] as const] : []
    }),
  )

/** Reads the counts and words of a fold. Whatever is wrong is reported, and the usual one taken. */
export function chosenIn(reading: Reading, fields: Fields, { counts = {}, choices = {} }: FoldStyle): Chosen {
  const entry = (key: string): Entry | undefined => fields.get(key)?.value
  return {
    counts: Object.fromEntries(
      Object.entries(counts).map(([key, { usual, least, most }]) => {
        const written = entry(key)
        const text = written?.kind === 'text' ? written.text.trim() : ''
        const count = Number(text)
        if (!written || (/^\d+$/.test(text) && count >= least && count <= most))
          return [key, written ? count : usual]
        report(
          reading,
          'value',
          written.place,
          `\`${key}\` wants a whole number from ${least} to ${most}`,
          `Write \`${key}: ${usual}\`, for instance`,
        )
        return [key, usual]
      }),
    ),
    choices: Object.fromEntries(
      Object.entries(choices).map(([key, choice]) => [
        key,
        settled(reading, wordOf(reading, entry(key), wordsOf(choice)), choice, entry(key)),
      ]),
    ),
  }
}

/** One of the words of a choice: a word that stands for another goes by which way the shut card stands. */
function settled(
  { findings, shape }: Reading,
  word: string,
  { words, byShape = {} }: Choice,
  entry: Entry | undefined,
): string {
  const stands = byShape[word]
  if (!stands) return word
  if (shape) return stands[shape]
  report(
    { findings },
    'value',
    entry?.place ?? { line: 1, column: 1 },
    `\`${word}\` cannot be told before \`closed\` is known, and that is not written out`,
    `Write width and height, such as \`closed: 5 x 7 in\`, or choose ${listOf(words, 'or')}`,
  )
  return words[0]
}

/** A style with the panels that these counts and words give it. */
export const styleFor = (style: FoldStyle, chosen: Chosen): FoldStyle =>
  style.panelsFor ? { ...style, panels: style.panelsFor(chosen) } : style
