import { type Length, plus, shorter, zero } from '../../../length/length.ts'
import { checkKeys, fieldsOf, lengthCell, type Reading, report, say, wordOf } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import { point } from '../../strip.ts'
import type { Plate, Segment } from '../../structure.ts'
import { targetOf } from '../../targets.ts'
import type { Field, Fields } from '../../yaml.ts'
import { isInside } from './inside.ts'
import { panelIn } from './read-words.ts'
import type { Along } from './written.ts'

/** A slit within a panel, to tuck something into. The slits between strips need no word. */
export interface WrittenSlit {
  readonly on: string
  /** Its line on the panel; undefined, with a finding, when it does not lie inside it. */
  readonly lineOn: (plate: Plate) => Segment | undefined
}

/** The keys of a slit. */
export const slitKeys = ['on', 'along', 'left', 'bottom', 'length'] as const

/** Reads `slits`: a name, the panel it is `on`, which way it runs, its `length`, and how far it is from the edges. */
export function readSlits(reading: Reading, fields: Fields, names: readonly string[]): WrittenSlit[] {
  const listed = fieldsOf(
    reading,
    fields.get('slits')?.value,
    '`slits` wants names with keys',
    'Write `slot: {on: back, length: 2 in, left: 1 in, bottom: 1 in}`',
  )
  return [...listed.values()].flatMap((field) => {
    const slit = readSlit(reading, field, names)
    return slit ? [slit] : []
  })
}

function readSlit(
  reading: Reading,
  { key: name, keyPlace, value }: Field,
  names: readonly string[],
): WrittenSlit | undefined {
  const fields = fieldsOf(
    reading,
    value,
    `The slit \`${name}\` wants a group of keys`,
    'Write `{on: back, length: 2 in}`',
  )
  checkKeys(reading, fields, slitKeys, `the slit \`${name}\``)
  const on = panelIn(reading, 'on', fields.get('on')?.value, names, keyPlace)
  const along = wordOf<Along>(reading, fields.get('along')?.value, ['width', 'height'])
  const length = fields.get('length')?.value
  if (!length) report(reading, 'missing-key', keyPlace, `The slit \`${name}\` has no length`, 'Add `length:`')
  if (!on || !length) return undefined
  const cell = (key: string, usual: string): Cell<Length> =>
    lengthCell(reading, `${name}.${key}`, fields.get(key)?.value, usual, 'down')
  const long = cell('length', '0')
  const middle = (direction: Along, less: string) => `(${on}.${direction}${less}) / 2`
  const left = cell('left', middle('width', along === 'width' ? ` - ${name}.length` : ''))
  const bottom = cell('bottom', middle('height', along === 'height' ? ` - ${name}.length` : ''))
  return {
    on,
    lineOn: (plate) => {
      const box = targetOf(plate, 'face')
      const from = point(plus(box.left, left()), plus(box.bottom, bottom()))
      const to = along === 'width' ? point(plus(from.x, long()), from.y) : point(from.x, plus(from.y, long()))
      if (shorter(zero, long()) && isInside({ from, to }, plate.outline)) return { from, to }
      report(
        reading,
        'sticks-out',
        length.place,
        `The slit \`${name}\`, ${say(reading, long())} long, does not lie within \`${on}\``,
        'Make it shorter, or move it away from the edge; slits between strips are made by themselves',
      )
      return undefined
    },
  }
}
