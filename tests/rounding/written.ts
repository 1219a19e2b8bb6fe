import type Fraction from 'fraction.js'
import { parse } from 'yaml'
import type { Border, Card } from '../../src/card/card.ts'
import { evaluate, type Value } from '../../src/length/evaluate.ts'
import { formatLength } from '../../src/length/format.ts'
import { mm } from '../../src/length/length.ts'
import { parseMeasure } from '../../src/length/parse.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'

type Written = Readonly<Record<string, unknown>>
const group = (value: unknown): Written =>
  typeof value === 'object' && value !== null ? (value as Written) : {}

/** A card block as it is written, and what its expressions come to, exactly, over the names of the card that was made of it. */
export function writtenIn(block: string, { names }: Pick<Card, 'names'>) {
  const whole = group(parse(block, { schema: 'failsafe' }))
  const valueIn = (text: unknown): Value | undefined =>
    typeof text === 'string' ? evaluate(parseMeasure(text).expression, names.lookup) : undefined
  const exact = (text: unknown): Fraction | undefined => {
    const value = valueIn(text)
    if (value?.kind === 'number') return value.value
    return value?.kind === 'length' ? value.value : undefined
  }
  const border = (layer: string, edge: keyof Border): Fraction | undefined => {
    const all = group(group(whole.layers)[layer]).border
    if (typeof all === 'string') return all === 'auto' ? undefined : exact(all)
    if (Array.isArray(all)) return exact(all[['left', 'right', 'top', 'bottom'].indexOf(edge)])
    const together = edge === 'left' || edge === 'right' ? 'sides' : 'ends'
    const text = group(all)[edge] ?? group(all)[together] ?? '0'
    return text === 'auto' ? undefined : exact(text)
  }
  return { whole, exact, valueIn, border }
}

/** Lengths of folds that keep things apart: they never shrink. */
const keepApart = [
  'gap',
  'part',
  'creep',
  'border',
  'seam',
  'glue',
  'grip',
  'around',
  'overlap',
  'notch',
  'exploding box step',
]
/** Those of what must fit inside something: they never grow. */
const fitInside = ['tag', 'wing', 'mover', 'slot', 'panel', 'reach', 'end', 'door', 'tongue', 'swing strip']

/** Lengths that are on the wrong side of what is written: gaps that shrank, pieces that grew. */
export function troublesOfDirections(
  { card, proof }: ProvenCard,
  { whole, exact, valueIn }: ReturnType<typeof writtenIn>,
): string[] {
  const say = (x: Fraction): string => formatLength(mm(x), card.unit)
  const never =
    (way: 'smaller' | 'larger') =>
    (what: string, found: Fraction, wanted: Fraction | undefined): string[] => {
      if (wanted === undefined) return []
      const by = way === 'smaller' ? wanted.sub(found) : found.sub(wanted)
      return by.gt(0) ? [`${what} is ${say(found)}, ${way} than ${say(wanted)}`] : []
    }
  const [notSmaller, notLarger] = [never('smaller'), never('larger')]
  const pieces = new Map(card.structure.pieces.map((piece) => [piece.name, piece.size]))
  const spans = Object.entries(group(whole.spans)).flatMap(([name, span]) =>
    notLarger(`the span ${name}`, pieces.get(name)?.height ?? mm(0), exact(group(span).height)),
  )
  const windows = Object.entries(group(whole.apertures)).flatMap(([name, window]) => {
    const [found, wanted] = [valueIn(`${name}.size`), valueIn(group(window).size)]
    if (found?.kind !== 'size' || wanted?.kind !== 'size') return []
    return (['width', 'height'] as const).flatMap((side) =>
      notLarger(`the ${side} of ${name}`, found.value[side], wanted.value[side]),
    )
  })
  const own = Object.entries(whole).flatMap(([key, text]) => {
    const isOne = (list: readonly string[]): boolean =>
      list.includes(key) || list.includes(`${card.fold} ${key}`)
    const found = isOne(keepApart) || isOne(fitInside) ? exact(key) : undefined
    if (!found) return []
    return isOne(keepApart)
      ? notSmaller(`the ${key}`, found, exact(text))
      : notLarger(`the ${key}`, found, exact(text))
  })
  const clearance = exact(group(whole.envelope).clearance)
  const { envelope } = card
  // A square sheet has its folds where the ruler lets them be; a side seam is as wide as it is asked to be.
  const thick = envelope?.make === 'side seam' ? (proof.closed?.thickness ?? mm(0)) : mm(0)
  const inside =
    envelope && clearance
      ? (['width', 'height'] as const).flatMap((side) =>
          notSmaller(
            `the ${side} inside the envelope`,
            envelope.inside[side],
            card.closed[side].add(clearance).add(thick),
          ),
        )
      : []
  return [...spans, ...windows, ...own, ...inside]
}
