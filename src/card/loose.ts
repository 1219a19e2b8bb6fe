import type { PartCell, Workbench } from './parts.ts'
import { checkKeys, report } from './reading.ts'
import { sizeCell } from './sizes.ts'
import { someLeft } from './some-left.ts'
import { stockKeys } from './stock.ts'
import type { Entry, Field } from './yaml.ts'

/** The keys of a loose piece. */
export const looseKeys = ['size', 'count', ...stockKeys] as const

/** Reads a loose piece: something to cut that has no place of its own in the mechanism. */
export function looseCell(bench: Workbench, { key: name, keyPlace, value }: Field): PartCell {
  const fields = value.kind === 'map' ? value.fields : new Map()
  checkKeys(bench, fields, looseKeys, `the piece \`${name}\``)
  if (!fields.has('size'))
    report(bench, 'missing-key', keyPlace, `The piece \`${name}\` has no size`, 'Add `size:`, width first')
  const size = sizeCell(bench, `${name}.size`, fields.get('size')?.value, 'nearest')
  const count = countIn(bench, fields.get('count')?.value)
  const stock = bench.stockOf(fields, 'card')
  return bench.scope.cell(name, () => {
    if (!someLeft(bench, name, size(), fields.get('size')?.value.place ?? keyPlace)) return undefined
    return {
      piece: { name, kind: 'loose', stock, count, size: size(), cuts: [] },
      plates: [],
      bonds: [],
    }
  })
}

function countIn(bench: Workbench, entry: Entry | undefined): number {
  if (!entry) return 1
  const count = entry.kind === 'text' ? Number(entry.text) : Number.NaN
  if (Number.isInteger(count) && count > 0 && count <= 1000) return count
  report(
    bench,
    'value',
    entry.place,
    'A count is a whole number from 1 to 1000',
    'Write for example `count: 3`',
  )
  return 1
}
