import { suggestWord } from '../../length/finding.ts'
import { type Length, zero } from '../../length/length.ts'
import { checkKeys, fieldsOf, type Reading, report } from '../reading.ts'
import type { Parameter } from '../style.ts'
import type { Entry, Fields } from '../yaml.ts'
import { sidesOf } from './spine.ts'

const lengthKeys = ['height', 'depth', 'width', 'at'] as const
type Key = (typeof lengthKeys)[number]

/** A box as a lesson lists it: its name, and the box that it stands on if that is not the spine. */
export interface ListedBox {
  readonly name: string
  readonly on?: string
  /** What stands before the names of its lengths: `tower.` of `tower.height`. Nothing for the only box of a card. */
  readonly prefix: string
  readonly fields: Fields
}

/** A box with its lengths. */
export interface Box extends Readonly<Record<Key, Length>> {
  readonly name: string
  readonly on?: string
  /** The parameter that a length is: to blame for what is wrong with it. */
  readonly blame: (key: Key) => string
}

/** The one box of a card that lists none. */
export const usualBox: ListedBox = { name: 'step', prefix: '', fields: new Map() }

/** The panels of a box: its top, and what comes down from there. */
export const panelsOf = (box: string): [top: string, front: string] => [`${box} top`, `${box} front`]

/** Names of a card that a box may not have, since its lengths go by its name. */
const otherNames = ['front', 'back', 'closed', 'card', 'base', 'envelope']

/** Reads `boxes`: names with lengths, each standing on the spine or on a box that is listed before it. */
export function boxesIn(reading: Reading, entry: Entry): ListedBox[] {
  const list = fieldsOf(
    reading,
    entry,
    '`boxes` wants names with lengths',
    'Write a name, a colon, and `{height: 1 in, depth: 1 in, width: 2 in}`',
  )
  if (list.size === 0)
    report(
      reading,
      'missing-key',
      entry.place,
      '`boxes` lists no box',
      'List one, or leave `boxes` out for a single one in the middle',
    )
  const taken = [...otherNames, ...[...list.keys()].flatMap(panelsOf)]
  const boxes: ListedBox[] = []
  for (const { key: name, keyPlace, value } of list.values()) {
    if (taken.includes(name))
      report(
        reading,
        'name-taken',
        keyPlace,
        `\`${name}\` is the name of another part of this card`,
        'Give the box a name of its own',
      )
    const fields = fieldsOf(
      reading,
      value,
      `The box \`${name}\` wants lengths`,
      'Write `{height: 1 in, depth: 1 in, width: 2 in}`',
    )
    checkKeys(reading, fields, [...lengthKeys, 'on'], `the box \`${name}\``)
    reading.places.set(name, keyPlace)
    for (const panel of panelsOf(name)) reading.places.set(panel, keyPlace)
    const on = onIn(reading, fields.get('on')?.value, boxes)
    boxes.push({ name, prefix: `${name}.`, fields, ...(on && { on }) })
  }
  return boxes
}

function onIn(reading: Reading, entry: Entry | undefined, before: readonly ListedBox[]): string | undefined {
  if (!entry || entry.kind === 'empty') return undefined
  const names = before.map(({ name }) => name)
  const word = entry.kind === 'text' ? entry.text.trim() : ''
  if (names.includes(word)) return word
  report(
    reading,
    'unknown-name',
    entry.place,
    '`on` wants the name of a box that is listed before this one',
    names.length > 0 ? suggestWord(word, names) : 'List the box that it stands on first',
  )
  return undefined
}

/** A parameter for each length of each box. What stands side by side is spread evenly unless `at` is given. */
export function boxParameters(boxes: readonly ListedBox[], spine: 'left' | 'top'): Record<string, Parameter> {
  const { across, along } = sidesOf(spine)
  const edge = spine === 'left' ? 'lower' : 'left'
  return Object.fromEntries(
    boxes.flatMap(({ name, on, prefix }, i): [string, Parameter][] => {
      const beside = boxes.filter((box) => box.on === on)
      const before = boxes.slice(0, i).findLast((box) => box.on === on)
      const length = on === undefined ? along : `${on}.width`
      const widths = beside.map((box) => ` - ${box.prefix}width`).join('')
      const start = before
        ? `${before.prefix}at + ${before.prefix}width + `
        : on === undefined
          ? ''
          : `${on}.at + `
      const usual = {
        height: on === undefined ? `${across} / 3` : `${on}.height / 2`,
        depth: on === undefined ? `${across} / 3` : `${on}.depth / 2`,
        width: `${length} / ${beside.length * 2 + 1}`,
        at: `${start}(${length}${widths}) / ${beside.length + 1}`,
      }
      const help = {
        height: `how high \`${name}\` is`,
        depth: `how far \`${name}\` comes forward`,
        width: `length of \`${name}\` along the spine`,
        at: `where \`${name}\` begins, from the ${edge} edge of the card`,
      }
      return lengthKeys.map((key) => [
        `${prefix}${key}`,
        { help: help[key], usual: usual[key], round: 'down' },
      ])
    }),
  )
}

/** The entries of those parameters. */
export const boxEntries = (boxes: readonly ListedBox[]): Map<string, Entry> =>
  new Map(
    boxes.flatMap(({ prefix, fields }) =>
      lengthKeys.flatMap((key) => {
        const entry = fields.get(key)?.value
        return entry ? [[`${prefix}${key}`, entry] as const] : []
      }),
    ),
  )

/** The boxes with their lengths. */
export const measured = (boxes: readonly ListedBox[], lengths: Readonly<Record<string, Length>>): Box[] =>
  boxes.map(({ name, on, prefix }) => {
    const blame = (key: Key) => `${prefix}${key}`
    const of = (key: Key) => lengths[blame(key)] ?? zero
    return {
      name,
      blame,
      height: of('height'),
      depth: of('depth'),
      width: of('width'),
      at: of('at'),
      ...(on !== undefined && { on }),
    }
  })
