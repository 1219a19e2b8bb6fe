import type { FilledLesson } from '../lesson/lesson.ts'
import { closingAdvice } from '../lesson/safety/cautions.ts'
import type { OwnCaution } from './own-cautions.ts'
import { ThemeError } from './problems.ts'

/** The cautions that stand before the first step, and the advice below them. */
export interface SafetyView {
  readonly cautions: readonly { readonly title: string; readonly text: string }[]
  readonly closing: string
}

/** What a lesson's tools and supplies call for and it does not say itself; null when there is nothing to add. */
export const safetyView = ({
  cautions,
  wording,
}: Pick<FilledLesson, 'cautions' | 'wording'>): SafetyView | null =>
  cautions.length === 0
    ? null
    : { cautions: cautions.map(({ title, text }) => ({ title, text })), closing: closingAdvice({ wording }) }

/**
 * A theme may show cautions as it likes, but not leave them out.
 *
 * @param html the page as the theme has it.
 * @param own cautions of the lesson itself.
 * @throws ThemeError when a caution, or the advice below them, is not on it.
 */
export function mustShowCautions(
  view: SafetyView | null,
  html: string,
  theme: string,
  own: readonly OwnCaution[] = [],
): void {
  if (!view && own.length === 0) return
  // A style sheet shows nothing, and fonts are in it: it is most of a page.
  const shown = lettersOf(html.replace(/<style\b.*?<\/style>/gs, ''))
  if (!own.every(({ text }) => text.html.split(blockEnd).every((part) => shown.includes(lettersOf(part)))))
    throw new ThemeError(
      `The theme \`${theme}\` leaves out cautions of the lesson itself`,
      'Show the steps whole: `{{body}}` in its `step.hbs`; or `{{#each cautions}}{{text}}{{/each}}` in its `handout.hbs`',
    )
  if (!view) return
  const wanted = [...view.cautions.map(({ text }) => text), view.closing]
  if (wanted.every((text) => shown.includes(lettersOf(text)))) return
  throw new ThemeError(
    `The theme \`${theme}\` leaves out cautions that the lesson's tools and supplies call for`,
    'Show them before the steps: `{{#if safety}}{{> safety safety}}{{/if}}` in its `handout.hbs`, with the partial `safety.hbs` of `step-sheet`',
  )
}

/** What a caution says is looked for paragraph by paragraph: figures may stand between them. */
const blockEnd = /<\/(?:p|li|td|th)>/

/** However a theme escapes a text and sets it, its letters stay. */
const lettersOf = (text: string): string => text.replace(/<[^>]*>|&[^;\s]+;|[^\p{L}]/gu, '')
