import { publishCatalogue } from '../publish/catalogue.ts'
import { OutsideError } from '../publish/problems.ts'
import type { CatalogueFold } from '../workshop/catalogue.ts'
import { tellWritten } from './answer.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { printSettings } from './print-settings.ts'
import { UsageError } from './problems.ts'

/**
 * Writes the catalogue, or a part of it, as a page with drawings: `folds.html` unless `-o` names another.
 *
 * @throws what publishing it throws; UsageError when `-o` names another kind of file.
 */
export async function printFolds(
  folds: readonly CatalogueFold[],
  options: Options,
  outside: Outside,
): Promise<void> {
  const { output: out = 'folds.html', units: unit = 'in' } = options
  if (await outside.isFolder(out))
    throw new OutsideError(`Cannot write \`${out}\`: it is a folder`, 'Name a file in it')
  if (!/\.html?$/i.test(out))
    throw new UsageError(`\`${out}\` is no name for a page`, 'Name a file that ends in `.html`')
  const { paper, theme, force } = printSettings(options, outside)
  await publishCatalogue(folds, { unit, paper, theme, out, force }, outside)
  tellWritten([out], options, outside)
}
