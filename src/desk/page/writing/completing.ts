import { autocompletion, type CompletionContext, type CompletionResult } from '@codemirror/autocomplete'
import type { EditorState, Extension } from '@codemirror/state'
import type { Completion } from '../../engine/complete.ts'
import type { Desk } from '../desk.ts'
import { isInYaml } from './in-yaml.ts'

/** What a thing in the list is, in a word. */
const kinds: Readonly<Record<Completion['kind'], string>> = {
  fold: 'fold',
  key: '',
  panel: '',
  piece: '',
  measure: '',
  figure: 'figure',
  directive: '',
  size: '',
  stock: 'paper or card',
  word: '',
}

/** In words a list is of use in braces and behind colons only. */
const inWords = /(?:\{[^{}]*|(?:^|\s):{1,3}[a-z]*)$/u
/** In YAML it is of use at the beginning of a line and behind a colon, a bracket or a letter, but not in plain texts. */
const inYaml = /(?:[\p{L}\d.]|[:{[,] ?|^\s*)$/u
const plainText = /^\s*(?:title|summary|credits|letters)\s*:/

/** Whether to ask the engine at all: in the middle of words it has nothing to offer, and would only be kept busy. */
function invites(state: EditorState, at: number): boolean {
  const before = state.sliceDoc(state.doc.lineAt(at).from, at)
  if (inWords.test(before)) return true
  return isInYaml(state, at) && inYaml.test(before) && !plainText.test(before)
}

/** Offers what can be written, by what the engine knows of the lesson. */
export const completing = (desk: Desk): Extension => [
  autocompletion({
    override: [(context) => offer(desk, context)],
    activateOnTyping: true,
    activateOnTypingDelay: 150,
    icons: false,
    closeOnBlur: true,
    tooltipClass: () => 'writing-offers',
  }),
]

async function offer(desk: Desk, context: CompletionContext): Promise<CompletionResult | null> {
  const { state, pos, explicit } = context
  if (!explicit && !invites(state, pos)) return null
  const offered = await desk.engine.complete(state.doc.toString(), pos, desk.settings.value)
  if (context.aborted || offered.length === 0) return null
  const from = Math.min(...offered.map((one) => one.from))
  // A word that is there already needs no list.
  const typed = state.sliceDoc(from, pos)
  if (!explicit && offered.some((one) => one.label === typed && one.kind !== 'key')) return null
  const same = offered.filter((one) => one.from === from)
  return {
    from,
    options: same.map((one, i) => ({
      label: one.label,
      apply: one.insert,
      ...((one.detail ?? kinds[one.kind]) && { detail: one.detail ?? kinds[one.kind] }),
      ...(one.info && { info: one.info.replaceAll('`', '') }),
      boost: Math.max(-99, -i),
    })),
    validFor: /^[\p{L}\p{N}_.' -]*$/u,
  }
}
