import { type Entry, type Field, type Fields, readYaml, type YamlBlock } from '../../../card/yaml.ts'
import type { Explained } from '../explain.ts'
import type { KeptLesson } from '../kept-lesson.ts'
import { pathsWithPlaces } from '../rename/paths-in.ts'
import { blockHelp, keysAt, namedGroups, valueAt } from '../vocabulary/card-words.ts'
import { explainPath } from './measure.ts'

/** What stands at a place of a card block: a key, a fold, a name in an expression, or the length that is written. */
export function explainInCard(block: YamlBlock, at: number, kept: KeptLesson): Explained | undefined {
  const { fields } = readYaml(block).top.value
  const found = fieldAt(fields, at, [])
  if (!found) return undefined
  const fold = fields.get('fold')?.value
  const style = fold?.kind === 'text' ? fold.text.trim() : undefined
  const { path, field } = found
  const entry = entryAt(field.value, at)
  const inKey = isIn(field.keyPlace, at)
  const place = inKey ? field.keyPlace : entry?.place
  const { offset: from, end: to } = place ?? {}
  if (from === undefined || to === undefined) return undefined
  if (inKey) {
    const piece = path.length === 2 && (namedGroups as readonly string[]).includes(path[0] ?? '')
    const size = piece ? explainPath([field.key, 'size'], block.name, kept) : undefined
    if (size) return { from, to, ...size }
    const help = path.length === 1 ? blockHelp(field.key, style) : helpAt(path, style)
    const length = explainPath(nameOf(path), block.name, kept)
    if (help === undefined && !length) return undefined
    return { from, to, ...length, lines: [...(help === undefined ? [] : [help]), ...(length?.lines ?? [])] }
  }
  if (entry?.kind !== 'text') return undefined
  const inName = pathsWithPlaces(entry.text).find(
    ({ words }) => from + (words[0]?.start ?? 0) <= at && at <= from + (words.at(-1)?.end ?? 0),
  )
  const named = inName && entry.plain ? explainPath(inName.path, block.name, kept) : undefined
  if (named && inName)
    return {
      from: from + (inName.words[0]?.start ?? 0),
      to: from + (inName.words.at(-1)?.end ?? 0),
      ...named,
    }
  const help = valueAt(path, style).words.find(({ word }) => word === entry.text.trim())?.help
  const length = explainPath(nameOf(path), block.name, kept)
  return help !== undefined || length
    ? { from, to, ...length, lines: [...(help ? [help] : []), ...(length?.lines ?? [])] }
    : undefined
}

const helpAt = (path: readonly string[], fold: string | undefined): string | undefined =>
  keysAt(path.slice(0, -1), fold)?.find(({ word }) => word === path.at(-1))?.help

/** The name of what is written at a path: `beam.height` of `spans`, `beam`, `height`. */
function nameOf(path: readonly string[]): string[] {
  const [group = '', ...rest] = path
  if (path.length === 1) return group === 'closed' ? ['closed', 'size'] : [group]
  return group === 'envelope' || group === 'base' ? [...path] : rest
}

function fieldAt(
  fields: Fields,
  at: number,
  before: readonly string[],
): { path: readonly string[]; field: Field } | undefined {
  for (const field of fields.values()) {
    const path = [...before, field.key]
    if (isIn(field.keyPlace, at)) return { path, field }
    if (!isIn(field.value.place, at)) continue
    const inner = mapsIn(field.value).flatMap((one) => fieldAt(one, at, path) ?? [])
    return inner[0] ?? { path, field }
  }
  return undefined
}

const mapsIn = (entry: Entry): Fields[] =>
  entry.kind === 'map' ? [entry.fields] : entry.kind === 'list' ? entry.items.flatMap(mapsIn) : []

/** The text at a place: an item of a list, or the value itself. */
const entryAt = (entry: Entry, at: number): Entry | undefined =>
  entry.kind === 'list' ? entry.items.find((item) => isIn(item.place, at)) : entry

const isIn = ({ offset, end }: { readonly offset?: number; readonly end?: number }, at: number): boolean =>
  offset !== undefined && end !== undefined && offset <= at && at <= end
