import { EditorState } from '@codemirror/state'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { editsNow, foundField, foundIn, setFound } from '../../../src/desk/page/writing/found-field.ts'
import { difference } from '../../../src/desk/page/writing/splice.ts'

describe('the difference of two texts', () => {
  test('makes the one of the other, and touches nothing that both have around it', () => {
    const text = fc.string({ unit: fc.constantFrom('a', 'b', '\n', '😀'), maxLength: 12 })
    fc.assert(
      fc.property(text, text, (before, after) => {
        const edit = difference(before, after)
        if (!edit) {
          expect(before).toBe(after)
          return
        }
        const { from, to, insert } = edit
        expect(before.slice(0, from) + insert + before.slice(to)).toBe(after)
        expect(insert === '' && from === to).toBe(false)
        if (from < to && insert !== '') {
          expect(before[from]).not.toBe(insert[0])
          expect(before[to - 1]).not.toBe(insert.at(-1))
        }
      }),
    )
  })
})

describe('what was found', () => {
  const cure = { words: 'Write it', edits: [{ from: 6, to: 10, insert: 'bridge' }] }
  const found = {
    rule: 'unknown-fold',
    severity: 'error' as const,
    line: 1,
    column: 7,
    message: 'm',
    from: 6,
    to: 10,
    cures: [cure],
  }
  const start = EditorState.create({ doc: 'fold: brid\nleg: 1 in\n', extensions: [foundField] }).update({
    effects: setFound.of([found]),
  }).state

  test('moves along with what is typed before it, and so does its cure', () => {
    const { state } = start.update({ changes: { from: 0, insert: 'ab\n' } })
    expect(foundIn(state)).toMatchObject([{ from: 9, to: 13 }])
    const edits = editsNow(state, cure) ?? []
    const cured = state.update({ changes: edits.map(({ from, to, insert }) => ({ from, to, insert })) }).state
    expect(cured.doc.toString()).toBe('ab\nfold: bridge\nleg: 1 in\n')
  })

  test('is no longer cured where something was typed into it', () => {
    const { state } = start.update({ changes: { from: 8, insert: 'x' } })
    expect(editsNow(state, cure)).toBeUndefined()
  })

  test('stays within the text when what it is about is taken out', () => {
    const { state } = start.update({ changes: { from: 0, to: 21 } })
    expect(foundIn(state)).toMatchObject([{ from: 0, to: 0 }])
  })
})
