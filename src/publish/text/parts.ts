import { listOf } from '../../length/finding.ts'

/** What a text can do without, and what it is called when it has been left out. The first goes first. */
export const partWords = {
  captions: 'the captions of the figures',
  credits: 'the credits',
  variations: 'the other ways to do it',
  tips: 'the tips',
  words: 'what stands between the steps',
  ahead: 'what to do before the class',
  supplies: 'the list of supplies',
  sizes: 'the chart of sizes',
  chapters: 'the chapters',
  summary: 'the summary',
  sentences: 'what the steps say after their first sentences',
  steps: 'the steps',
} as const

export type Part = keyof typeof partWords

/** In the order in which they are left out. The pieces and the cautions always stay. */
export const parts = Object.keys(partWords) as Part[]

/** `Left out here: the tips and the list of supplies.` */
export const leftOutText = (left: readonly Part[]): string =>
  `Left out here: ${listOf(left.map((part) => partWords[part]))}.`
