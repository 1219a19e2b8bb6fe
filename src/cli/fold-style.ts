import { foldStyles } from '../card/fold-styles.ts'
import type { FoldStyle } from '../card/style.ts'
import { suggestWord } from '../length/finding.ts'
import { UsageError } from './problems.ts'

/** The fold of that name. Throws UsageError with the nearest one. */
export function foldNamed(name: string): FoldStyle {
  const style = foldStyles.get(name.toLowerCase())
  if (style) return style
  throw new UsageError(`Unexpected fold \`${name}\``, suggestWord(name, [...foldStyles.keys()]))
}
