import type { Unit } from '../../length/length.ts'
import { type SizeJson, sizeJson } from '../length-json.ts'
import type { CuttingWork, PreparationList } from './preparation.ts'

/** What `prepare --json` answers. */
export interface PreparationJson extends Omit<PreparationList, 'cutting'> {
  readonly cutting: readonly (Omit<CuttingWork, 'sheet'> & { readonly sheet: SizeJson })[]
}

/** What is done before a class, for other programs. */
export const preparationJson = (list: PreparationList, unit: Unit): PreparationJson => ({
  ...list,
  cutting: list.cutting.map((work) => ({ ...work, sheet: sizeJson(work.sheet, unit) })),
})
