import { defineScores } from '../../measures.ts'
import type { Reading } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import type { LaidSheet } from './layout.ts'
import type { WrittenSheet } from './written.ts'

/** In a sheet of several strips the creases of each can be asked for: `upper.scores`, `upper.valleys`. */
export function defineStrips(reading: Reading, { strips }: WrittenSheet, laid: Cell<LaidSheet>): void {
  if (strips.length < 2) return
  for (const { name } of strips)
    defineScores(
      reading.scope,
      name,
      () => laid().creases.get(name) ?? [],
      () => laid().piece,
      reading.wording,
    )
}
