import { formatNumber } from '../../length/format.ts'
import { type Length, mm, numberIn, type Unit } from '../../length/length.ts'
import { readLength } from '../../length/text.ts'
import { catalogue } from '../../workshop/catalogue.ts'
import { starterLesson } from '../../workshop/starter.ts'

/**
 * A lesson to begin with, in inches or in millimetres.
 *
 * @returns undefined for a fold that is not in the catalogue.
 */
export function starterIn(name: string, unit: Unit): string | undefined {
  const fold = catalogue.get(name)
  if (!fold) return undefined
  return starterLesson(unit === 'mm' ? { ...fold, starter: inMillimetres(fold.starter) } : fold).replace(
    /^units: in$/m,
    `units: ${unit}`,
  )
}

const inches = String.raw`(?:\d+ )?\d+(?:/\d+)?`
const size = new RegExp(`(${inches}) x (${inches}) in\\b`, 'g')
const length = new RegExp(`(${inches}) in\\b`, 'g')

/** A card block in inches with its lengths written as someone with a metric ruler would: a metric card, not a converted one. */
function inMillimetres(block: string): string {
  return block
    .replaceAll(size, (_, width: string, height: string) => `${round(width, 5)} x ${round(height, 5)} mm`)
    .replaceAll(length, (_, x: string) => `${round(x, 1)} mm`)
}

/** Whole millimetres; those of a size, and all above 15 mm, in fives. */
function round(text: string, step: number): string {
  const x = numberIn(readLength(`${text} in`), 'mm')
  const by = x > 15 ? 5 : step
  const marks: Length = mm(Math.max(1, Math.round(x / by)) * by)
  return formatNumber(marks, 'mm')
}
