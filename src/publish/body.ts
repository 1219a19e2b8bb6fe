import type { ElementContent } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { Heading, List, ListItem, Nodes, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import type { Finding } from '../length/finding.ts'
import type { ProvenCard, Step } from '../lesson/lesson.ts'
import { stepNames } from '../lesson/step-names.ts'
import type { Wording } from '../wording/wording.ts'
import { dryingText, minutesText } from './facts.ts'
import { type Draw, figureHast, type Rooms, rooms } from './figure.ts'
import { type Html, html } from './html-text.ts'
import { lessonFigures } from './lesson-figures.ts'
import { type OwnCaution, ownCautions } from './own-cautions.ts'
import { type Pictures, pictureUrl } from './picture-url.ts'
import { definitionsIn, type ProseContext, proseHast, proseHtml } from './prose.ts'
import { type Codes, noCodes, scanHast } from './scan.ts'

/** One step as it is printed: its number in the gutter, its text, its figures beside it or across below it. */
export interface StepView {
  readonly number: number
  /** The first clause of what it says, without its numbers. */
  readonly name: string
  readonly body: Html
  readonly minutes: string | null
  /** `Dries 20 min before step 7.` */
  readonly drying: string | null
  readonly figures: readonly Html[]
  readonly across: readonly Html[]
}

/** A run of steps, or of anything else: one of the two is null. */
export interface BlockView {
  readonly steps: readonly StepView[] | null
  readonly prose: Html | null
}

/** What stands below a heading. */
export interface StageView {
  readonly title: Html
  /** The same as plain text. */
  readonly name: string
  /** Heading level in the page: 2 for the outermost in the lesson. */
  readonly level: 2 | 3 | 4
  readonly blocks: readonly BlockView[]
}

/** The text of a lesson: what stands before the first heading or step, and the stages. */
export interface BodyView {
  readonly intro: Html | null
  /** Steps and more that no heading stands above. */
  readonly before: readonly BlockView[]
  readonly stages: readonly StageView[]
  readonly cautions: readonly OwnCaution[]
  readonly findings: readonly Finding[]
}

/** The text of a lesson, ready for a template. */
export function bodyView(
  tree: Root,
  steps: readonly Step[],
  cards: readonly ProvenCard[],
  wording: Wording,
  draw: Draw,
  pictures: Pictures,
  codes: Codes = noCodes,
  space: Rooms = rooms,
): BodyView {
  const { figures, findings } = lessonFigures(tree, cards, draw, space)
  const depths = headingDepths(tree)
  const definitions = definitionsIn(tree)
  const names = stepNames(tree, wording)
  let scans = 0
  const context = (hideMinutes: boolean, level: ProseContext['level']): ProseContext => ({
    wording,
    definitions,
    hideMinutes,
    level,
    picture: (node) => pictures.get(pictureUrl(node, tree) ?? ''),
    scan: ({ link }, caption) => scanHast(link, caption, `scan-${++scans}`, codes, wording),
    figure(node, caption) {
      const made = figures.get(node)
      return made ? figureHast(made.drawn, caption, node.show, made.id) : captionOnly(caption)
    },
  })
  const prose = context(false, () => undefined)
  const inStep = context(true, () => undefined)

  const stepView = (item: ListItem, number: number): StepView => {
    const beside: Html[] = []
    const across: Html[] = []
    const rest: Nodes[] = []
    for (const node of item.children) {
      const made = node.type === 'figure' ? figures.get(node) : undefined
      if (node.type !== 'figure' || !made) {
        // A figure that cannot be drawn leaves its caption in the text.
        rest.push(node.type === 'figure' ? { type: 'paragraph', children: node.children } : node)
        continue
      }
      const caption = proseHast(node.children, inStep).children as ElementContent[]
      const element = figureHast(made.drawn, caption, node.show, made.id)
      ;(made.drawn.across ? across : beside).push(html(toHtml(element)))
    }
    const { minutes, drying } = steps.find((step) => step.number === number) ?? {}
    return {
      number,
      name: names.get(number) ?? '',
      body: html(proseHtml(rest, inStep)),
      minutes: minutes === undefined ? null : minutesText(minutes, wording),
      drying: drying ? dryingText(drying, wording) : null,
      figures: beside,
      across,
    }
  }

  const blocksOf = (nodes: readonly Nodes[]): BlockView[] => {
    const blocks: BlockView[] = []
    let run: Nodes[] = []
    const flush = (): void => {
      const text = run.length > 0 ? proseHtml(run, prose) : ''
      if (text.trim() !== '') blocks.push({ steps: null, prose: html(text) })
      run = []
    }
    for (const node of nodes) {
      if (!isSteps(node)) {
        run.push(node)
        continue
      }
      flush()
      const numbered = node.children.map((item) => stepView(item, item.data?.step ?? 0))
      const last = blocks.at(-1)
      // Two lists in a row are one run of steps.
      if (last?.steps) blocks.splice(-1, 1, { steps: [...last.steps, ...numbered], prose: null })
      else blocks.push({ steps: numbered, prose: null })
    }
    flush()
    return blocks
  }

  const { opening, parts } = divide(tree)
  const firstSteps = opening.findIndex(isSteps)
  const introNodes = firstSteps < 0 ? opening : opening.slice(0, firstSteps)
  const intro = proseHtml(introNodes, prose)
  return {
    intro: intro.trim() === '' ? null : html(intro),
    before: firstSteps < 0 ? [] : blocksOf(opening.slice(firstSteps)),
    stages: parts.map(({ heading, nodes }) => {
      const title = proseHtml(heading.children, prose)
      return {
        title: html(title),
        name: title.replace(/<[^>]*>/g, ''),
        level: Math.min(2 + depths.indexOf(heading.depth), 4) as 2 | 3 | 4,
        blocks: blocksOf(nodes),
      }
    }),
    cautions: ownCautions(tree, inStep),
    findings,
  }
}

const isSteps = (node: Nodes): node is List =>
  node.type === 'list' && node.children.some((item) => item.data?.step !== undefined)

const captionOnly = (caption: ElementContent[]): ElementContent | undefined =>
  caption.length === 0 ? undefined : { type: 'element', tagName: 'p', properties: {}, children: caption }

/** Depths of the headings at the top of the tree, outermost first: levels of the page never skip one. */
function headingDepths(tree: Root): number[] {
  const depths = new Set<number>()
  visit(tree, 'heading', (node, _, parent) => {
    if (parent === tree) depths.add(node.depth)
  })
  return [...depths].sort((a, b) => a - b)
}

/** A lesson cut at its headings. */
function divide(tree: Root): { opening: Nodes[]; parts: { heading: Heading; nodes: Nodes[] }[] } {
  const opening: Nodes[] = []
  const parts: { heading: Heading; nodes: Nodes[] }[] = []
  for (const node of tree.children) {
    if (node.type === 'heading') parts.push({ heading: node, nodes: [] })
    else (parts.at(-1)?.nodes ?? opening).push(node)
  }
  return { opening, parts }
}
