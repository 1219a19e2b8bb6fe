import { type Aperture, apertureCell } from './apertures.ts'
import { layerCell } from './layers.ts'
import { letteringCell } from './lettering.ts'
import { looseCell } from './loose.ts'
import { defineAlias, defineLettering, definePiece, defineScores, defineSize } from './measures.ts'
import { turningNames } from './panel-names.ts'
import type { LetteringCell, PartCell, Workbench } from './parts.ts'
import { fieldsOf, type Reading, report } from './reading.ts'
import type { Cell } from './scope.ts'
import { hingesOf } from './scores.ts'
import type { InCrease } from './setbacks/between.ts'
import { spanCell } from './spans.ts'
import type { Stock } from './structure.ts'
import type { Built, Chosen, FoldStyle } from './style.ts'
import { type Target, targetOf } from './targets.ts'
import type { Field, Fields } from './yaml.ts'

/** Everything of a card block that is not the mechanism itself, each by its name, computed on demand. */
export interface Parts extends Workbench {
  readonly layers: ReadonlyMap<string, PartCell>
  readonly spans: ReadonlyMap<string, PartCell>
  readonly loose: ReadonlyMap<string, PartCell>
  readonly lettering: ReadonlyMap<string, LetteringCell>
  readonly apertures: ReadonlyMap<string, Cell<Aperture>>
}

/** Reads layers, spans, lettering, windows and loose pieces, and gives all of them their names. */
export function layBench(
  reading: Reading,
  fields: Fields,
  style: FoldStyle,
  { choices }: Chosen,
  built: Cell<Built>,
  stockOf: (fields: Fields, usual: string) => Stock,
  bareCreases: () => InCrease | undefined,
): Parts {
  const stuckOn = new Map<string, PartCell>()
  const panels = Object.entries(style.panels)
  const pieces = style.pieces ?? []
  // The lengths of a part that a fold lists go by its name: `tower.height`.
  const listed = Object.keys(style.parameters).flatMap((key) => key.match(/^(.+)\./)?.[1] ?? [])
  const aliases = turningNames(style, style.panels)
  const nameOf = (name: string): string => aliases.get(name) ?? name
  const taken = new Set([
    ...['closed', 'card', 'base', 'envelope'],
    ...panels.map(([name]) => name),
    ...pieces,
    ...listed,
    ...aliases.keys(),
  ])
  const find = (wanted: string): readonly Target[] | undefined => {
    const name = nameOf(wanted)
    const side = style.panels[name]
    const plate = side && built().plates.find((p) => p.name === name)
    if (side && plate) return [targetOf(plate, side)]
    const part = stuckOn.get(name)
    return part?.().plates.map((p) => targetOf(p, 'face'))
  }
  const known = () => [...panels.map(([name]) => name), ...aliases.keys(), ...stuckOn.keys()]
  const sideOf = (name: string) => style.panels[name] ?? 'face'
  const bench: Workbench = {
    ...reading,
    built,
    stockOf,
    find,
    known,
    nameOf,
    sheets: new Map(),
    sideOf,
    bareCreases,
    ...('spine' in choices && { spine: choices.spine === 'top' ? 'top' : 'left' }),
  }

  const readGroup = <T>(key: string, read: (field: Field) => Cell<T>): Map<string, Cell<T>> => {
    const group = fieldsOf(
      reading,
      fields.get(key)?.value,
      `\`${key}\` wants names with keys`,
      'Write a name, a colon, and its keys indented below',
    )
    const cells = new Map<string, Cell<T>>()
    for (const field of group.values()) {
      if (taken.has(field.key))
        report(
          reading,
          'name-taken',
          field.keyPlace,
          `\`${field.key}\` is the name of another part of this card`,
          'Give it a name of its own',
        )
      taken.add(field.key)
      reading.places.set(field.key, field.keyPlace)
      cells.set(field.key, read(field))
    }
    return cells
  }
  const readParts = (key: string, read: (bench: Workbench, field: Field) => PartCell, sits: boolean) =>
    readGroup(key, (field) => {
      const cell = read(bench, field)
      if (sits) stuckOn.set(field.key, cell)
      definePiece(reading.scope, field.key, () => cell().piece, reading.wording)
      return cell
    })

  for (const [alias, name] of aliases) defineAlias(reading.scope, alias, name, reading.wording)
  for (const name of ['base', ...pieces]) {
    const piece = () => first(built().pieces, name)
    definePiece(reading.scope, name, piece, reading.wording)
    defineScores(reading.scope, name, () => hingesOf(built(), name), piece, reading.wording)
  }
  const layers = readParts('layers', layerCell, true)
  const spans = readParts('spans', spanCell, true)
  const loose = readParts('pieces', looseCell, false)
  const lettering = readGroup('lettering', (field) => {
    const cell = letteringCell(bench, field, loose)
    defineLettering(reading.scope, field.key, cell)
    return cell
  })
  const apertures = readGroup('apertures', (field) => {
    const cell = apertureCell(bench, field)
    defineSize(reading.scope, field.key, () => cell().size)
    return cell
  })
  return { ...bench, layers, spans, loose, lettering, apertures }
}

function first<T extends { readonly name: string }>(list: readonly T[], name: string): T {
  const found = list.find((item) => item.name === name)
  if (!found) throw new Error(`A fold without a piece \`${name}\``)
  return found
}
