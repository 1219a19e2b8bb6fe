import { closeBrackets, closeBracketsKeymap, completionStatus } from '@codemirror/autocomplete'
import { defaultKeymap, historyKeymap, indentLess, indentMore } from '@codemirror/commands'
import { foldKeymap } from '@codemirror/language'
import { searchKeymap } from '@codemirror/search'
import type { Extension } from '@codemirror/state'
import { type EditorView, type KeyBinding, keymap } from '@codemirror/view'
import { isInYaml } from './in-yaml.ts'

/** The keys that are ours. */
export interface OwnKeys {
  readonly nextFound: (view: EditorView) => boolean
  readonly foundBefore: (view: EditorView) => boolean
  readonly cure: (view: EditorView) => boolean
  readonly explain: (view: EditorView) => boolean
  readonly rename: (view: EditorView) => boolean
  /** Closes notes; gives whether one was open. */
  readonly close: (view: EditorView) => boolean
}

/**
 * Tab goes on to what comes behind the editor, but in YAML it indents. Escape before it goes on from there too, which
 * the editor does by itself.
 */
const tab: KeyBinding = {
  key: 'Tab',
  run: (view) => (isInYaml(view.state, view.state.selection.main.head) ? indentMore(view) : false),
  shift: (view) => (isInYaml(view.state, view.state.selection.main.head) ? indentLess(view) : false),
}

/** Every key of the editor. */
export const editorKeys = (own: OwnKeys): Extension => [
  closeBrackets(),
  keymap.of([
    { key: 'F8', run: own.nextFound, shift: own.foundBefore, preventDefault: true },
    { key: 'Mod-.', run: own.cure, preventDefault: true },
    { key: 'F9', run: own.explain, preventDefault: true },
    { key: 'F2', run: own.rename, preventDefault: true },
    { key: 'Escape', run: (view) => completionStatus(view.state) === null && own.close(view) },
    tab,
    ...closeBracketsKeymap,
    ...defaultKeymap,
    ...searchKeymap,
    ...historyKeymap,
    ...foldKeymap,
  ]),
]
