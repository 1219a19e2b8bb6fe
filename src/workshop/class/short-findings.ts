import type { Finding } from '../../length/finding.ts'
import type { ShortPiece } from '../cutting/cutting.ts'
import type { ClassFile } from './class-file.ts'

/** What cannot be cut, as findings at the sheets of the class file. */
export const shortFindings = (
  short: readonly ShortPiece[],
  { sheets }: Pick<ClassFile, 'sheets'>,
): Finding[] =>
  short.map(({ stock, piece, lesson, count, why, suggestion }) => {
    const place = sheets.get(stock)?.at(-1)?.place
    return {
      rule: 'not-cut',
      severity: 'error',
      message: `${count} × \`${piece}\` of “${lesson}” cannot be cut: ${why.charAt(0).toLowerCase()}${why.slice(1)}`,
      suggestion,
      ...(place && { place }),
    }
  })
