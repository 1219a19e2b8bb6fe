import Fraction from 'fraction.js'
import type { Wording } from '../../wording/wording.ts'

/** A number of minutes for a column of them: to a hundredth. */
export const minutesText = (minutes: number, wording: Wording): string =>
  wording.in('mm').number(new Fraction(Math.round(minutes * 100) / 100))
