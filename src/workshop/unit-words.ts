import type { Wording } from '../wording/wording.ts'

/** What lengths are in, as the head of a column says it: `mm`, `in`, `po`. */
export const unitWords = ({ unit, say }: Wording): string => say(`measures.${unit}`)
