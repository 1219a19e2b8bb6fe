import { formatSize } from '../../../length/format.ts'
import type { Unit } from '../../../length/length.ts'
import { sheetNames, sheetSize } from '../../../length/paper.ts'
import type { Completion } from '../complete.ts'

/** The standard sizes, standing and lying. */
export const sizeWords = (from: number, unit: Unit): Completion[] =>
  sheetNames.flatMap((name) =>
    ['portrait', 'landscape'].flatMap((turn): Completion[] => {
      const label = `${name} ${turn}`
      const size = sheetSize(label)
      return size ? [{ insert: label, from, label, detail: formatSize(size, unit), kind: 'size' }] : []
    }),
  )
