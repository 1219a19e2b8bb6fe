import { join } from 'node:path'
import { hasErrors } from '../../length/finding.ts'
import { reportName } from '../../publish/library/index-page.ts'
import { counted, type LibraryLesson } from '../../publish/library/library-view.ts'
import type { FindingJson } from '../../workshop/finding-json.ts'
import { findingsText } from '../findings.ts'
import { exitCodes } from '../problems.ts'
import type { Built } from './build.ts'
import { fileOf } from './places.ts'
import { libraryName } from './settings.ts'
import { indexName } from './write-pages.ts'

/** Errors of lessons and of the library file line by line, and what stood in the way of prints. */
export function troubleText({ view, problems }: Built, folder: string): string {
  const errors = (file: string, findings: readonly FindingJson[]): string =>
    findingsText(join(folder, file), findings.map(placed), { quiet: true })
  return [
    errors(libraryName, view.findings),
    ...view.lessons.map(({ path, findings }) => errors(path, findings)),
    ...problems.map(({ message, suggestion, lessons }) => {
      const of = lessons.length > 3 ? [...lessons.slice(0, 3), `${lessons.length - 3} more`] : lessons
      return `foldlore: ${message}\n${suggestion === undefined ? '' : `  ${suggestion}\n`}  Concerns ${of.join(', ')}\n`
    }),
  ].join('')
}

const placed = ({ line, column, ...finding }: FindingJson) => ({
  ...finding,
  ...(line !== undefined && column !== undefined && { place: { line, column } }),
})

/** What was done, in a few lines. */
export function summaryText({ view, made, kept, removed, stopped }: Built, out: string): string {
  if (hasErrors(view.findings)) return 'Nothing was printed: cure the library file first\n'
  const gone = removed > 0 ? `, ${counted(removed, 'file')} taken away` : ''
  const count = `${counted(made, 'print')} made, ${kept} as they were${gone}`
  if (stopped) return `Stopped: ${count}. The next run goes on from here\n`
  const softer = view.lessons
    .flatMap(({ findings }) => findings)
    .filter(({ severity }) => severity !== 'error')
  const more =
    softer.length > 0
      ? `${counted(softer.length, 'warning or hint', 'warnings and hints')} in ${join(out, reportName)}\n`
      : ''
  return `${counted(view.lessons.length, 'lesson')}: ${count}\n${more}Look at ${join(out, indexName)}\n`
}

/** The exit code of a build that is done. */
export function exitCodeOf({ view, problems, stopped }: Built): number {
  if (stopped) return exitCodes.outside
  const codes = problems.map(({ code }) => code)
  if (codes.length > 0) return Math.max(...codes)
  const errors = [view.findings, ...view.lessons.map(({ findings }) => findings)].some(hasErrors)
  return errors ? exitCodes.lessonErrors : exitCodes.done
}

/** What was done, for other programs. */
export const libraryJson = ({ view, problems, made, kept, removed, stopped }: Built, out: string) => ({
  title: view.title,
  made,
  kept,
  removed,
  ...(stopped && { stopped }),
  index: join(out, indexName),
  report: join(out, reportName),
  findings: view.findings,
  problems: problems.map(({ message, suggestion, lessons }) => ({ message, suggestion, lessons })),
  lessons: view.lessons.map((lesson) => ({
    lesson: lesson.path,
    title: lesson.title,
    prints: lesson.prints.map((print) => printJson(lesson, print, out)),
    older: lesson.older.map((print) => printJson(lesson, print, out)),
    findings: lesson.findings,
  })),
})

const printJson = (
  { path }: LibraryLesson,
  { name, size, unit, paper, theme, pdf }: LibraryLesson['prints'][number],
  out: string,
) => ({
  size,
  units: unit,
  paper,
  theme,
  html: join(out, fileOf(path, name, '.html')),
  ...(pdf && { pdf: join(out, fileOf(path, name, '.pdf')) }),
})
