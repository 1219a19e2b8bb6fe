import { chosenIn, entriesOf, styleFor } from '../../card/chosen.ts'
import { foldStyles } from '../../card/fold-styles.ts'
import { defineSize } from '../../card/measures.ts'
import { lengthCell, type Reading, unlessBroken } from '../../card/reading.ts'
import { makeScope } from '../../card/scope.ts'
import type { ReadFold } from '../../card/style.ts'
import { type Entry, type Fields, readYaml, type YamlBlock } from '../../card/yaml.ts'
import { evaluateLength, type Lookup } from '../../length/evaluate.ts'
import { ExpressionError } from '../../length/expression.ts'
import type { Finding } from '../../length/finding.ts'
import { nearest } from '../../length/grid.ts'
import type { Length, Size, Unit } from '../../length/length.ts'
import { parseMeasure } from '../../length/parse.ts'
import { wordingOf } from '../../wording/wording.ts'
import type { Edit } from '../edits.ts'

/** A length of a card block that a cure may turn. */
export interface Knob {
  readonly key: string
  /** The piece, the layer or the like that it is a length of. */
  readonly owner?: string
  /** What it is at present, on the ruler. */
  readonly value: Length
  /** Whether the block says it: else it has its usual value. */
  readonly written: boolean
  /** The change that gives it another value, as text. */
  readonly set: (value: string) => Edit
}

/** What a card block is looked at with. */
export interface Setting {
  readonly closed: Size
  readonly unit: Unit
  readonly grid: Length
  /** Names at another size, for lengths that are worked out from what this size does not have. */
  readonly elsewhere?: Lookup
}

/**
 * The lengths that could cure a finding, the likeliest first: the one at its place, those that it names, and all others
 * of the fold. A list or a size is none.
 */
export function knobsFor(block: YamlBlock, finding: Finding, setting: Setting): Knob[] {
  const { fields } = readYaml(block).top.value
  const names = namesAt(fields, setting)
  const at = finding.place?.offset ?? -1
  const own = textsAt(fields, at).flatMap(({ key, owner, entry }) => {
    const value = lengthIn(entry.text, names.lookup, setting)
    return value
      ? [{ key, ...(owner !== undefined && { owner }), value, written: true, set: replacing(entry) }]
      : []
  })
  const words = `${finding.message} ${finding.suggestion ?? ''}`.toLowerCase()
  const named = (knob: Knob): boolean => new RegExp(`\\b${knob.key}\\b`).test(words)
  const fold = names.knobs(block)
  const rest = fold.filter((knob) => !own.some(({ key, owner }) => key === knob.key && owner === knob.owner))
  return [...own, ...rest.filter(named), ...rest.filter((knob) => !named(knob))]
}

interface Names {
  readonly lookup: Lookup
  /** The parameters of the fold. */
  readonly knobs: (block: YamlBlock) => Knob[]
}

/** The names that a fold's own lengths and the shut size have, and those of another size where these end. */
function namesAt(fields: Fields, { closed, unit, grid, elsewhere }: Setting): Names {
  const scope = makeScope()
  const wording = wordingOf('en', unit)
  const reading: Reading = { scope, findings: [], unit, grid, wording, places: new Map() }
  defineSize(scope, 'closed', () => closed)
  const { style, entries } = foldIn(fields, reading) ?? { entries: new Map<string, Entry>() }
  const cells = Object.entries(style?.parameters ?? {}).map(
    ([key, { usual, round }]) => [key, lengthCell(reading, key, entries.get(key), usual, round)] as const,
  )
  const lookup: Lookup = (path, at) => {
    try {
      return scope.lookup(path, at)
    } catch (error) {
      if (!(error instanceof ExpressionError) || !elsewhere) throw error
      return elsewhere(path, at)
    }
  }
  return {
    lookup,
    knobs: (block) =>
      cells.flatMap(([path, cell]) => {
        const entry = entries.get(path)
        const [key = path, owner] = path.split('.').reverse()
        const value = unlessBroken(cell) ?? (entry?.kind === 'text' && lengthIn(entry.text, lookup, { grid }))
        if (!value || (entry ? entry.kind !== 'text' : owner !== undefined)) return []
        return [
          {
            key,
            ...(owner !== undefined && { owner }),
            value,
            written: entry !== undefined,
            set: entry ? replacing(entry) : adding(block, key),
          },
        ]
      }),
  }
}

/** The fold of a block, with the lengths of what it lists. Sheets and strips of a card of its own are none. */
function foldIn(fields: Fields, reading: Reading): ReadFold | undefined {
  const fold = fields.get('fold')?.value
  const style = fold?.kind === 'text' ? foldStyles.get(fold.text.trim()) : undefined
  if (style?.read) return style.read(reading, fields)
  return (
    style && { style: styleFor(style, chosenIn(reading, fields, style)), entries: entriesOf(style, fields) }
  )
}

function lengthIn(text: string, lookup: Lookup, { grid }: Pick<Setting, 'grid'>): Length | undefined {
  try {
    return nearest(evaluateLength(parseMeasure(text).expression, lookup), grid)
  } catch (error) {
    if (error instanceof ExpressionError) return undefined
    throw error
  }
}

type Text = Entry & { kind: 'text' }

/** The texts at an offset, or all those below it when a list or a group stands there. */
function textsAt(fields: Fields, at: number): { key: string; owner?: string; entry: Text }[] {
  const found: { key: string; owner?: string; entry: Text }[] = []
  const walk = (group: Fields, owner: string | undefined, inside: boolean): void => {
    for (const { key, keyPlace, value } of group.values()) {
      const { offset = -1, end = -1 } = value.place
      const here = inside || offset === at || keyPlace.offset === at
      if (value.kind === 'text' && here && value.plain)
        found.push({ key, ...(owner !== undefined && { owner }), entry: value })
      if (value.kind === 'map' && (here || (offset <= at && at < end)))
        walk(value.fields, borderless(key, owner), here)
    }
  }
  walk(fields, undefined, false)
  return found
}

/** The groups of a block are not what a length belongs to, and nor is a border. */
const borderless = (key: string, owner: string | undefined): string | undefined =>
  groups.includes(key) ? undefined : key === 'border' ? owner : key
const groups = ['layers', 'spans', 'lettering', 'apertures', 'pieces', 'base']

const replacing =
  ({ place }: Entry) =>
  (value: string): Edit => ({ start: place.offset ?? 0, end: place.end ?? 0, text: value })

/** A line of its own below the fold. */
const adding =
  (block: YamlBlock, key: string) =>
  (value: string): Edit => {
    const fold = readYaml(block).top.value.fields.get('fold')?.value.place
    const at = fold?.end ?? block.place.offset
    const inline = /^\s*\{/.test(block.text)
    return { start: at, end: at, text: `${inline ? ', ' : '\n'}${key}: ${value}` }
  }
