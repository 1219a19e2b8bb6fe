import { type Area, areaMinus, areaPlus, areaTimes, rectangleOf } from './area.ts'
import { combine, evaluate, type Lookup, type Value } from './evaluate.ts'
import { type Expression, ExpressionError } from './expression.ts'
import { type Length, mm } from './length.ts'

/** What an expression can come to where areas are wanted too. */
export type Extent = Value | { readonly kind: 'area'; readonly value: Area }

/**
 * Computes an expression in which the product of two lengths is an area. Areas add up, may be multiplied or divided by
 * a number, and divided by a length give a length.
 *
 * @throws ExpressionError with the place of the part that cannot be computed.
 */
export function evaluateExtent(e: Expression, lookup?: Lookup): Extent {
  if (e.kind !== 'binary') return evaluate(e, lookup)
  const l = evaluateExtent(e.left, lookup)
  const r = evaluateExtent(e.right, lookup)
  const area = (value: Area): Extent => ({ kind: 'area', value })
  if (l.kind === 'length' && r.kind === 'length' && e.sign === '*') return area(rectangleOf(l.value, r.value))
  if (l.kind !== 'area' && r.kind !== 'area') return combine(e, l, r)
  if (l.kind === 'area' && r.kind === 'area') {
    if (e.sign === '+') return area(areaPlus(l.value, r.value))
    if (e.sign === '-') return area(areaMinus(l.value, r.value))
  }
  if (l.kind === 'area' && r.kind === 'number') {
    if (e.sign === '*') return area(areaTimes(l.value, r.value))
    if (e.sign === '/' && !r.value.equals(0)) return area(l.value.div(r.value) as Area)
  }
  if (l.kind === 'number' && r.kind === 'area' && e.sign === '*') return area(areaTimes(r.value, l.value))
  if (l.kind === 'area' && r.kind === 'length' && e.sign === '/' && !r.value.equals(0))
    return { kind: 'length', value: mm(l.value.div(r.value)) as Length }
  throw new ExpressionError(
    'dimension',
    `An area does not go with \`${e.sign}\` here`,
    e,
    'Add areas to areas, and multiply or divide them by plain numbers',
  )
}
