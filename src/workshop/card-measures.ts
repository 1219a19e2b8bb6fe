import Fraction from 'fraction.js'
import { nearest } from '../length/grid.ts'
import { type Length, mm } from '../length/length.ts'

/** A length that was solved for, in mm, at the nearest mark of the ruler. */
export const atMark = (millimetres: number, grid: Length): Length =>
  nearest(mm(new Fraction(millimetres)), grid)
