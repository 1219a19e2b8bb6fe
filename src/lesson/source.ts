import type { Point } from 'unist'
import type { Place } from '../length/finding.ts'
import { hasMark } from './parse.ts'

/** The text of a file, and where its lines are. */
export interface Source {
  readonly text: string
  /** The place of the characters from `start` up to, not including, `end`. Offsets count in the file's text. */
  place(start: number, end: number): Place & Required<Pick<Place, 'offset' | 'end'>>
}

/** Takes a file's text in. Line endings may be LF, CRLF or CR. */
export function makeSource(text: string): Source {
  let starts: number[] | undefined
  return {
    text,
    place(start, end) {
      starts ??= lineStarts(text)
      const line = lastAtMost(starts, start)
      return { line: line + 1, column: start - (starts[line] ?? 0) + 1, offset: start, end }
    },
  }
}

/** The place of a node or of anything else with a position. */
export function placeOf(position: { start: Point; end: Point } | undefined): Place {
  if (!position) return { line: 1, column: 1 }
  const { start, end } = position
  return {
    line: start.line,
    column: start.column,
    ...(start.offset !== undefined && end.offset !== undefined && { offset: start.offset, end: end.offset }),
  }
}

/** The very characters a node was read from. */
export const written = (source: Source, position: { start: Point; end: Point } | undefined): string =>
  source.text.slice(position?.start.offset ?? 0, position?.end.offset ?? 0)

function lineStarts(text: string): number[] {
  const starts = [hasMark(text) ? 1 : 0]
  for (const { index, 0: ending } of text.matchAll(/\r\n?|\n/g)) starts.push(index + ending.length)
  return starts
}

function lastAtMost(sorted: readonly number[], x: number): number {
  let [low, high] = [0, sorted.length - 1]
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((sorted[middle] ?? 0) <= x) low = middle
    else high = middle - 1
  }
  return low
}
