import Fraction from 'fraction.js'
import type { Unit } from '../../src/length/length.ts'
import type { FilledLesson } from '../../src/lesson/lesson.ts'
import { formatValue } from '../../src/lesson/measure.ts'
import type { MeasureNode } from '../../src/lesson/nodes.ts'
import { measuresListing } from '../../src/workshop/measures-listing.ts'

/** A text of a print that gives lengths, and where it stands. */
export interface Printed {
  readonly where: string
  readonly text: string
}

/** A length as it is read off a print. */
export interface Read {
  readonly mm: Fraction
  readonly unit: Unit
}

const number = String.raw`\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?`
const lists = new RegExp(String.raw`((?:-?(?:${number})(?:, | and | × | to )?)+) (in|mm)\b`, 'g')

/** Every length in a text, such as the three of `1, 2 1/2 and 9 in`. Written for the tests alone. */
export const lengthsIn = (text: string): Read[] =>
  [...text.matchAll(lists)].flatMap(([, list = '', unit]) =>
    [...list.matchAll(new RegExp(number, 'g'))].map(([one]) => ({
      mm: one
        .split(' ')
        .map((word) => new Fraction(word))
        .reduce((sum, x) => sum.add(x))
        .mul(unit === 'in' ? new Fraction(127, 5) : 1),
      unit: unit as Unit,
    })),
  )

/** Rows and tables that tell how thick something is, or what others make and charge: no ruler measures those. */
const notByRuler = /^(thick|deep) when shut$|^Envelopes to buy|^By post/

/** All that a lesson prints in its steps, its supplies and its table of measures and that a ruler has to measure. */
export function printsOf(lesson: FilledLesson): Printed[] {
  const rows = measuresListing(lesson)
    .sections.filter(({ heading }) => !notByRuler.test(heading))
    .flatMap(({ heading, rows: all }) => all.map((row) => ({ heading, row })))
    .filter(({ row: [what = ''] }) => !notByRuler.test(what))
  return [
    ...measuresIn(lesson.tree)
      .filter(({ value }) => !value.endsWith('thickness') && !value.startsWith('card.'))
      .map(({ value, text = '' }) => ({ where: `{${value}}`, text })),
    ...[...lesson.supplies.each, ...lesson.supplies.shared, ...lesson.supplies.tutor].flatMap(
      ({ item, amount }) =>
        amount.kind === 'length'
          ? { where: item, text: formatValue({ kind: 'length', value: amount.length }, lesson.unit) }
          : [],
    ),
    ...rows.map(({ heading, row }) => ({ where: heading, text: row.join(' | ') })),
  ]
}

type AnyNode = { readonly type: string; readonly children?: readonly AnyNode[] }

/** The filled measures of a tree. */
export const measuresIn = (node: AnyNode): MeasureNode[] =>
  node.type === 'measure' ? [node as unknown as MeasureNode] : (node.children ?? []).flatMap(measuresIn)
