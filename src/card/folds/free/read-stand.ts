import { checkKeys, fieldsOf, type Reading, wordOf } from '../../reading.ts'
import type { Bend, Display } from '../../structure.ts'
import type { Fields } from '../../yaml.ts'
import { readBends } from './read-bends.ts'
import { readStop, type WrittenStop } from './read-stop.ts'
import { degreesIn, panelIn } from './read-words.ts'
import { panelNames, type WrittenSheet } from './written.ts'

/** How the card is shown standing, as it is written. */
export interface WrittenStand {
  readonly panel: string
  readonly rests: Display['rests']
  readonly turn: number
  /** Undefined when the lesson does not say. */
  readonly angles?: readonly Bend[]
  readonly until?: WrittenStop
}

/** The keys of `stand`. */
export const standKeys = ['panel', 'rests', 'turn', 'creases', 'until'] as const

/**
 * Reads `stand`: the panel that stays put, whether it stands upright or lies flat, how the card is turned to the viewer,
 * how far creases are bent, and what stops the card.
 */
export function readStand(reading: Reading, fields: Fields, sheets: readonly WrittenSheet[]): WrittenStand {
  const own = fieldsOf(
    reading,
    fields.get('stand')?.value,
    '`stand` wants a group of keys',
    'Write `stand: {panel: back, rests: upright}`',
  )
  checkKeys(reading, own, standKeys, '`stand`')
  const names = panelNames(sheets)
  const get = (key: string) => own.get(key)?.value
  const [panel, turn] = [get('panel'), get('turn')]
  const upright = sheets[0]?.strips[0]?.along !== 'height'
  const creases = own.get('creases')
  const until = get('until')
  const stop = until && readStop(reading, until, names)
  return {
    panel: (panel && panelIn(reading, 'panel', panel, names, panel.place)) ?? names[0] ?? '',
    rests: wordOf(reading, get('rests'), upright ? ['upright', 'flat'] : ['flat', 'upright']),
    turn: (turn && degreesIn(reading, turn, [-360, 360])) ?? 0,
    ...(creases && { angles: readBends(reading, creases, sheets) }),
    ...(stop && { until: stop }),
  }
}
