import { visit } from 'unist-util-visit'
import type { Finding } from '../../length/finding.ts'
import { mainCard } from '../../lesson/figure-target.ts'
import type { FilledLesson, Lesson } from '../../lesson/lesson.ts'
import { shutText } from '../../publish/card-view.ts'
import { figuresOf } from '../../publish/figures-of.ts'
import { pictureNodes, pictureUrl } from '../../publish/picture-url.ts'
import { codesFor } from '../../publish/scan.ts'
import type { ThemePrint } from '../../publish/theme-print.ts'
import { type HandoutView, handoutView } from '../../publish/view.ts'
import { brandBeside } from './brand.ts'
import { curesOf } from './cures.ts'
import type { Beside, CardAt, Found, Look, PageOf, Settings, StepAt } from './engine.ts'
import { lessonAt, readClosed } from './kept-lesson.ts'
import { handoutPage } from './page-of.ts'
import { shownPictures } from './pictures.ts'

/** A theme as the page has it: its templates made into a function. */
export interface PageTheme {
  readonly css: string
  readonly body: (view: HandoutView) => string
  /** How it lays handouts on paper. */
  readonly print: ThemePrint
}

/** A theme that shows every step whole. */
const withSteps = 'step-sheet'

/**
 * All that is seen of a lesson. A lesson with mistakes is shown too, with what could be worked out: its teacher is in the
 * middle of writing it.
 *
 * @param beside what the page has read of what lies beside the lesson.
 */
export async function lookAt(
  text: string,
  settings: Settings,
  beside: Beside,
  themes: { handout(theme: string): PageTheme },
): Promise<Look> {
  const { lesson, filled } = lessonAt(text, settings)
  const codes = await codesFor(filled)
  const { pictures, findings: ofPictures } = shownPictures(filled.tree, beside.pictures)
  const { brand, findings: ofBrand } = await brandBeside(filled.frontMatter.brand, beside)
  const theme = themes.handout(settings.theme)
  const draw = figuresOf(filled)
  const { view, findings: ofFigures } = handoutView(filled, draw, pictures, codes, theme.print.rooms)
  const page = handoutPage(filled, view, brand, theme, settings)
  const stepPage = (): PageOf => {
    const other = themes.handout(withSteps)
    const { view: whole } = handoutView(filled, draw, pictures, codes, other.print.rooms)
    return handoutPage(filled, whole, brand, other, settings)
  }
  const main = mainCard(filled.cards.map(({ card }) => card))
  const refused = readClosed(settings.closed)
  return {
    text,
    title: view.title,
    unit: filled.unit,
    ...(main && { shut: shutText(main, filled.unit) }),
    ...(typeof refused === 'object' && 'refused' in refused && { refused }),
    sizes: filled.frontMatter.sizes.map((size) => size.text),
    findings: [...filled.findings, ...ofPictures, ...ofBrand, ...ofFigures].map((finding) => ({
      ...foundAt(finding, text),
      cures: curesOf(finding, text, { lesson, filled }),
    })),
    page,
    steps: stepsOf(filled, text),
    rows: hasSteps(page) ? page : stepPage(),
    cards: cardsOf(lesson, filled),
    pictures: picturesOf(filled),
  }
}

const hasSteps = ({ body }: PageOf): boolean => body.includes(' class="step')

/** A finding with the stretch of text that it is about: the rest of its line where it names a point only. */
export function foundAt({ place, ...finding }: Finding, text: string): Found {
  const line = place?.line ?? 1
  const column = place?.column ?? 1
  const from = Math.min(place?.offset ?? offsetAt(text, line, column), text.length)
  const end = text.slice(from).search(/[\r\n]/)
  const to = Math.min(place?.end ?? (end < 0 ? text.length : from + end), text.length)
  return { ...finding, line, column, from, to: Math.max(from, to), cures: [] }
}

function offsetAt(text: string, line: number, column: number): number {
  let start = 0
  for (const { index, 0: ending } of text.matchAll(/\r\n?|\n/g)) {
    if (--line < 1) break
    start = index + ending.length
  }
  return start + column - 1
}

function stepsOf({ tree, steps }: FilledLesson, text: string): StepAt[] {
  const spans = new Map<number, { from: number; to: number }>()
  visit(tree, 'listItem', (item) => {
    const number = item.data?.step
    const { start, end } = item.position ?? {}
    if (number !== undefined && start?.offset !== undefined)
      spans.set(number, { from: start.offset, to: end?.offset ?? text.length })
  })
  return steps.flatMap(({ number, stage, minutes }) => {
    const span = spans.get(number)
    return span
      ? [
          {
            number,
            ...span,
            ...(stage !== undefined && { stage }),
            ...(minutes !== undefined && { minutes }),
          },
        ]
      : []
  })
}

const cardsOf = ({ cards: blocks }: Lesson, { cards, unit }: FilledLesson): CardAt[] =>
  blocks.map(({ name, text, place }) => {
    const card = cards.find((one) => one.card.name === name)?.card
    return {
      name,
      from: place.offset,
      to: place.offset + text.length,
      ...(card && { shut: shutText(card, unit) }),
    }
  })

const picturesOf = ({ tree, frontMatter }: FilledLesson): string[] => [
  ...new Set([
    ...pictureNodes(tree).flatMap((node) => pictureUrl(node, tree) ?? []),
    ...(frontMatter.brand?.logo ? [frontMatter.brand.logo.value] : []),
  ]),
]
