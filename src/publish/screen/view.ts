import type { Finding } from '../../length/finding.ts'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { stepNames } from '../../lesson/step-names.ts'
import type { ScreenTold } from '../../screen/told.ts'
import { figuresOf } from '../figures-of.ts'
import { type Html, html } from '../html-text.ts'
import type { PageHead } from '../page-html.ts'
import type { Pictures } from '../picture-url.ts'
import { type Codes, noCodes } from '../scan.ts'
import { type HandoutView, handoutView } from '../view.ts'
import { type KeysView, keysView } from './keys.ts'
import { type SlideView, slidesOf } from './slides.ts'
import { screenWords } from './words.ts'

/** Everything that the template of the class screen gets. */
export interface ScreenView extends PageHead {
  readonly heading: string
  readonly print: string
  readonly summary: string | null
  readonly time: string | null
  readonly cover: Html | null
  readonly cards: HandoutView['cards']
  readonly several: boolean
  readonly needs: HandoutView['needs']
  readonly safety: HandoutView['safety']
  /** What comes behind the opening, what is needed, and what is to be minded. */
  readonly slides: readonly SlideView[]
  readonly keys: KeysView
  /** One for each step. */
  readonly marks: readonly { readonly number: number }[]
  /** What the page's own program is told, as JSON. */
  readonly told: Html
}

/** A lesson, ready for the screen of a class. */
export function screenView(
  lesson: FilledLesson,
  pictures: Pictures = new Map(),
  codes: Codes = noCodes,
): { view: ScreenView; findings: Finding[] } {
  const { view, findings } = handoutView(lesson, figuresOf(lesson), pictures, codes)
  const { title, lang, summary, time, cover, cards, several, needs, safety, foot } = view
  const told: ScreenTold = {
    title: `${title}, ${foot.print}`,
    steps: lesson.steps.map(({ number, minutes, drying }) => ({
      number,
      ...(minutes !== undefined && { minutes }),
      ...(drying && { drying }),
    })),
    words: screenWords(lesson.wording),
  }
  const named = lesson.wording.say('screen.title', { title })
  return {
    view: {
      title: named,
      heading: title,
      print: foot.print,
      lang,
      foot: { title: named, print: foot.print },
      summary,
      time,
      cover,
      cards,
      several,
      needs,
      safety,
      slides: slidesOf(view, stepNames(lesson.tree, lesson.wording), lesson.wording),
      keys: keysView(lesson.wording),
      marks: lesson.steps.map(({ number }) => ({ number })),
      // What could end the element that it stands in is written as its number.
      told: html(JSON.stringify(told).replaceAll('<', '\\u003c')),
    },
    findings,
  }
}
