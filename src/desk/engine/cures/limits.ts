import type { Healer } from '../cures.ts'

const plainLength = /^\d[\d\s./]*(?:in|mm|cm)$/

/** A plain length that is too long or too short becomes the longest or the shortest that will do. */
export const keepLength: Healer = ({ suggestion = '', from, to, was }, { lesson, filled }) => {
  const [, least] =
    /^(?:Make|Use) [^,]*?\bat (?:most|least) (\d[\d\s./]* ?(?:in|mm))\b/.exec(suggestion) ?? []
  const length = least ?? (/^Make \S+ \S+ 0 or more$/.test(suggestion) ? `0 ${filled.unit}` : undefined)
  const before = lesson.source.text.slice(Math.max(0, from - 40), from)
  // A height that is too much for where it stands is told at `at`.
  const isAt = /\bat:\s*$/.test(before) && !/`at`/.test(suggestion)
  if (length === undefined || isAt || !plainLength.test(was.replace(/^-\s*/, ''))) return []
  return [{ words: `Write \`${length}\``, edits: [{ from, to, insert: length }] }]
}
