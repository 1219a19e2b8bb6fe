import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CalloutKind } from '../lesson/nodes.ts'

/** What a call-out says before anything else; its mark is drawn by the theme. */
export const calloutWords: Readonly<Record<CalloutKind, string>> = {
  tip: 'Tip',
  caution: 'Take care',
  ahead: 'Before the class',
  variation: 'Another way',
}

/** A call-out: its word with the mark, a title if it has one, and what it says. */
export const calloutHast = (kind: CalloutKind, title: ElementContent[], body: ElementContent[]): Element =>
  h('div', { className: ['callout', `callout-${kind}`], role: 'note', ariaLabel: calloutWords[kind] }, [
    h('p', { className: ['callout-word'] }, [
      h('span', { className: ['callout-mark'], ariaHidden: 'true' }),
      calloutWords[kind],
      ...(title.length > 0 ? [h('span', { className: ['callout-title'] }, title)] : []),
    ]),
    h('div', { className: ['callout-body'] }, body),
  ])
