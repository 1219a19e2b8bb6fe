import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CalloutKind } from '../lesson/nodes.ts'
import type { Wording } from '../wording/wording.ts'

const keys = {
  tip: 'handout.tip',
  caution: 'handout.take-care',
  ahead: 'handout.before-the-class',
  variation: 'handout.another-way',
} as const satisfies Record<CalloutKind, string>

/** What a call-out says before anything else; its mark is drawn by the theme. */
export const calloutWord = (kind: CalloutKind, wording: Wording): string => wording.say(keys[kind])

/** A call-out: its word with the mark, a title if it has one, and what it says. */
export function calloutHast(
  kind: CalloutKind,
  title: ElementContent[],
  body: ElementContent[],
  wording: Wording,
): Element {
  const word = calloutWord(kind, wording)
  return h('div', { className: ['callout', `callout-${kind}`], role: 'note', ariaLabel: word }, [
    h('p', { className: ['callout-word'] }, [
      h('span', { className: ['callout-mark'], ariaHidden: 'true' }),
      word,
      ...(title.length > 0 ? [h('span', { className: ['callout-title'] }, title)] : []),
    ]),
    h('div', { className: ['callout-body'] }, body),
  ])
}
