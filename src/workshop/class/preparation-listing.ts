import type { Wording } from '../../wording/wording.ts'
import { count, type Listing, measure, type Section, withoutEmptyColumns, words } from '../listing.ts'
import { durationText } from './duration.ts'
import { minutesText } from './minutes-text.ts'
import { planPiece } from './plan-piece.ts'
import type { PreparationList } from './preparation.ts'

/** What is done on the evening before, as tables with room to tick off. */
export function preparationListing(list: PreparationList, wording: Wording): Listing {
  const sections = [
    cuttingSection(list, wording),
    scoringSection(list, wording),
    aheadSection(list, wording),
    packingSection(list, wording),
  ]
  return {
    title: wording.say('class.evening-title', { title: list.title }),
    intro: introOf(list, wording),
    sections: sections.filter(({ rows }) => rows.length > 0).map(withoutEmptyColumns),
  }
}

/** How long it takes, and whose figures that is worked out with. */
function introOf(list: PreparationList, wording: Wording): string {
  const { minutes, kits, measured, cutting, scoring, rates } = list
  const { say } = wording
  const time = durationText(minutes, wording)
  if (measured) return say('class.evening-measured', { time, kits })
  const used = [
    ...(cutting.length > 0 ? (['cut'] as const) : []),
    ...(scoring.length > 0 ? (['score'] as const) : []),
    ...(['item', 'kit'] as const),
  ]
  const said = used.map((of) => say('class.rate', { of, minutes: minutesText(rates[of], wording) }))
  return say('class.evening-estimate', { time, kits, rates: said.join(', ') })
}

function cuttingSection({ cutting, stack }: PreparationList, wording: Wording): Section {
  const { say, name } = wording
  return {
    heading: say('class.cut'),
    columns: [
      words(say('kit.stock')),
      measure(say('class.sheet')),
      words(say('class.layout')),
      count(say('class.sheets')),
      count(say('class.stacks')),
      count(say('class.cuts-of-each')),
      count(say('class.minutes')),
      words(say('class.done')),
    ],
    rows: cutting.map(({ stock, offcut, sheet, layout = '', sheets, stacks, cuts, minutes }) => [
      offcut ? say('sheets.offcut-of', { stock: name(stock) }) : name(stock),
      wording.size(sheet),
      layout,
      String(sheets),
      String(stacks),
      String(cuts),
      minutesText(minutes, wording),
      box,
    ]),
    note:
      stack === 1
        ? say('class.one-by-one', { example: 'trimmer: {stack: 3}' })
        : say('class.stack', { sheets: stack }),
  }
}

function scoringSection({ scoring }: PreparationList, wording: Wording): Section {
  const { say } = wording
  const several = new Set(scoring.map(({ lesson }) => lesson)).size > 1
  return {
    heading: say('class.score'),
    columns: [
      words(say('kit.piece')),
      words(say('kit.lesson')),
      count(say('class.pieces')),
      count(say('class.scores-of-each')),
      count(say('class.minutes')),
      words(say('class.done')),
    ],
    rows: scoring.map(({ piece, lesson, count: n, scores, minutes }) => [
      planPiece(piece, wording),
      several ? lesson : '',
      String(n),
      String(scores),
      minutesText(minutes, wording),
      box,
    ]),
  }
}

function aheadSection({ ahead }: PreparationList, { say }: Wording): Section {
  const several = new Set(ahead.map(({ lesson }) => lesson)).size > 1
  return {
    heading: say('class.have-ready'),
    columns: [
      words(say('kit.what')),
      count(say('class.for-step')),
      words(say('kit.lesson')),
      words(say('class.done')),
    ],
    rows: ahead.map(({ words: what, step, lesson }) => [
      what,
      step === undefined ? '' : String(step),
      several ? lesson : '',
      box,
    ]),
    note: say('class.no-minutes'),
  }
}

function packingSection({ packing }: PreparationList, wording: Wording): Section {
  const { say } = wording
  return {
    heading: say('class.pack'),
    columns: [
      words(say('kit.lesson')),
      count(say('class.kits')),
      count(say('class.items-in-each')),
      count(say('class.minutes')),
      words(say('class.done')),
    ],
    rows: packing.map(({ lesson, kits, items, minutes }) => [
      lesson,
      String(kits),
      String(items),
      minutesText(minutes, wording),
      box,
    ]),
    note: say('class.pack-note'),
  }
}

/** To be ticked. */
const box = '☐'
