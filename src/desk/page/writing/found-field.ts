import type { EditorState } from '@codemirror/state'
import { type ChangeDesc, StateEffect, StateField } from '@codemirror/state'
import type { Cure, Edit, Found } from '../../engine/engine.ts'

/** What was found in a text that the editor held. */
export const setFound = StateEffect.define<readonly Found[]>()

/** What is found, at its place in the text as it stands now. */
export interface FoundHere {
  readonly found: Found
  readonly from: number
  readonly to: number
}

interface Held {
  readonly here: readonly FoundHere[]
  /** What was typed since it was looked for. */
  readonly since?: ChangeDesc
}

/** The findings of the last look, moved along with what is typed; those that are typed into are still shown. */
export const foundField = StateField.define<Held>({
  create: () => ({ here: [] }),
  update(held, { effects, docChanged, changes }) {
    const looked = effects.find((effect) => effect.is(setFound))
    if (looked?.is(setFound))
      return { here: looked.value.map((found) => ({ found, from: found.from, to: found.to })) }
    if (!docChanged) return held
    return {
      since: held.since ? held.since.composeDesc(changes.desc) : changes.desc,
      here: held.here.map(({ found, from, to }) => ({
        found,
        from: changes.mapPos(from, 1),
        to: changes.mapPos(to, -1),
      })),
    }
  },
})

/** The findings in the order of the text; an empty stretch is one letter long, so that it can be seen. */
export const foundIn = (state: EditorState): FoundHere[] =>
  state
    .field(foundField)
    .here.map(({ found, from, to }) => ({
      found,
      from: Math.min(from, state.doc.length),
      to: Math.max(from, to),
    }))
    .toSorted((a, b) => a.from - b.from)

/** The changes of a cure for the text as it stands now; undefined when something was typed where it would be. */
export function editsNow(state: EditorState, { edits }: Cure): readonly Edit[] | undefined {
  const { since } = state.field(foundField)
  if (!since) return edits
  const isTouched = edits.some(({ from, to }) => since.touchesRange(from, to) !== false)
  if (isTouched) return undefined
  return edits.map(({ from, to, insert }) => ({
    from: since.mapPos(from, 1),
    to: since.mapPos(to, -1),
    insert,
  }))
}
