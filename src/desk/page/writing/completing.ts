import { autocompletion, type CompletionContext, type CompletionResult } from '@codemirror/autocomplete'
import type { Extension } from '@codemirror/state'
import type { Completion } from '../../engine/complete.ts'
import type { Desk } from '../desk.ts'

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

/** Where a list is of use without being asked for: behind a brace, a colon, or while a name is typed in YAML. */
const inviting = /(?:[{:=.][ \t]?|[\p{L}\d]|: |\[)$/u

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
  const line = state.doc.lineAt(pos)
  const before = state.sliceDoc(line.from, pos)
  if (!explicit && !inviting.test(before)) return null
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
