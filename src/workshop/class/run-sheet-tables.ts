import { named } from '../kit-tables.ts'
import { number, type Table, text, time, withoutEmpty } from '../table.ts'
import type { RunSheet } from './run-sheet.ts'
import { slotWords } from './slots.ts'

/** A run sheet as tables for a spreadsheet: the class by the clock, each course of it, and what to have ready. */
export const runSheetTables = ({ title, courses, ahead, wording }: RunSheet): Table[] => [
  ...courses.map((course, i) => ({
    name: [wording.say('class.run-sheet'), ...(courses.length > 1 ? [i + 1] : [])].join(' '),
    title: wording.say('class.run-sheet-title', { title: courses.length > 1 ? course.title : title }),
    columns: [
      time(wording.say('class.at')),
      number(wording.say('class.minutes')),
      number(wording.say('class.step')),
      text(wording.say('class.stage')),
      text(wording.say('kit.what')),
      text(wording.say('kit.lesson')),
    ],
    rows: course.slots.map((slot) => [
      slot.from,
      slot.minutes,
      slot.step,
      slot.stage,
      slotWords(slot, wording),
      slot.lesson,
    ]),
  })),
  ...withoutEmpty([
    {
      ...named(wording.say('class.before'), title, wording),
      columns: [
        text(wording.say('class.what-to-have-ready')),
        number(wording.say('class.for-step')),
        text(wording.say('kit.lesson')),
      ],
      rows: ahead.map(({ words, step, lesson }) => [words, step, lesson]),
    },
  ]),
]
