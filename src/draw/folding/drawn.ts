import type { Wording } from '../../wording/wording.ts'
import type { Face } from '../face/face.ts'
import { type Path, pathsFrom } from './arrows.ts'
import { type CreaseLine, withCreases } from './creases.ts'
import { type Stage, stagesOf } from './stages.ts'
import type { Way } from './way.ts'
import { wordsOf } from './words.ts'

/** A stage as it is drawn, with all that does not depend on the scale. */
export interface DrawnStage {
  readonly stage: Stage
  readonly faces: readonly Face[]
  readonly creases: readonly CreaseLine[]
  readonly paths: readonly Path[]
  readonly words: string
  readonly isTurned: boolean
}

/** The stages of a way, with what moves from each to the next. */
export function drawnStages(way: Way, wording: Wording): readonly DrawnStage[] {
  const stages = stagesOf(way)
  return stages.map((stage, i) => ({
    stage,
    ...withCreases(way, stage),
    paths: pathsFrom(way, stage, stages[i + 1]),
    words: wordsOf(way, stage, wording),
    isTurned: stage.over !== (stages[i - 1]?.over ?? stage.over),
  }))
}
