import type { Hazard } from './hazard.ts'
import { allergies, powders } from './hazards/breathed.ts'
import { blades, film, scissors, trimmers } from './hazards/cutting.ts'
import { instantGlue, resin, solvents, sprays } from './hazards/glues.ts'
import { flames, heat, hotGlue } from './hazards/hot.ts'
import { points, punches, wire } from './hazards/pointed.ts'
import { balloons, buttonCells, magnets, smallParts } from './hazards/swallowed.ts'

/** Every hazard that tools and supplies can have, in the order of the print. */
export const hazards: readonly Hazard[] = [
  blades,
  trimmers,
  scissors,
  points,
  punches,
  wire,
  film,
  heat,
  hotGlue,
  flames,
  sprays,
  solvents,
  instantGlue,
  resin,
  powders,
  smallParts,
  magnets,
  buttonCells,
  balloons,
  allergies,
]

/** What a caution can say that it is about; `children` is the care that a lesson for children always asks for. */
export const cautionTopics: readonly string[] = [...hazards.map(({ name }) => name), 'children']
