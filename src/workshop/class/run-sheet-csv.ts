import { csvOf } from '../csv.ts'
import { clockText } from './clock.ts'
import type { RunSheet } from './run-sheet.ts'

/** A run sheet as comma-separated values, a table for each course. */
export const runSheetCsv = ({ courses }: RunSheet): string =>
  csvOf(
    courses.map(({ slots }) => [
      ['at', 'minutes', 'step', 'stage', 'what', 'lesson'],
      ...slots.map(({ from, minutes, step, stage = '', words, lesson = '' }) => [
        clockText(from),
        String(minutes),
        step === undefined ? '' : String(step),
        stage,
        words,
        lesson,
      ]),
    ]),
  )
