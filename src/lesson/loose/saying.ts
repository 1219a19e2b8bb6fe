import { formatLength, formatLengths, formatSize } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import type { Candidate } from './candidates.ts'

/** What a name is of, in words: "the size of `backdrop`", "`leg`". */
export function partOf({ owner, part, path }: Candidate): string {
  if (part === '') return `\`${path}\``
  if (owner === 'closed' && part === 'size') return 'the size of the shut card'
  if (part.startsWith('border.')) return `the ${part.slice('border.'.length)} border of \`${owner}\``
  return `the ${part.replace('.', ' ')} of \`${owner}\``
}

/** The value of a name, as the handout says it. */
export function valueOfName({ kind, lengths }: Candidate, unit: Unit): string {
  const [first, second] = lengths
  if (kind === 'size' && first && second) return formatSize({ width: first, height: second }, unit)
  return kind === 'length' && first ? formatLength(first, unit) : formatLengths(lengths, unit)
}
