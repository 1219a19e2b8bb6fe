import { fitInside, mustCover } from '../length/grid.ts'
import { inches, type Length, mm, over, part, shorter } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'

/** What ribbon, cord and tape are sold by. */
export type ReelUnit = 'm' | 'yd'

const whole: Readonly<Record<ReelUnit, Length>> = { m: mm(1000), yd: inches(36) }

/** The unit of a roll, when it is plain in it, such as 10 m or 2.5 yd; undefined for any other, which a ruler measures. */
export function reelUnit(roll: Length, { unit }: Pick<Wording, 'unit'>): ReelUnit | undefined {
  const isPlain = (one: ReelUnit): boolean => over(roll, whole[one]).mul(10).d === 1n
  if (isPlain('m')) return 'm'
  return unit === 'in' && isPlain('yd') && !shorter(roll, whole.yd) ? 'yd' : undefined
}

/**
 * A length in metres, exact to the millimetre, or in yards, to a tenth.
 *
 * @param which way what is between is rounded: up for what is needed, down for what is there.
 */
export function reelText(length: Length, by: ReelUnit, which: 'up' | 'down', wording: Wording): string {
  const mark = by === 'm' ? mm(wording.unit === 'mm' ? 1 : 10) : part(whole.yd, 10)
  const marked = which === 'up' ? mustCover(length, mark) : fitInside(length, mark)
  const number = wording.in('mm').number(over(marked, whole[by]))
  return wording.say('measures.with-unit', { number, unit: by })
}

/** A length that is needed: on a metric list in metres from one metre on, as rolls are sold; else as a ruler has it. */
export const stretchText = (length: Length, wording: Wording): string =>
  wording.unit === 'in' || shorter(length, whole.m)
    ? wording.length(length)
    : reelText(length, 'm', 'up', wording)
