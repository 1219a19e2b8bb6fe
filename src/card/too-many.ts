import type { Finding } from '../length/finding.ts'
import type { Field, Fields } from './yaml.ts'

/**
 * Parts of a card: what is stuck on it or cut for it, and the panels and glue of a free one. The time that it takes to put
 * them on top of each other grows with the cube of their number; no card that hands make has half of it.
 */
const most = 100

const groups = ['layers', 'spans', 'lettering', 'apertures', 'pieces', 'panels', 'strips', 'sheets', 'bonds']

/** Tells the first part that a card has too many; such a card is not worked out. */
export function tooManyParts(fields: Fields): Finding | undefined {
  const place = partsIn(fields)[most]?.keyPlace
  return (
    place && {
      rule: 'too-much',
      severity: 'error',
      message: `The card has more than ${most} parts, so it is not worked out`,
      suggestion: 'Make several cards of it, or leave parts out',
      place,
    }
  )
}

/** The parts of a card block, or of one of its sheets or strips. */
const partsIn = (fields: Fields): Pick<Field, 'keyPlace'>[] =>
  groups.flatMap((key) => {
    const value = fields.get(key)?.value
    if (value?.kind === 'list') return value.items.map(({ place }) => ({ keyPlace: place }))
    if (value?.kind !== 'map') return []
    const nests = key === 'sheets' || key === 'strips'
    return [...value.fields.values()].flatMap((field) => [
      field,
      ...(nests && field.value.kind === 'map' ? partsIn(field.value.fields) : []),
    ])
  })
