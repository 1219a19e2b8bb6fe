import type { Unit } from '../length/length.ts'
import type { CatalogueFold } from '../workshop/catalogue.ts'
import { catalogueView } from './catalogue-view.ts'
import { handoutHtml } from './html.ts'
import { disk, type Outside } from './outside.ts'
import type { Paper } from './page-css.ts'
import { loadCatalogueTheme } from './theme.ts'
import { mayWrite, writeWhole } from './write.ts'

/** What the page of the catalogue is made with. */
export interface CatalogueOptions {
  readonly unit: Unit
  readonly paper: Paper
  /** Name of a theme, or the path of a folder. */
  readonly theme: string
  /** Path of the page. */
  readonly out: string
  /** Whether a file that foldlore did not make may be overwritten. */
  readonly force: boolean
}

/**
 * Writes the illustrated catalogue: one page that stands alone.
 *
 * @throws ThemeError, NotOursError, OutsideError; then nothing has been written.
 */
export async function publishCatalogue(
  folds: readonly CatalogueFold[],
  { unit, paper, theme, out, force }: CatalogueOptions,
  outside: Outside = disk,
): Promise<void> {
  await mayWrite(out, force, outside)
  const page = await handoutHtml(catalogueView(folds, unit), await loadCatalogueTheme(theme), { paper })
  await writeWhole([{ path: out, data: new TextEncoder().encode(page) }], outside)
}
