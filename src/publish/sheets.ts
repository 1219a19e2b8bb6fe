import type { CuttingPlan } from '../workshop/cutting/cutting.ts'
import type { PageBrand } from './brand/page-brand.ts'
import { handoutHtml } from './html.ts'
import type { Paper } from './page-css.ts'
import { type SheetsAbout, sheetsView } from './sheets-view.ts'
import { loadSheetsTheme } from './theme.ts'

/** A cutting plan with a drawing of each layout: one HTML page that stands alone. */
export async function sheetsHtml(
  about: SheetsAbout,
  plan: CuttingPlan,
  upright: (stock: string, piece: string) => boolean,
  paper: Paper,
  theme: string,
  brand?: PageBrand,
): Promise<string> {
  const view = sheetsView(about, plan, upright)
  return handoutHtml({ ...view, ...(brand && { brand }) }, await loadSheetsTheme(theme), { paper })
}
