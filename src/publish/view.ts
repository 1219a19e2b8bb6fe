import { toHtml } from 'hast-util-to-html'
import type { Root } from 'mdast'
import { visit } from 'unist-util-visit'
import type { Card } from '../card/card.ts'
import type { Finding } from '../length/finding.ts'
import { mainCard } from '../lesson/figure-target.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import { timeOfSteps } from '../lesson/time-of-steps.ts'
import { type BlockView, bodyView, type StageView } from './body.ts'
import { type CardView, cardView } from './card-view.ts'
import { timeText } from './facts.ts'
import { type Draw, figureHast, fitFigure, type Rooms, rooms } from './figure.ts'
import { type Html, html } from './html-text.ts'
import { measureText } from './measure.ts'
import { measureHtml } from './measure-html.ts'
import { type NeedGroup, needsView } from './needs.ts'
import type { OwnCaution } from './own-cautions.ts'
import type { Pictures } from './picture-url.ts'
import { type SafetyView, safetyView } from './safety.ts'
import { type Codes, noCodes, videoHast } from './scan.ts'

/**
 * Everything a template gets: text, which it escapes, and `Html`, which is ours. What a lesson does not have is null or
 * an empty list, never missing.
 */
export interface HandoutView {
  readonly title: string
  readonly lang: string
  readonly summary: string | null
  readonly level: string
  readonly time: string | null
  /** `inches` or `millimetres`, in the language of the lesson. */
  readonly unit: string
  /** What the ruler must show: `1/16 in`. */
  readonly grid: Html
  /** For the foot of each page: which print this is, in the middle, or short beside the page number. */
  readonly foot: { readonly title: string; readonly print: string; readonly beside?: string }
  readonly cover: Html | null
  readonly needs: readonly NeedGroup[]
  readonly cards: readonly CardView[]
  readonly several: boolean
  readonly intro: Html | null
  /** What is to be minded before the first step, if the lesson does not say it all itself. */
  readonly safety: SafetyView | null
  /** What the lesson itself says to mind, for a theme that does not print its steps whole. */
  readonly cautions: readonly OwnCaution[]
  readonly before: readonly BlockView[]
  readonly stages: readonly StageView[]
  /** Whether there is an envelope that the lesson does not speak of itself. */
  readonly envelope: boolean
  /** The video's link with its code. */
  readonly video: Html | null
  readonly credits: string | null
}

/**
 * The view of a lesson.
 *
 * @param draw draws figures of its cards.
 * @param pictures data of the pictures it shows.
 * @param codes draws the codes of its links.
 * @param space what room its figures have.
 */
export function handoutView(
  lesson: FilledLesson,
  draw: Draw,
  pictures: Pictures = new Map(),
  codes: Codes = noCodes,
  space: Rooms = rooms,
): { view: HandoutView; findings: Finding[] } {
  const { frontMatter, wording, grid, tree, steps } = lesson
  const cards = lesson.cards.map(({ card }) => card)
  const main = mainCard(cards)
  const body = bodyView(tree, steps, lesson.cards, wording, draw, pictures, codes, space)
  const minutes = timeOfSteps(steps)
  const untold = cards.some(({ envelope }) => envelope) && !speaksOfEnvelope(tree)
  const several = cards.length > 1
  const ownEnvelope = ({ name, envelope }: Card, i: number): Html | null =>
    envelope
      ? envelopeFigure(draw, space, several ? name : undefined, several ? `envelope-${i + 1}` : 'envelope')
      : null
  const view: HandoutView = {
    title: frontMatter.title,
    lang: frontMatter.lang,
    summary: frontMatter.summary ?? null,
    level: wording.say('handout.level', { level: frontMatter.level }),
    time: timeText(minutes, frontMatter.time?.minutes, wording),
    unit: wording.say(unitKeys[wording.unit]),
    grid: measureHtml(wording.grid(grid)),
    foot: { title: frontMatter.title, print: printWords(lesson) },
    cover: main ? coverOf(draw, space) : null,
    needs: needsView(cards, lesson.supplies, wording, grid),
    cards: lesson.cards.map((card, i) =>
      cardView(card, wording, grid, untold ? ownEnvelope(card.card, i) : null),
    ),
    several,
    intro: body.intro,
    safety: safetyView(lesson),
    cautions: body.cautions,
    before: body.before,
    stages: body.stages,
    envelope: untold,
    video:
      frontMatter.video === undefined ? null : html(toHtml(videoHast(frontMatter.video, codes, wording))),
    credits: frontMatter.credits ?? null,
  }
  return { view, findings: [...body.findings] }
}

/** The same where there is little room: the size, which has its unit behind it. */
export function shortPrintWords(lesson: Pick<FilledLesson, 'cards' | 'wording'>): string {
  const main = mainCard(lesson.cards.map(({ card }) => card))
  return main ? measureText(lesson.wording.size(main.closed)) : printWords(lesson)
}

/** Which print this is: its size and its unit. */
export function printWords({ cards, wording }: Pick<FilledLesson, 'cards' | 'wording'>): string {
  const main = mainCard(cards.map(({ card }) => card))
  const { unit } = wording
  if (!main) return wording.say('handout.print-without-card', { unit })
  return wording.say('handout.print', { unit, size: measureText(wording.size(main.closed)) })
}

const unitKeys = { in: 'measures.inches', mm: 'measures.millimetres' } as const

/** What the lesson becomes, as large as the first page allows: standing, or shut when it does not stand. */
function coverOf(draw: Draw, space: Rooms): Html | null {
  for (const show of ['standing', 'closed'] as const) {
    const drawn = draw(show, undefined, { ...space.cover, key: 'cover' })
    if (!('findings' in drawn))
      return html(toHtml(figureHast({ figure: drawn, across: false }, [], show, 'cover')))
  }
  return null
}

function envelopeFigure(draw: Draw, space: Rooms, of: string | undefined, id: string): Html | null {
  const fitted = fitFigure(draw, 'envelope', of, { key: id }, space)
  return 'findings' in fitted ? null : html(toHtml(figureHast(fitted, [], 'envelope', id)))
}

/** Whether a lesson says itself how its envelope is made. */
function speaksOfEnvelope(tree: Root): boolean {
  let found = false
  visit(tree, (node) => {
    if (node.type === 'measure') found ||= /\benvelope\./.test(node.value)
    if (node.type === 'figure') found ||= node.show === 'envelope'
  })
  return found
}
