import { markdown, markdownKeymap } from '@codemirror/lang-markdown'
import { yaml, yamlFrontmatter } from '@codemirror/lang-yaml'
import { foldService, HighlightStyle, syntaxHighlighting } from '@codemirror/language'
import type { EditorState, Extension } from '@codemirror/state'
import { keymap } from '@codemirror/view'
import { tags } from '@lezer/highlight'
import { Table } from '@lezer/markdown'
import { lessonSyntax } from './lesson-syntax.ts'

/** Colours are classes, so that they follow the light of the page. */
const look = HighlightStyle.define([
  { tag: tags.heading, class: 'writing-heading' },
  { tag: tags.strong, class: 'writing-strong' },
  { tag: tags.emphasis, class: 'writing-emphasis' },
  { tag: [tags.link, tags.url], class: 'writing-link' },
  { tag: tags.keyword, class: 'writing-word' },
  { tag: tags.attributeValue, class: 'writing-says' },
  { tag: tags.special(tags.variableName), class: 'writing-measure' },
  { tag: [tags.definition(tags.propertyName), tags.propertyName], class: 'writing-key' },
  { tag: [tags.comment, tags.lineComment], class: 'writing-aside' },
  { tag: [tags.processingInstruction, tags.meta, tags.separator, tags.punctuation], class: 'writing-mark' },
])

/** Markdown with what a lesson has besides, and YAML in its blocks and at its head. */
export const lessonLanguage = (): Extension => [
  yamlFrontmatter({
    content: markdown({
      addKeymap: false,
      codeLanguages: (info) => (/^(?:card|supplies)\b/.test(info) ? yaml().language : null),
      extensions: [Table, lessonSyntax],
    }),
  }),
  keymap.of(markdownKeymap),
  syntaxHighlighting(look),
  foldService.of(foldCallout),
]

/** A call-out folds from its first line to the one that closes it. */
function foldCallout(state: EditorState, start: number, end: number): { from: number; to: number } | null {
  const open = /^([ \t>]*)(:{3,})[ \t]*[a-z]+/.exec(state.sliceDoc(start, end))
  if (!open) return null
  const colons = open[2]?.length ?? 3
  let depth = 0
  for (let n = state.doc.lineAt(start).number + 1; n <= state.doc.lines; n++) {
    const line = state.doc.line(n)
    const found = /^[ \t>]*(:{3,})[ \t]*([a-z]*)/.exec(line.text)
    if (!found) continue
    if (found[2]) depth++
    else if (depth > 0) depth--
    else if ((found[1]?.length ?? 0) >= colons) return { from: end, to: line.to }
  }
  return null
}
