import { history, historyField, isolateHistory } from '@codemirror/commands'
import { bracketMatching, codeFolding, foldGutter, foldState, indentOnInput } from '@codemirror/language'
import { highlightSelectionMatches, openSearchPanel, search } from '@codemirror/search'
import { type ChangeDesc, Compartment, EditorState, type Extension, type Text } from '@codemirror/state'
import { drawSelection, EditorView, highlightActiveLine } from '@codemirror/view'
import type { WritingHandle, WritingStart } from './handle.ts'
import { lessonLanguage } from './language.ts'
import { difference } from './splice.ts'
import { editorWords } from './words.ts'

/** What is told about the editor, a moment after it happened. */
export interface Listeners {
  readonly changed: (text: string) => void
  readonly moved: (at: number) => void
  /** When typing rests. */
  readonly rested: () => void
}

const kept = { history: historyField, folds: foldState }

/** Lines end as the page ends them. */
const plain = (text: string): string => text.replace(/\r\n?/g, '\n')

/** How long typing must rest before the state is handed out, in milliseconds. */
const rest = 400

/** Makes an editor in an element. What is told of it is never told while a key is handled. */
export function makeWriting(
  parent: HTMLElement,
  start: WritingStart,
  own: Extension,
  { changed, moved, rested }: Listeners,
): { readonly view: EditorView; readonly handle: WritingHandle; readonly end: () => void } {
  /** The text that was told last, and what happened to it since: edits of others are about that one. */
  let told: Text
  let since: ChangeDesc | undefined
  let frame: number | undefined
  let resting: ReturnType<typeof setTimeout> | undefined

  const tell = (): void => {
    frame = undefined
    const { doc, selection } = view.state
    if (doc !== told) {
      told = doc
      since = undefined
      changed(doc.toString())
    }
    moved(selection.main.head)
  }
  const listener = EditorView.updateListener.of(({ docChanged, selectionSet, changes }) => {
    if (!docChanged && !selectionSet) return
    if (docChanged) since = since ? since.composeDesc(changes.desc) : changes.desc
    frame ??= requestAnimationFrame(() => setTimeout(tell))
    clearTimeout(resting)
    resting = setTimeout(rested, rest)
  })
  const locking = new Compartment()
  let locked = false
  const lock = (): Extension => EditorState.readOnly.of(locked)
  const extensions = [...basics, own, listener, locking.of(lock())]
  const view = new EditorView({ state: stateOf(start, extensions), parent })
  told = view.state.doc

  const dispatch = (edits: readonly { from: number; to: number; insert: string }[], event: string): void =>
    view.dispatch({
      changes: edits.map(({ from, to, insert }) => ({ from, to, insert: plain(insert) })),
      annotations: isolateHistory.of('full'),
      userEvent: event,
    })
  const select = (from: number, to: number): void => {
    const within = (at: number): number => Math.max(0, Math.min(at, view.state.doc.length))
    view.dispatch({
      selection: { anchor: within(from), head: within(to) },
      effects: EditorView.scrollIntoView(within(from), { y: 'center' }),
    })
    view.focus()
  }
  const handle: WritingHandle = {
    text: () => view.state.doc.toString(),
    edit(edits) {
      const now = (at: number, side: -1 | 1): number => (since ? since.mapPos(at, side) : at)
      if (edits.length === 0) return
      dispatch(
        edits.map(({ from, to, insert }) => {
          const begin = now(from, 1)
          return { from: begin, to: Math.max(begin, now(to, -1)), insert }
        }),
        'input.desk',
      )
    },
    goTo: (at) => select(at, at),
    select,
    replaceAll(text) {
      const edit = difference(view.state.doc.toString(), plain(text))
      if (edit) dispatch([edit], 'input.desk')
    },
    open(other) {
      view.setState(stateOf(other, extensions))
      told = view.state.doc
      since = undefined
      handle.lock(locked)
    },
    lock(on) {
      locked = on
      view.dispatch({ effects: locking.reconfigure(lock()) })
    },
    state: () => view.state.toJSON(kept),
    focus: () => view.focus(),
    search: () => {
      openSearchPanel(view)
    },
  }
  const end = (): void => {
    if (frame !== undefined) cancelAnimationFrame(frame)
    clearTimeout(resting)
    view.destroy()
  }
  return { view, handle, end }
}

const basics: readonly Extension[] = [
  history(),
  lessonLanguage(),
  codeFolding({ placeholderText: '…' }),
  foldGutter({ openText: '▾', closedText: '▸' }),
  search({ top: true }),
  highlightSelectionMatches(),
  drawSelection(),
  highlightActiveLine(),
  bracketMatching(),
  indentOnInput(),
  editorWords,
  EditorView.lineWrapping,
  EditorState.tabSize.of(2),
  EditorView.contentAttributes.of({
    'aria-label': 'The words of the lesson',
    tabindex: '0',
    spellcheck: 'true',
    autocorrect: 'on',
    autocapitalize: 'sentences',
  }),
]

/** The state as it was kept, when it is of this very text; otherwise a new one. */
function stateOf({ text, state }: WritingStart, extensions: readonly Extension[]): EditorState {
  const doc = plain(text)
  if (
    state !== undefined &&
    typeof state === 'object' &&
    state !== null &&
    'doc' in state &&
    state.doc === doc
  )
    try {
      return EditorState.fromJSON(state, { extensions: [...extensions] }, kept)
    } catch {
      // What an older page kept may not fit this one: the text is there all the same.
    }
  return EditorState.create({ doc, extensions: [...extensions] })
}
