import type { Root, RootContent } from 'mdast'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { closingAdvice } from '../../lesson/safety/cautions.ts'
import { timeOfSteps } from '../../lesson/time-of-steps.ts'
import { shutWords, standingOf } from '../card-view.ts'
import { timeText } from '../facts.ts'
import { definitionsIn } from '../prose.ts'
import type { Blocks } from './blocks.ts'
import { type Chapter, chaptersOf } from './chapters.ts'
import type { Part } from './parts.ts'
import { text } from './phrases.ts'
import { pieceLines } from './piece-blocks.ts'
import { introBlocks, ownCautions, stepBlocks } from './step-blocks.ts'
import { supplyLines } from './supply-lines.ts'
import { bullets, heading } from './tree-parts.ts'

/** What stands in a text besides the lesson. */
export interface Extras {
  readonly chapters: boolean
  /** The chart of sizes; empty where none is wanted. */
  readonly sizes: readonly RootContent[]
}

/** A lesson as a Markdown tree for a post: what it is, what it takes, the pieces to cut, and the steps. */
export function lessonTree(lesson: FilledLesson, without: ReadonlySet<Part>, extras: Extras): Root {
  const { tree, steps, frontMatter, supplies, wording, grid } = lesson
  const blocks: Blocks = { without, definitions: definitionsIn(tree), wording }
  const has = (part: Part): boolean => !without.has(part)
  const needed = has('supplies') ? supplyLines(supplies, wording, grid) : []
  const chapters = extras.chapters && has('chapters') ? chaptersOf(lesson) : []
  const credits = has('credits') && frontMatter.credits ? paragraphs([frontMatter.credits]) : []
  return {
    type: 'root',
    children: [
      heading(1, frontMatter.title),
      ...(has('summary') && frontMatter.summary ? paragraphs([frontMatter.summary]) : []),
      ...introBlocks(tree, blocks),
      bullets(factLines(lesson)),
      ...(chapters.length > 0 ? [heading(2, wording.say('text.chapters')), chapterLines(chapters)] : []),
      ...(needed.length > 0 ? [heading(2, wording.say('handout.what-you-need')), bullets(needed)] : []),
      ...pieceLists(lesson),
      ...cautionBlocks(lesson, has('steps') ? [] : ownCautions(tree, blocks)),
      ...(has('steps') ? stepBlocks(tree, steps, blocks) : []),
      ...(has('sizes') ? extras.sizes : []),
      ...credits,
    ],
  }
}

const paragraphs = (lines: readonly string[]): RootContent[] =>
  lines.map((line) => ({ type: 'paragraph', children: [text(line)] }))

/** Lines of one paragraph: what shows films looks for a time at the beginning of a line. */
const chapterLines = (chapters: readonly Chapter[]): RootContent => ({
  type: 'paragraph',
  children: chapters.flatMap(({ time, name }, i) => [
    ...(i > 0 ? [{ type: 'break' as const }] : []),
    text(`${time} ${name}`),
  ]),
})

/** Its level and time, and for each card how large it is shut and standing. */
function factLines({ cards, steps, frontMatter, wording, grid }: FilledLesson): string[] {
  const time = timeText(timeOfSteps(steps), frontMatter.time?.minutes, wording)?.replaceAll('\u00a0', ' ')
  const sizes = cards.map((proven) => {
    const size = shutWords(proven, wording, grid)
    const shut =
      cards.length > 1
        ? wording.say('text.shut-of', { card: wording.name(proven.card.name), size })
        : wording.say('text.shut', { size })
    const stands = standingOf(proven.proof, grid)
    return stands
      ? `${shut}; ${wording.say('text.standing', { size: wording.size(stands), depth: wording.length(stands.depth) })}`
      : shut
  })
  const level = wording.say('handout.level', { level: frontMatter.level })
  return [...sizes, time ? wording.say('text.level-time', { level, time }) : level]
}

function pieceLists({ cards, wording }: FilledLesson): RootContent[] {
  return cards.flatMap((proven) => [
    heading(
      2,
      cards.length > 1
        ? wording.say('handout.pieces-to-cut-of', { card: wording.name(proven.card.name) })
        : wording.say('handout.pieces-to-cut'),
    ),
    ...paragraphs([wording.say('text.pieces-how')]),
    bullets(pieceLines(proven, wording)),
  ])
}

/** What is to be minded before the first step. It is never left out. */
function cautionBlocks({ cautions, wording }: FilledLesson, own: readonly RootContent[]): RootContent[] {
  if (cautions.length === 0 && own.length === 0) return []
  const said = cautions.map(({ title, text: words }) =>
    wording.say('text.item', { name: title, text: words }),
  )
  return [
    heading(2, wording.say('handout.take-care')),
    ...(said.length > 0 ? [bullets(said)] : []),
    ...own,
    ...paragraphs([closingAdvice({ wording })]),
  ]
}
