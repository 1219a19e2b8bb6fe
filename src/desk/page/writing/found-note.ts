import { type Extension, StateEffect, StateField } from '@codemirror/state'
import { EditorView, hoverTooltip, showTooltip, type Tooltip } from '@codemirror/view'
import { editsNow, type FoundHere, foundIn } from './found-field.ts'
import { severityWords } from './found-marks.ts'
import { richWords } from './rich-words.ts'

/** Opens the note of a finding, or closes it. */
const openNote = StateEffect.define<FoundHere | undefined>()

const noteField = StateField.define<Tooltip | null>({
  create: () => null,
  update(note, { effects, docChanged, selection, state }) {
    for (const effect of effects)
      if (effect.is(openNote)) return effect.value ? tooltipFor([effect.value], effect.value.from) : null
    if (!note) return null
    const left = selection && state.selection.main.head !== note.pos
    return docChanged || left ? null : note
  },
  provide: (field) => showTooltip.from(field),
})

const tooltipFor = (all: readonly FoundHere[], pos: number): Tooltip => ({
  pos,
  above: false,
  create: (view) => ({ dom: noteOf(view, all) }),
})

/** What is wrong and what cures it, with a button for each cure. */
function noteOf(view: EditorView, all: readonly FoundHere[]): HTMLElement {
  const note = document.createElement('div')
  note.className = 'writing-note'
  for (const { found } of all) {
    const part = document.createElement('div')
    part.className = `writing-note-${found.severity}`
    const words = document.createElement('p')
    const lead = document.createElement('strong')
    lead.textContent = `${severityWords[found.severity]}. `
    words.append(lead, richWords(`${found.message}.`))
    part.append(words)
    if (found.suggestion) {
      const more = document.createElement('p')
      more.append(richWords(`${found.suggestion}.`))
      part.append(more)
    }
    for (const [i, cure] of found.cures.entries()) {
      const button = document.createElement('button')
      button.type = 'button'
      button.className = 'writing-cure'
      button.append(richWords(cure.words))
      if (i === 0) {
        const key = document.createElement('kbd')
        key.textContent = /Mac|iP(?:hone|ad)/.test(navigator.platform) ? '⌘ .' : 'Ctrl .'
        button.append(' ', key)
      }
      button.onclick = () => {
        applyCure(view, { found, from: found.from, to: found.to }, i)
      }
      part.append(button)
    }
    note.append(part)
  }
  return note
}

/** Makes the changes of a cure. Gives whether they could be made. */
export function applyCure(view: EditorView, { found }: FoundHere, index = 0): boolean {
  const cure = found.cures[index]
  const edits = cure && editsNow(view.state, cure)
  if (!edits) return false
  view.dispatch({
    changes: edits.map(({ from, to, insert }) => ({ from, to, insert })),
    effects: openNote.of(undefined),
    userEvent: 'input.cure',
    scrollIntoView: true,
  })
  view.focus()
  return true
}

/** Takes the cursor to a finding and opens its note. */
export function visit(view: EditorView, here: FoundHere): void {
  view.dispatch({
    selection: { anchor: here.from },
    effects: [openNote.of(here), EditorView.scrollIntoView(here.from, { y: 'center' })],
  })
  view.focus()
}

/** Closes the note; gives whether one was open. */
export function closeNote(view: EditorView): boolean {
  if (!view.state.field(noteField)) return false
  view.dispatch({ effects: openNote.of(undefined) })
  return true
}

/** The note that is opened by a key, and the same where the pointer rests on what is underlined. */
export const foundNotes: Extension = [
  noteField,
  hoverTooltip(
    (view, pos) => {
      const all = foundIn(view.state).filter(({ from, to }) => from <= pos && pos <= Math.max(to, from + 1))
      const [first] = all
      return first ? { ...tooltipFor(all, first.from), end: Math.max(...all.map(({ to }) => to)) } : null
    },
    { hoverTime: 350 },
  ),
]
