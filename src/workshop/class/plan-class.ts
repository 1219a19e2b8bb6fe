import type { CuttingOptions, CuttingPlan, OfferedSheet, WantedPiece } from '../cutting/cutting.ts'
import { planCutting } from '../cutting/plan-cutting.ts'
import { type Purchase, purchaseOfSheets } from './buying.ts'
import type { ClassFile, SheetOffer } from './class-file.ts'
import type { Taught } from './taught.ts'
import { type PieceToCut, toCut } from './to-cut.ts'

/** A cutting plan for a class, and what it takes from the shop. */
export interface ClassPlan extends CuttingPlan {
  readonly purchases: readonly Purchase[]
}

/** Cuts everything that a class needs from the sheets that its file lists. Stocks without sheets come out as short. */
export async function planClass(
  file: ClassFile,
  lessons: readonly Taught[],
  options: Omit<CuttingOptions, 'gap'> = {},
): Promise<ClassPlan> {
  const stocks = toCut(lessons)
  const offers = new Map<OfferedSheet, SheetOffer>()
  for (const stock of stocks.keys())
    for (const offer of file.sheets.get(stock) ?? []) offers.set(offeredSheet(stock, offer), offer)
  const sheets = [...offers.keys()]
  const pieces = [...stocks].flatMap(([stock, list]) => {
    const hasGrain = sheets.some((sheet) => sheet.stock === stock && sheet.grain !== undefined)
    return list.map((piece) => wantedPiece(piece, hasGrain))
  })
  const plan = await planCutting(pieces, sheets, { ...options, gap: file.trimmer.gap })
  const purchases = plan.plans.flatMap(({ stock, sheet, used }): Purchase[] => {
    const offer = offers.get(sheet)
    return offer ? [purchaseOfSheets(stock, offer, used)] : []
  })
  return { ...plan, purchases }
}

/** Grain matters where the sheets say how it runs. */
const wantedPiece = (
  { lesson, name, card, stock, size, count, upright, scored }: PieceToCut,
  hasGrain: boolean,
): WantedPiece => ({
  lesson,
  name: card === undefined ? name : `${name} (${card})`,
  stock,
  size,
  count,
  turns: !upright,
  ...(hasGrain && scored && { grain: scored }),
})

function offeredSheet(
  stock: string,
  { size, price, have, limit, grain, direction, trim, offcut }: SheetOffer,
): OfferedSheet {
  return {
    stock,
    size,
    ...(price !== undefined && { price }),
    have,
    ...(limit !== undefined && { limit }),
    offcut,
    ...(grain && { grain: alongOf(grain, size) }),
    upright: direction === 'upright',
    ...(trim && { trim }),
  }
}

/** Along which side the fibres of a sheet run; those of a square one that are `long` run up its height. */
function alongOf(
  grain: NonNullable<SheetOffer['grain']>,
  { width, height }: SheetOffer['size'],
): 'width' | 'height' {
  if (grain === 'width' || grain === 'height') return grain
  return width.gt(height) === (grain === 'long') ? 'width' : 'height'
}
