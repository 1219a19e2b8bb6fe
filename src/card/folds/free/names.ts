import type { Place } from '../../../length/finding.ts'
import { type Reading, report } from '../../reading.ts'
import { makeScope, type Scope } from '../../scope.ts'
import type { Fields } from '../../yaml.ts'
import { panelsOf, type WrittenSheet } from './written.ts'

/** Names that every card has. */
const reserved = ['base', 'card', 'closed', 'envelope']
/** Where a card block names parts of its own. */
const groups = ['layers', 'spans', 'lettering', 'apertures', 'pieces']

/**
 * A scope in which what the fold itself defines is found first. Elsewhere `front.width` is read off the card as it is
 * built; but the lengths that it is built from may be computed from one another before that.
 */
export function withOwnNames(outer: Scope): Scope {
  const own = makeScope()
  const names = new Set<string>()
  return {
    ...outer,
    define(path, value) {
      names.add(path)
      own.define(path, value)
      outer.define(path, value)
    },
    lookup: (path, at) => (names.has(path.join('.')) ? own : outer).lookup(path, at),
  }
}

/** Every sheet, strip, panel, slit and length has a name of its own. Tells where each is described. */
export function checkNames(reading: Reading, sheets: readonly WrittenSheet[], fields: Fields): void {
  const taken = new Map(reserved.map((name) => [name, 'of every card']))
  const take = (name: string, place: Place, what: string): void => {
    const owner = taken.get(name)
    if (owner !== undefined)
      report(
        reading,
        'name-taken',
        place,
        `\`${name}\` is the name of a part ${owner} already`,
        'Give it a name of its own',
      )
    else reading.places.set(name, place)
    taken.set(name, what)
  }
  for (const { name, place } of sheets) if (name !== 'base') take(name, place, 'of this card')
  for (const sheet of sheets)
    for (const strip of sheet.strips)
      if (strip.name !== sheet.name) take(strip.name, strip.place, 'of this card')
  for (const sheet of sheets) {
    const own = new Set<string>([panelsOf(sheet).length === 1 ? sheet.name : ''])
    for (const { name, place } of panelsOf(sheet)) {
      // Strips of one sheet share panels; a sheet that is one panel has its name.
      if (own.has(name) && name !== 'base') continue
      own.add(name)
      take(name, place, `of \`${sheet.name}\``)
    }
  }
  for (const group of ['slits', 'lengths']) {
    const value = fields.get(group)?.value
    if (value?.kind === 'map')
      for (const { key, keyPlace } of value.fields.values()) take(key, keyPlace, 'of this card')
  }
  for (const sheet of sheets)
    for (const { name } of sheet.strips) if (name !== sheet.name) checkGroups(reading, fields, name)
}

/** Panels and sheets are looked after by whoever reads the groups; strips are known here only. */
function checkGroups(reading: Reading, fields: Fields, strip: string): void {
  for (const group of groups) {
    const value = fields.get(group)?.value
    const field = value?.kind === 'map' ? value.fields.get(strip) : undefined
    if (field)
      report(
        reading,
        'name-taken',
        field.keyPlace,
        `\`${strip}\` is the name of a strip of this card already`,
        'Give it a name of its own',
      )
  }
}
