import { areaTimes } from '../length/area.ts'
import { times } from '../length/length.ts'
import type { Amount } from '../lesson/lesson.ts'
import type { Quantity } from './needs.ts'

/** An amount that is a quantity of its own, `k` times. */
export function multiplied(amount: Exclude<Amount, { kind: 'per' | 'per table' }>, k: number): Quantity {
  switch (amount.kind) {
    case 'count':
      return { ...amount, count: amount.count * k }
    case 'length':
      return { kind: 'length', length: times(amount.length, k) }
    case 'area':
      return { kind: 'area', area: areaTimes(amount.area, k) }
    case 'dose':
      return { kind: 'dose', dose: { ...amount.dose, amount: amount.dose.amount.mul(k) } }
    case 'text':
      return amount
  }
}
