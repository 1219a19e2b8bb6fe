import { toHtml } from 'hast-util-to-html'
import { drawFigure } from '../../draw/draw.ts'
import type { FilledLesson, ProvenCard } from '../../lesson/lesson.ts'
import type { CardTold } from '../../motion/told.ts'
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
  /** What the page's own program is told, as JSON. */
  readonly told: Html
}

/** The room of a still figure, in mm at print size. */
const room = { maxWidth: 84, maxHeight: 78 }

const stills = [
  { show: 'flat', caption: 'Flat' },
  { show: 'closed', caption: 'Shut' },
  { show: 'standing', caption: 'Standing' },
] as const

/** The cards of a lesson, ready to be set in motion. A card that does not fold is left out. */
export function motionView(lesson: FilledLesson): MotionView {
  const { frontMatter } = lesson
  const cards = motionCards(lesson)
  return {
    title: `${frontMatter.title}: the fold in motion`,
    heading: frontMatter.title,
    print: printWords(lesson),
    lang: frontMatter.lang,
    foot: { title: `${frontMatter.title}: flat, shut and standing`, print: printWords(lesson) },
    cards: cards.map(({ view }) => view),
    several: cards.length > 1,
    // What could end the element that it stands in is written as its number.
    told: html(JSON.stringify({ cards: cards.map(({ told }) => told) }).replaceAll('<', '\\u003c')),
  }
}

/** What a page that moves its cards is told of each, and what stands for it where nothing moves. */
export function motionCards(
  lesson: FilledLesson,
): { readonly told: CardTold; readonly view: MotionCardView }[] {
  const moving = lesson.cards.flatMap((proven) => {
    const told = cardTold(proven)
    return told ? [{ proven, told }] : []
  })
  return moving.map(({ proven, told }, i) => ({ told, view: cardView(proven, told, i, lesson) }))
}

function cardView(
  proven: ProvenCard,
  told: CardTold,
  index: number,
  { unit, wording }: FilledLesson,
): MotionCardView {
  const figures = stills.flatMap(({ show, caption }) => {
    const id = `still-${index + 1}-${show}`
    const figure = drawFigure(show, proven, undefined, unit, { ...room, key: id })
    if ('findings' in figure) return []
    return [html(toHtml(figureHast({ figure, across: false }, [{ type: 'text', value: caption }], show, id)))]
  })
  return {
    index,
    first: index === 0,
    name: proven.card.name,
    shut: sizeHtml(proven.card.closed, wording),
    lacks: lacksOf(told),
    figures,
  }
}

function lacksOf({ stops }: CardTold): string {
  const has = (name: string): boolean => stops.some((stop) => stop.name === name)
  return [
    has('flat') ? '' : 'No way was found from the flat sheet to the shut card, so it starts shut.',
    has('standing') ? '' : 'How it opens is not known, so it ends shut.',
  ]
    .filter((text) => text !== '')
    .join(' ')
}
