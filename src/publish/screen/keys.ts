import type { Wording } from '../../wording/wording.ts'
import { escapeHtml, type Html, html } from '../html-text.ts'

/** The keys of the page, as the list of them shows them. */
export interface KeysView {
  readonly next: Html
  readonly back: Html
  readonly ends: Html
  readonly blank: Html
  readonly help: Html
}

const key = (name: string): string => `<kbd>${escapeHtml(name)}</kbd>`
const row = (...names: readonly string[]): Html => html(names.map(key).join(', '))

/** Keys with what stands on them, on a keyboard of the language. */
export const keysView = ({ say, list }: Wording): KeysView => ({
  next: row('→', '↓', say('screen.page-down')),
  back: row('←', '↑', say('screen.page-up')),
  ends: row(say('screen.home'), say('screen.end')),
  blank: html(list([key('B'), key('.')], 'or')),
  help: html(key('?')),
})
