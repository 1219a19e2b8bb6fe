import type { LooseNumber } from '../lesson/loose/loose-numbers.ts'
import { measureOf } from '../lesson/loose/proposal.ts'
import { partOf } from '../lesson/loose/saying.ts'
import type { Tied } from '../lesson/loose/tie.ts'
import { whyLeft } from '../lesson/loose/why-left.ts'
import { type Listing, type Section, words } from './listing.ts'

/** What has become of the plain numbers of a tutorial: those that have a name now, and those that are left. */
export function tiedListing({ placed, left, front, unit, addedUnit }: Tied): Listing {
  const likely = placed.filter(({ proposal }) => proposal.confidence === 'likely').length
  const sections: Section[] = [
    {
      heading: 'Placed',
      columns: [words('line'), words('number'), words('name'), words('sure'), words('why')],
      rows: placed.map(({ number, proposal }) => [
        String(number.place.line),
        number.words,
        measureOf(proposal),
        proposal.confidence === 'sure' ? 'sure' : 'likely',
        proposal.reason,
      ]),
      ...(likely > 0 && {
        note: 'Look at the likely ones: the value goes together, and the words leave some doubt.',
      }),
    },
    {
      heading: 'Left',
      columns: [words('line'), words('number'), words('what to do')],
      rows: [...front.map(inFront), ...left.map((number) => rowOf(number, whyLeft(number, unit)))],
    },
  ]
  return {
    title: said(placed.length, left.length + front.length),
    intro: [
      ...(likely > 0
        ? [`${likely} of those placed ${likely === 1 ? 'is' : 'are'} likely, the others are sure.`]
        : []),
      ...(addedUnit ? ['The front matter says `units: mm` now, because the card is in millimetres.'] : []),
    ].join(' '),
    sections: sections.filter(({ rows }) => rows.length > 0),
  }
}

const rowOf = ({ place, words: number }: LooseNumber, why: string): string[] => [
  String(place.line),
  number,
  why,
]

const inFront = (number: LooseNumber): string[] =>
  rowOf(
    number,
    number.proposal
      ? `It is ${partOf(number.proposal.candidate)}, and no name can stand in the front matter: leave it out there`
      : '',
  )

const said = (placed: number, left: number): string =>
  `${placed} ${placed === 1 ? 'number has' : 'numbers have'} a name now, ${left} ${left === 1 ? 'is' : 'are'} left.`
