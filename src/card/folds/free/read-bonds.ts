import type { Length } from '../../../length/length.ts'
import { raiseCell } from '../../raise.ts'
import { checkKeys, type Reading, report, wordOf } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import type { Side } from '../../structure.ts'
import type { Field, Fields } from '../../yaml.ts'
import { type Distance, distancesIn, type Edge, edges, level } from './distances.ts'
import { degreesIn, groupsIn, panelIn } from './read-words.ts'

/** A panel stuck on another as it is written. */
export interface WrittenBond {
  readonly panel: string
  readonly onto: string
  readonly side: Side
  readonly over: boolean
  readonly turn: number
  readonly x?: Distance
  readonly y?: Distance
  readonly height: Cell<Length>
}

/** The keys of a bond. */
export const bondKeys = ['panel', 'onto', 'side', 'edge', ...edges, 'over', 'turn', 'raise'] as const

/** Reads what is stuck on what: `{panel: tab, onto: wall, right: 0 in, bottom: 1 in, side: outside, over: yes}`. */
export function readBonds(
  reading: Reading,
  fieldsWith: readonly (Field | undefined)[],
  names: readonly string[],
): WrittenBond[] {
  return fieldsWith.flatMap((field) =>
    groupsIn(reading, field, '{panel: tab, onto: wall}').flatMap(({ fields, place }, i): WrittenBond[] => {
      checkKeys(reading, fields, bondKeys, 'a bond')
      const get = (key: string) => fields.get(key)?.value
      const panel = panelIn(reading, 'panel', get('panel'), names, place)
      const onto = panelIn(reading, 'onto', get('onto'), names, place)
      const name = `${field?.key}.${i + 1}`
      const turn = get('turn')
      const bond = {
        side: sideIn(reading, fields),
        over: wordOf(reading, get('over'), ['no', 'yes']) === 'yes',
        turn: turn ? (degreesIn(reading, turn, [-360, 360]) ?? 0) : 0,
        ...edgeIn(reading, fields),
        ...distancesIn(reading, fields, name),
        height: raiseCell(reading, panel ?? name, get('raise')),
      }
      if (!panel || !onto) return []
      if (panel !== onto) return [{ panel, onto, ...bond }]
      report(
        reading,
        'value',
        get('onto')?.place ?? place,
        `\`${panel}\` cannot be stuck on itself`,
        'Name the panel that it is stuck on',
      )
      return []
    }),
  )
}

function sideIn(reading: Reading, fields: Fields): Side {
  const word = wordOf<'inside' | 'outside'>(reading, fields.get('side')?.value, ['inside', 'outside'])
  return word === 'inside' ? 'face' : 'back'
}

/** `edge: left` is short for `left: 0`. */
function edgeIn(reading: Reading, fields: Fields): { x?: Distance; y?: Distance } {
  if (!fields.has('edge')) return {}
  const edge = wordOf<Edge>(reading, fields.get('edge')?.value, edges)
  return { [edge === 'left' || edge === 'right' ? 'x' : 'y']: { edge, length: level } }
}
