import { syntaxTree } from '@codemirror/language'
import type { EditorState } from '@codemirror/state'

/** Whether a place is in YAML: in the head of the lesson or in one of its blocks, where indents mean something. */
export function isInYaml(state: EditorState, at: number): boolean {
  for (let node = syntaxTree(state).resolveInner(at, -1); ; ) {
    if (['Frontmatter', 'FencedCode', 'CodeText', 'Stream'].includes(node.name)) return true
    if (!node.parent) return false
    node = node.parent
  }
}
