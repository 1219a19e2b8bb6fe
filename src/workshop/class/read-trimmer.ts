import { checkKeys, fieldsOf, type Reading } from '../../card/reading.ts'
import type { Entry } from '../../card/yaml.ts'
import { zero } from '../../length/length.ts'
import { countIn, lengthIn } from './amounts.ts'
import type { Trimmer } from './class-file.ts'

/** What the paper is cut with. Where nothing is said, a blade that takes nothing away, and one sheet at a time. */
export function trimmerIn(reading: Reading, entry: Entry | undefined): Trimmer {
  const example = 'Write for example `trimmer: {gap: 1 mm, stack: 3}`'
  const fields = fieldsOf(reading, entry, '`trimmer` wants keys', example)
  checkKeys(reading, fields, ['gap', 'stack'], 'the trimmer')
  return {
    gap: lengthIn(reading, fields.get('gap')?.value, 'gap') ?? zero,
    stack: countIn(reading, fields.get('stack')?.value, 'stack', 1) ?? 1,
  }
}
