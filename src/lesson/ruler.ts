import { usualGrid } from '../length/grid.ts'
import type { Length, Unit } from '../length/length.ts'
import type { FrontMatter } from './lesson.ts'

/** The ruler that a lesson is printed with in a unit: its own if it is written in that unit, or else the usual one. */
export const gridFor = ({ grid, gridUnit }: FrontMatter, unit: Unit): Length =>
  grid && gridUnit === unit ? grid : usualGrid[unit]
