import { groupBy } from '../../length/group-by.ts'
import { zero } from '../../length/length.ts'
import type {
  CuttingOptions,
  CuttingPlan,
  OfferedSheet,
  SheetPlan,
  ShortPiece,
  WantedPiece,
} from './cutting.ts'
import { layOut } from './lay-out.ts'
import { inMarks } from './marks.ts'
import { namePieces } from './name-pieces.ts'
import { planStock } from './plan-stock.ts'
import { whyRefused } from './refused.ts'
import { shareShort, shortPiece, shortPieces } from './short.ts'
import { loadSolver } from './solver.ts'
import { workOf } from './work.ts'

/** Millions of steps for each stock unless more are asked for: some seconds at most. */
const usualEffort = 2000

/**
 * The plan by which pieces are cut from sheets with cuts from edge to edge: fewest sheets first, then least cost, then
 * fewest layouts, then fewest settings of the trimmer. The same input always gives the same plan.
 *
 * @param pieces of any stocks; each stock is planned by itself.
 * @param sheets that are to be had, in the order in which they are to be told.
 */
export async function planCutting(
  pieces: readonly WantedPiece[],
  sheets: readonly OfferedSheet[],
  options: CuttingOptions = {},
): Promise<CuttingPlan> {
  const plans: SheetPlan[] = []
  const short: ShortPiece[] = []
  for (const [stock, wanted] of groupBy(pieces, (piece) => piece.stock)) {
    const offered = sheets.filter((sheet) => sheet.stock === stock)
    const plan = await planOf(stock, wanted, offered, options)
    plans.push(...plan.plans)
    short.push(...plan.short)
  }
  return { plans, short }
}

async function planOf(
  stock: string,
  wanted: readonly WantedPiece[],
  sheets: readonly OfferedSheet[],
  { gap = zero, unit = 'mm', effort = usualEffort, progress, signal }: CuttingOptions,
): Promise<CuttingPlan> {
  const refused = wanted.flatMap((piece): ShortPiece[] => {
    const reason = piece.count > 0 ? whyRefused(piece, sheets) : undefined
    return reason ? [shortPiece(piece, piece.count, reason, unit)] : []
  })
  const cut = wanted.filter((piece) => piece.count > 0 && !whyRefused(piece, sheets))
  if (cut.length === 0) return { plans: [], short: refused }
  const marked = inMarks(cut, sheets, gap)
  const work = workOf(
    effort * 1e6,
    (used, lowerBound, spent) => progress?.({ stock, used, lowerBound, spent }),
    signal,
  )
  const solver = await loadSolver()
  const { batches, patterns, used, bound, proven, short } = await planStock(marked.problem, solver, work)
  const { kinds, lacking } = shareShort(marked, short)
  const missing = await shortPieces(marked, short, lacking, unit, solver, work)
  const layouts = namePieces(layOut(batches, patterns, marked), kinds)
  const plans = marked.shapes.flatMap((sheet, shape): SheetPlan[] => {
    const own = layouts.filter((layout) => layout.shape === shape)
    if (own.length === 0) return []
    const sheetsUsed = own.reduce((sum, { times }) => sum + times, 0)
    return [
      {
        stock,
        sheet,
        used: sheetsUsed,
        lowerBound: sheet.offcut ? 0 : Math.max(0, sheetsUsed - (used - bound)),
        proven,
        layouts: own.map(({ times, placed, cuts }) => ({ times, placed, cuts })),
      },
    ]
  })
  return { plans, short: [...refused, ...missing] }
}
