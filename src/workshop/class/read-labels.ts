import { checkKeys, fieldsOf, type Reading, report } from '../../card/reading.ts'
import type { Field } from '../../card/yaml.ts'
import { type Length, mm } from '../../length/length.ts'
import { countIn, lengthIn } from './amounts.ts'
import type { LabelSheet } from './class-file.ts'

/** Two columns of four on plain paper, to be cut apart. Common practice, no source. */
const usual: LabelSheet = {
  columns: 2,
  rows: 4,
  left: mm(10),
  top: mm(10),
  across: mm(0),
  down: mm(0),
}
const example = 'Write for example `labels: {columns: 3, rows: 7, left: 7 mm, top: 15 mm, across: 2 mm}`'

/** How the labels lie on their sheet: rows and columns, the margins, and the gaps between. */
export function labelsIn(reading: Reading, field: Field | undefined): LabelSheet {
  const fields = fieldsOf(reading, field?.value, '`labels` wants rows and columns', example)
  checkKeys(reading, fields, ['columns', 'rows', 'left', 'top', 'across', 'down'], 'the labels')
  const count = (key: 'columns' | 'rows'): number => {
    const n = countIn(reading, fields.get(key)?.value, key, 1) ?? usual[key]
    if (n <= 40) return n
    report(
      reading,
      'value',
      fields.get(key)?.keyPlace ?? { line: 1, column: 1 },
      `No sheet of labels has ${n} ${key}`,
      example,
    )
    return usual[key]
  }
  const length = (key: 'left' | 'top' | 'across' | 'down'): Length =>
    lengthIn(reading, fields.get(key)?.value, key) ?? usual[key]
  return {
    columns: count('columns'),
    rows: count('rows'),
    left: length('left'),
    top: length('top'),
    across: length('across'),
    down: length('down'),
    ...(field && { place: field.keyPlace }),
  }
}
