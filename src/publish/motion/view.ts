import { toHtml } from 'hast-util-to-html'
import { drawFigure } from '../../draw/draw.ts'
import type { FilledLesson, ProvenCard } from '../../lesson/lesson.ts'
import type { CardTold } from '../../motion/told.ts'
import type { Wording } from '../../wording/wording.ts'
import { figureHast } from '../figure.ts'
import { type Html, html } from '../html-text.ts'
import { sizeHtml } from '../measure-html.ts'
import type { PageHead } from '../page-html.ts'
import { printWords } from '../view.ts'
import { cardTold } from './card.ts'

/** A card of the page: what stands for it where nothing moves. */
export interface MotionCardView {
  readonly index: number
  readonly first: boolean
  readonly name: string
  readonly shut: Html
  /** Why a part of the way is not shown; empty when all of it is. */
  readonly lacks: string
  readonly figures: readonly Html[]
}

/** Everything that the template of the fold in motion gets. */
export interface MotionView extends PageHead {
  readonly heading: string
  readonly print: string
  readonly cards: readonly MotionCardView[]
  readonly several: boolean
  /** Names of keys, as they stand on a keyboard. */
  readonly keys: { readonly plus: Html; readonly minus: Html; readonly home: Html }
  /** What the page's own program is told, as JSON. */
  readonly told: Html
}

/** The room of a still figure, in mm at print size. */
const room = { maxWidth: 84, maxHeight: 78 }

const stills = [
  { show: 'flat', caption: 'motion.still-flat' },
  { show: 'closed', caption: 'motion.still-shut' },
  { show: 'standing', caption: 'motion.still-standing' },
] as const

/** The cards of a lesson, ready to be set in motion. A card that does not fold is left out. */
export function motionView(lesson: FilledLesson): MotionView {
  const { frontMatter, wording } = lesson
  const { say } = wording
  const { title } = frontMatter
  const cards = motionCards(lesson)
  return {
    title: say('motion.title', { title }),
    heading: title,
    print: printWords(lesson),
    lang: frontMatter.lang,
    foot: { title: say('motion.foot', { title }), print: printWords(lesson) },
    cards: cards.map(({ view }) => view),
    several: cards.length > 1,
    keys: { plus: keyHtml('+'), minus: keyHtml('-'), home: keyHtml(say('motion.home-key')) },
    // What could end the element that it stands in is written as its number.
    told: html(JSON.stringify({ cards: cards.map(({ told }) => told) }).replaceAll('<', '\\u003c')),
  }
}

const keyHtml = (name: string): Html => html(`<kbd>${name}</kbd>`)

/** What a page that moves its cards is told of each, and what stands for it where nothing moves. */
export function motionCards(
  lesson: FilledLesson,
): { readonly told: CardTold; readonly view: MotionCardView }[] {
  const moving = lesson.cards.flatMap((proven) => {
    const told = cardTold(proven, lesson.wording)
    return told ? [{ proven, told }] : []
  })
  return moving.map(({ proven, told }, i) => ({ told, view: cardView(proven, told, i, lesson) }))
}

function cardView(
  proven: ProvenCard,
  told: CardTold,
  index: number,
  { wording }: FilledLesson,
): MotionCardView {
  const figures = stills.flatMap(({ show, caption }) => {
    const id = `still-${index + 1}-${show}`
    const figure = drawFigure(show, proven, undefined, wording, { ...room, key: id })
    if ('findings' in figure) return []
    return [
      html(
        toHtml(
          figureHast({ figure, across: false }, [{ type: 'text', value: wording.say(caption) }], show, id),
        ),
      ),
    ]
  })
  return {
    index,
    first: index === 0,
    name: proven.card.name,
    shut: sizeHtml(proven.card.closed, wording),
    lacks: lacksOf(told, wording),
    figures,
  }
}

function lacksOf({ stops }: CardTold, { say }: Wording): string {
  const has = (name: string): boolean => stops.some((stop) => stop.name === name)
  return [
    has('flat') ? '' : say('motion.no-way-from-flat'),
    has('standing') ? '' : say('motion.does-not-open'),
  ]
    .filter((text) => text !== '')
    .join(' ')
}
