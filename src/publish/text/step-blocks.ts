import type { BlockContent, Heading, List, ListItem, Nodes, Root, RootContent } from 'mdast'
import type { Step } from '../../lesson/lesson.ts'
import { dryingText } from '../facts.ts'
import { type Blocks, calloutBlocks, plainBlocks } from './blocks.ts'
import { firstSentence } from './first-sentence.ts'
import { phrases, text } from './phrases.ts'

/** The lesson from its first step on, with its headings: stages stand one level below the title. */
export function stepBlocks(tree: Root, steps: readonly Step[], blocks: Blocks): RootContent[] {
  const depths = [...new Set(headingsOf(tree).map(({ depth }) => depth))].sort((a, b) => a - b)
  const shown = tree.children.slice(firstStage(tree)).flatMap((node): RootContent[] => {
    if (isSteps(node)) return [stepList(node, steps, blocks)]
    if (node.type === 'heading') {
      const depth = Math.min(2 + depths.indexOf(node.depth), 4) as Heading['depth']
      return [{ type: 'heading', depth, children: phrases(node.children, blocks.definitions) }]
    }
    if (node.type === 'callout') return calloutBlocks(node, blocks)
    return blocks.without.has('words') && node.type !== 'scan' ? [] : plainBlocks([node], blocks)
  })
  return shown.filter((node, i) => node.type !== 'heading' || heads(node, shown[i + 1]))
}

/** Whether anything is left below a heading. */
const heads = (heading: Heading, next: RootContent | undefined): boolean =>
  next !== undefined && (next.type !== 'heading' || next.depth > heading.depth)

/** What stands before the first step: what the lesson is about. */
export function introBlocks(tree: Root, blocks: Blocks): BlockContent[] {
  return tree.children.slice(0, firstStage(tree)).flatMap((node) => {
    if (node.type === 'callout') return calloutBlocks(node, blocks)
    return blocks.without.has('words') ? [] : plainBlocks([node], blocks)
  })
}

/** The cautions that the lesson gives itself: they stay where its steps are left out. */
export function ownCautions(tree: Root, blocks: Blocks): BlockContent[] {
  const below = (node: Nodes): BlockContent[] => {
    if (node.type === 'callout') return node.kind === 'caution' ? calloutBlocks(node, blocks) : []
    return 'children' in node ? node.children.flatMap(below) : []
  }
  return tree.children.slice(firstStage(tree)).flatMap(below)
}

/** Where the steps begin: at the heading above the first of them. Where there are none, at the end. */
function firstStage(tree: Root): number {
  const from = tree.children.findIndex(isSteps)
  if (from < 0) return tree.children.length
  const above = tree.children.slice(0, from).findLastIndex(({ type }) => type === 'heading')
  return above < 0 ? from : above
}

const isSteps = (node: Nodes): node is List =>
  node.type === 'list' && node.children.some(({ data }) => data?.step !== undefined)

const headingsOf = (tree: Root): Heading[] => tree.children.filter((node) => node.type === 'heading')

function stepList(list: List, steps: readonly Step[], blocks: Blocks): List {
  return {
    type: 'list',
    ordered: true,
    start: list.children[0]?.data?.step ?? 1,
    spread: false,
    children: list.children.map((item) => stepItem(item, steps, blocks)),
  }
}

function stepItem(item: ListItem, steps: readonly Step[], blocks: Blocks): ListItem {
  const short = blocks.without.has('sentences')
  const all = short ? shortened(item, blocks) : plainBlocks(item.children, blocks)
  const drying = steps.find(({ number }) => number === item.data?.step)?.drying
  const dries = drying ? dryingText(drying, blocks.wording).replaceAll('\u00a0', ' ') : undefined
  const children: BlockContent[] = [
    ...all,
    ...(dries === undefined ? [] : [{ type: 'paragraph' as const, children: [text(dries)] }]),
  ]
  return { type: 'listItem', spread: false, children }
}

/** The first sentence of a step, and all of its cautions. */
function shortened({ children }: ListItem, blocks: Blocks): BlockContent[] {
  const [first] = plainBlocks(children.slice(0, 1), blocks)
  const kept = children
    .slice(1)
    .flatMap((node) => (node.type === 'callout' ? calloutBlocks(node, blocks) : []))
  return [...(first?.type === 'paragraph' ? firstSentence(first) : first ? [first] : []), ...kept]
}
