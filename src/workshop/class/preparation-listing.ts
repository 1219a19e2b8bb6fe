import { formatSize } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import { count, type Listing, measure, type Section, withoutEmptyColumns, words } from '../listing.ts'
import { durationText } from './duration.ts'
import type { PreparationList } from './preparation.ts'

/** What is done on the evening before, as tables with room to tick off. */
export function preparationListing(list: PreparationList, unit: Unit): Listing {
  const sections = [
    cuttingSection(list, unit),
    scoringSection(list),
    aheadSection(list),
    packingSection(list),
  ]
  return {
    title: `The evening before: ${list.title}`,
    intro: introOf(list),
    sections: sections.filter(({ rows }) => rows.length > 0).map(withoutEmptyColumns),
  }
}

/** How long it takes, and whose figures that is worked out with. */
function introOf({ minutes, kits, measured, cutting, scoring, rates }: PreparationList): string {
  const about = `About ${durationText(minutes)} for ${kits} ${kits === 1 ? 'kit' : 'kits'}`
  if (measured) return `${about}, with the minutes of the class file.`
  const said = [
    ...(cutting.length > 0 ? [`${shown(rates.cut)} min a cut`] : []),
    ...(scoring.length > 0 ? [`${shown(rates.score)} min a score`] : []),
    `${shown(rates.item)} min an item`,
    `${shown(rates.kit)} min a kit`,
  ]
  return `${about}: an estimate with ${said.join(', ')}. Time yourself once, and put your own minutes under prepare in the class file.`
}

const shown = (minutes: number): string => String(Math.round(minutes * 100) / 100)

function cuttingSection({ cutting, stack }: PreparationList, unit: Unit): Section {
  return {
    heading: 'Cut',
    columns: [
      words('stock'),
      measure('sheet'),
      words('layout'),
      count('sheets'),
      count('stacks'),
      count('cuts of each'),
      count('minutes'),
      words('done'),
    ],
    rows: cutting.map(({ stock, offcut, sheet, layout = '', sheets, stacks, cuts, minutes }) => [
      offcut ? `${stock}, offcut` : stock,
      formatSize(sheet, unit),
      layout,
      String(sheets),
      String(stacks),
      String(cuts),
      shown(minutes),
      box,
    ]),
    note: `The cutting plan says how. ${stack === 1 ? 'Sheets are cut one by one; for a trimmer that takes more at once, write trimmer: {stack: 3} in the class file.' : `A stack is ${stack} sheets at most.`}`,
  }
}

function scoringSection({ scoring }: PreparationList): Section {
  const several = new Set(scoring.map(({ lesson }) => lesson)).size > 1
  return {
    heading: 'Score',
    columns: [
      words('piece'),
      words('lesson'),
      count('pieces'),
      count('scores of each'),
      count('minutes'),
      words('done'),
    ],
    rows: scoring.map(({ piece, lesson, count: n, scores, minutes }) => [
      piece,
      several ? lesson : '',
      String(n),
      String(scores),
      shown(minutes),
      box,
    ]),
  }
}

function aheadSection({ ahead }: PreparationList): Section {
  const several = new Set(ahead.map(({ lesson }) => lesson)).size > 1
  return {
    heading: 'Have ready',
    columns: [words('what'), count('for step'), words('lesson'), words('done')],
    rows: ahead.map(({ words: what, step, lesson }) => [
      what,
      step === undefined ? '' : String(step),
      several ? lesson : '',
      box,
    ]),
    note: 'The lessons do not say how long this takes, so no minutes are counted for it.',
  }
}

function packingSection({ packing }: PreparationList): Section {
  return {
    heading: 'Pack',
    columns: [words('lesson'), count('kits'), count('items in each'), count('minutes'), words('done')],
    rows: packing.map(({ lesson, kits, items, minutes }) => [
      lesson,
      String(kits),
      String(items),
      shown(minutes),
      box,
    ]),
    note: 'The packing list says what is in each. Put the label on when the kit is shut.',
  }
}

/** To be ticked. */
const box = '☐'
