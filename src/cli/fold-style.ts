import { suggestWord } from '../length/finding.ts'
import { type CatalogueFold, catalogue } from '../workshop/catalogue.ts'
import { UsageError } from './problems.ts'

/** The fold of that name. Throws UsageError with the nearest one. */
export function foldNamed(name: string): CatalogueFold {
  const fold = catalogue.get(name.toLowerCase())
  if (fold) return fold
  throw new UsageError(`Unexpected fold \`${name}\``, suggestWord(name, [...catalogue.keys()]))
}
