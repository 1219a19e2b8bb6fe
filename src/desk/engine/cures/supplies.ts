import { type Field, readYaml } from '../../../card/yaml.ts'
import type { Healer } from '../cures.ts'

/** A line for a tool among what is shared, one for two people, to be changed. */
export const listTool: Healer = ({ suggestion = '' }, { lesson }) => {
  const { text } = lesson.source
  const [, tool] = /^Add `([^`]+)` to/.exec(suggestion) ?? []
  if (tool === undefined || !lesson.supplies) return []
  const shared = readYaml(lesson.supplies).top.value.fields.get('shared')
  const last = shared?.value.kind === 'map' ? [...shared.value.fields.values()].at(-1) : undefined
  const line = last && ownLine(text, last)
  if (!line) return []
  const ending = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n'
  const insert = `${ending}${line.indent}${tool}: 1 per 2`
  return [
    {
      words: `Add \`${tool}: 1 per 2\` to the supplies, to be changed`,
      edits: [{ from: line.to, to: line.to, insert }],
    },
  ]
}

/** A supply that nobody needs goes, with its line. */
export const unlistSupply: Healer = ({ from }, { lesson }) => {
  const { text } = lesson.source
  if (!lesson.supplies) return []
  const groups = [...readYaml(lesson.supplies).top.value.fields.values()]
  const all = groups.flatMap(({ value }) => (value.kind === 'map' ? [...value.fields.values()] : []))
  const field = all.find(({ keyPlace }) => keyPlace.offset === from)
  const line = field && ownLine(text, field)
  if (!field || !line) return []
  // With the line ending before it: the last line of a block may have none behind.
  const start = /(?:\r\n|\r|\n)$/.exec(text.slice(0, line.from))?.[0].length ?? 0
  return [
    {
      words: `Take \`${field.key}\` out of the list`,
      edits: [{ from: line.from - start, to: line.to, insert: '' }],
    },
  ]
}

/** The line of a field that stands on one alone, without its ending. */
function ownLine(
  text: string,
  { keyPlace, value }: Field,
): { from: number; to: number; indent: string } | undefined {
  const { offset = 0 } = keyPlace
  const from = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1
  const indent = text.slice(from, offset)
  const length = text.slice(offset).search(/[\r\n]|$/)
  const to = offset + length
  return /^[ \t]*$/.test(indent) && (value.place.end ?? 0) <= to ? { from, to, indent } : undefined
}
