import { number, type Table, text, time, withoutEmpty } from '../table.ts'
import type { RunSheet } from './run-sheet.ts'
import { slotWords } from './slots.ts'

/** A run sheet as tables for a spreadsheet: the class by the clock, each course of it, and what to have ready. */
export const runSheetTables = ({ title, courses, ahead }: RunSheet): Table[] => [
  ...courses.map((course, i) => ({
    name: courses.length > 1 ? `Run sheet ${i + 1}` : 'Run sheet',
    title: `Run sheet: ${courses.length > 1 ? course.title : title}`,
    columns: [time('at'), number('minutes'), number('step'), text('stage'), text('what'), text('lesson')],
    rows: course.slots.map((slot) => [
      slot.from,
      slot.minutes,
      slot.step,
      slot.stage,
      slotWords(slot),
      slot.lesson,
    ]),
  })),
  ...withoutEmpty([
    {
      name: 'Before the class',
      title: `Before the class: ${title}`,
      columns: [text('what to have ready'), number('for step'), text('lesson')],
      rows: ahead.map(({ words, step, lesson }) => [words, step, lesson]),
    },
  ]),
]
