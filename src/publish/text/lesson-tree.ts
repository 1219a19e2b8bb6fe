import type { Root, RootContent } from 'mdast'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { closingAdvice } from '../../lesson/safety/cautions.ts'
import { timeOfSteps } from '../../lesson/time-of-steps.ts'
import { cardRows } from '../../workshop/measures-listing.ts'
import { levelWords, timeText } from '../facts.ts'
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
  const { tree, steps, frontMatter, supplies, unit, grid } = lesson
  const blocks: Blocks = { without, definitions: definitionsIn(tree) }
  const has = (part: Part): boolean => !without.has(part)
  const needed = has('supplies') ? supplyLines(supplies, unit, grid) : []
  const chapters = extras.chapters && has('chapters') ? chaptersOf(lesson) : []
  const credits = has('credits') && frontMatter.credits ? paragraphs([frontMatter.credits]) : []
  return {
    type: 'root',
    children: [
      heading(1, frontMatter.title),
      ...(has('summary') && frontMatter.summary ? paragraphs([frontMatter.summary]) : []),
      ...introBlocks(tree, blocks),
      bullets(factLines(lesson)),
      ...(chapters.length > 0 ? [heading(2, 'Chapters'), chapterLines(chapters)] : []),
      ...(needed.length > 0 ? [heading(2, 'What you need'), bullets(needed)] : []),
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
function factLines({ cards, steps, frontMatter }: FilledLesson): string[] {
  const time = timeText(timeOfSteps(steps), frontMatter.time?.minutes)?.replaceAll('\u00a0', ' ')
  const sizes = cards.map((proven) => {
    const rows = new Map(cardRows(proven).map(([what = '', value = '']) => [what, value]))
    const [standing, depth] = [rows.get('standing'), rows.get('standing depth')]
    const stands = standing && depth ? `; standing ${standing}, ${depth} deep` : ''
    const deep = rows.get('deep when shut')
    return `${cards.length > 1 ? `${proven.card.name}: shut` : 'Shut'} ${rows.get('shut')}${deep ? `, ${deep} deep` : ''}${stands}`
  })
  return [...sizes, levelWords[frontMatter.level] + (time ? `, ${time}` : '')]
}

function pieceLists({ cards, unit }: FilledLesson): RootContent[] {
  return cards.flatMap((proven) => [
    heading(2, cards.length > 1 ? `Pieces to cut: ${proven.card.name}` : 'Pieces to cut'),
    ...paragraphs(['Width × height. Scores are measured with the inside, or the front, facing you.']),
    bullets(pieceLines(proven, unit)),
  ])
}

/** What is to be minded before the first step. It is never left out. */
function cautionBlocks({ cautions, wording }: FilledLesson, own: readonly RootContent[]): RootContent[] {
  if (cautions.length === 0 && own.length === 0) return []
  return [
    heading(2, 'Take care'),
    ...(cautions.length > 0 ? [bullets(cautions.map(({ title, text: said }) => `${title}: ${said}`))] : []),
    ...own,
    ...paragraphs([closingAdvice({ wording })]),
  ]
}
