import { type Extension, StateEffect, StateField } from '@codemirror/state'
import { type EditorView, hoverTooltip, showTooltip, type Tooltip } from '@codemirror/view'
import type { Explained } from '../../engine/explain.ts'
import type { Desk } from '../desk.ts'
import { foundIn } from './found-field.ts'
import { richWords } from './rich-words.ts'

const openCard = StateEffect.define<Explained | undefined>()

const cardField = StateField.define<Tooltip | null>({
  create: () => null,
  update(card, { effects, docChanged, selection }) {
    for (const effect of effects)
      if (effect.is(openCard)) return effect.value ? tooltipFor(effect.value) : null
    return docChanged || selection ? null : card
  },
  provide: (field) => showTooltip.from(field),
})

const tooltipFor = (explained: Explained): Tooltip => ({
  pos: explained.from,
  end: explained.to,
  above: true,
  create: () => ({ dom: cardOf(explained) }),
})

function cardOf({ value, other, lines }: Explained): HTMLElement {
  const card = document.createElement('div')
  card.className = 'writing-note writing-explained'
  if (value !== undefined) {
    const head = document.createElement('p')
    const number = document.createElement('strong')
    number.textContent = value
    head.append(number)
    if (other !== undefined) head.append(`  =  ${other}`)
    card.append(head)
  }
  for (const line of lines) {
    const words = document.createElement('p')
    words.append(richWords(line))
    card.append(words)
  }
  return card
}

const askedOf = (desk: Desk, view: EditorView, at: number): Promise<Explained | undefined> =>
  desk.engine.explain(view.state.doc.toString(), at, desk.settings.value)

/** What stands at the cursor, told beside it and to a screen reader. */
export function explainHere(desk: Desk, view: EditorView): boolean {
  const { doc, selection } = view.state
  void askedOf(desk, view, selection.main.head).then((explained) => {
    if (view.state.doc !== doc) return
    view.dispatch({ effects: openCard.of(explained) })
    desk.say(explained ? saidOf(explained) : 'There is no measure and no key here.')
  })
  return true
}

const saidOf = ({ value, other, lines }: Explained): string =>
  [value && (other ? `${value}, that is ${other}.` : `${value}.`), ...lines]
    .filter((line) => line)
    .join(' ')
    .replaceAll('`', '')

/** Closes what a key opened; gives whether something was open. */
export function closeExplained(view: EditorView): boolean {
  if (!view.state.field(cardField)) return false
  view.dispatch({ effects: openCard.of(undefined) })
  return true
}

/** What a measure comes to, or what a word is, where the pointer rests. */
export const explaining = (desk: Desk): Extension => [
  cardField,
  hoverTooltip(
    async (view, pos) => {
      // What is wrong there says so itself.
      if (foundIn(view.state).some(({ from, to }) => from <= pos && pos <= to)) return null
      const { doc } = view.state
      const explained = await askedOf(desk, view, pos)
      return explained && view.state.doc === doc ? tooltipFor(explained) : null
    },
    { hoverTime: 450, hideOnChange: true },
  ),
]
