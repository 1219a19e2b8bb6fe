import type { Wording } from '../../wording/wording.ts'

/** What a text can do without, in the order in which it is left out. The pieces and the cautions always stay. */
export const parts = [
  'captions',
  'credits',
  'variations',
  'tips',
  'words',
  'ahead',
  'supplies',
  'sizes',
  'chapters',
  'summary',
  'sentences',
  'steps',
] as const

export type Part = (typeof parts)[number]

/** `Left out here: the tips and the list of supplies.` */
export const leftOutText = (left: readonly Part[], wording: Wording): string =>
  wording.say('text.left-out', {
    parts: wording.list(left.map((part) => wording.say('text.part', { part }))),
  })
