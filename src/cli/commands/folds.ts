import { type CatalogueFold, catalogue } from '../../workshop/catalogue.ts'
import { foldJson } from '../../workshop/catalogue-json.ts'
import { catalogueText } from '../../workshop/catalogue-text.ts'
import { foldText } from '../../workshop/fold-text.ts'
import { provenStarter } from '../../workshop/starter-card.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { foldNamed } from '../fold-style.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `folds [NAME]`: to the terminal or, with `--html`, as a page with drawings. */
export const folds: Action = async ([name], options, outside) => {
  const { units = 'in', html, json } = options
  if (html && json) throw new UsageError('`--html` and `--json` are two answers', 'Write one of them')
  const one = name === undefined ? undefined : foldNamed(name)
  const some: CatalogueFold[] = one ? [one] : [...catalogue.values()]
  if (html) {
    const { printFolds } = await import('./printing.ts')
    await printFolds(some, options, outside)
  } else if (json)
    await answer(asJson({ folds: some.map((fold) => foldJson(fold, units)) }), options, outside)
  else await answer(one ? foldText(one, provenStarter(one, units)) : catalogueText(some), options, outside)
  return exitCodes.done
}
