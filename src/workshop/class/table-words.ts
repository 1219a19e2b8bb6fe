import type { Wording } from '../../wording/wording.ts'

/** What a table is called that the class file counts and does not name, by its number from 1. */
export const tableNumber = (n: number): string => `table ${n}`

/** A table as a list names it: as the teacher does, or by its number. */
export function tableWords(name: string, { say }: Wording): string {
  const [, number] = /^table (\d+)$/.exec(name) ?? []
  return number === undefined ? name : say('class.table-number', { number })
}
