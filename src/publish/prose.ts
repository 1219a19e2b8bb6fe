import type { ElementContent, Root as HastRoot } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { Definition, Heading, Image, ImageReference, InlineCode, Link, Nodes, Root } from 'mdast'
import remarkRehype, { type Options } from 'remark-rehype'
import { visit } from 'unist-util-visit'
import { VFile } from 'vfile'
import type {
  CalloutNode,
  DryingNode,
  FigureNode,
  MeasureNode,
  MinutesNode,
  ScanNode,
} from '../lesson/nodes.ts'
import type { Wording } from '../wording/wording.ts'
import { calloutHast } from './callout.ts'
import { minutesText } from './facts.ts'
import { isShort } from './kept.ts'
import { measureSpan } from './measure.ts'

type Handlers = NonNullable<Options['handlers']>
type Handler = NonNullable<Handlers[keyof Handlers]>
type State = Parameters<Handler>[0]
type Made = ReturnType<Handler>

/** What prose needs to know of the rest of the lesson. */
export interface ProseContext {
  readonly wording: Wording
  /** What stands for a picture: its data, or undefined when it cannot be shown. */
  readonly picture: (node: Image | ImageReference) => string | undefined
  /** A figure in the middle of the text. */
  readonly figure: (node: FigureNode, caption: ElementContent[]) => ElementContent | undefined
  /** A code to scan. */
  readonly scan: (node: ScanNode, caption: ElementContent[]) => ElementContent
  /** Heading level of a heading in the text; undefined makes it a bold line. */
  readonly level: (depth: number) => 2 | 3 | 4 | undefined
  /** Whether minutes are told elsewhere. */
  readonly hideMinutes: boolean
  /** What references in the text point to: the definitions of the whole lesson. */
  readonly definitions: readonly Definition[]
}

/** Addresses that a reader may follow. A link to anything else stays text: a stranger's lesson runs nothing. */
const followed = /^(https?:|mailto:)/i

/**
 * Markdown as HTML. Raw HTML in it is left out.
 *
 * @param nodes blocks or phrases of a lesson.
 */
export const proseHtml = (nodes: readonly Nodes[], context: ProseContext): string =>
  toHtml(proseHast(nodes, context))

/** The same as a tree. */
export function proseHast(nodes: readonly Nodes[], context: ProseContext): HastRoot {
  // References only work in the tree that defines what they refer to.
  const tree = {
    type: 'root',
    children: [...nodes.filter((n) => n.type !== 'definition'), ...context.definitions],
  } as Root
  const root = remarkRehype({ handlers: handlers(context) })(tree, new VFile()) as HastRoot
  return trimmed(root)
}

/** The definitions of a lesson, wherever they stand. */
export function definitionsIn(tree: Root): Definition[] {
  const definitions: Definition[] = []
  visit(tree, 'definition', (node) => {
    definitions.push(node)
  })
  return definitions
}

const handlers = (context: ProseContext): Record<string, Handler> => ({
  measure: (_, node: MeasureNode) =>
    node.text === undefined
      ? h('span', { className: ['unfilled'] }, `{${node.value}}`)
      : (measureSpan(node.text) as Made),
  minutes: (_, { minutes }: MinutesNode) =>
    context.hideMinutes
      ? undefined
      : h('span', { className: ['minutes'] }, minutesText(minutes, context.wording)),
  drying: (_, { minutes }: DryingNode) =>
    context.hideMinutes
      ? undefined
      : h(
          'span',
          { className: ['minutes'] },
          context.wording.say('handout.dries-within', { time: minutesText(minutes, context.wording) }),
        ),
  callout(state, node: CalloutNode) {
    const [first, ...rest] = node.children
    const titled = first?.type === 'paragraph' && first.data !== undefined && 'directiveLabel' in first.data
    const body = { ...node, children: titled ? rest : node.children }
    return calloutHast(node.kind, titled ? all(state, first) : [], all(state, body), context.wording)
  },
  figure: (state, node: FigureNode) => context.figure(node, all(state, node)),
  scan: (state, node: ScanNode) => context.scan(node, all(state, node)),
  heading(state, node: Heading) {
    const level = context.level(node.depth)
    return level === undefined
      ? h('p', { className: ['minor'] }, h('strong', all(state, node)))
      : h(`h${level}`, all(state, node))
  },
  inlineCode: (_, { value }: InlineCode) =>
    h('code', isShort(value) ? { className: ['kept'] } : {}, value.replace(/\r\n?|\n/g, ' ')),
  link: (state, node: Link) =>
    followed.test(node.url) ? h('a', { href: node.url }, all(state, node)) : (all(state, node) as Made),
  linkReference(state, node) {
    const url = state.definitionById.get(String(node.identifier).toUpperCase())?.url
    if (url === undefined) return all(state, node) as Made
    return followed.test(url) ? h('a', { href: url }, all(state, node)) : (all(state, node) as Made)
  },
  image: (_, node: Image) => picture(node, context),
  imageReference: (_, node: ImageReference) => picture(node, context),
})

function picture(node: Image | ImageReference, { picture: dataOf, wording }: ProseContext): ElementContent {
  const src = dataOf(node)
  const alt = node.alt ?? ''
  if (src !== undefined) return h('img', { className: ['picture'], src, alt })
  const words =
    alt === '' ? wording.say('handout.picture-missing') : wording.say('handout.picture-missing-of', { alt })
  return h('span', { className: ['missing'] }, words)
}

const all = (state: State, node: Nodes): ElementContent[] => state.all(node as never) as ElementContent[]

/** Without the paragraphs that held nothing but a time, and without spaces where a time stood at an end. */
function trimmed(root: HastRoot): HastRoot {
  visit(root, 'element', (node, index, parent) => {
    if (node.tagName !== 'p' && node.tagName !== 'li') return undefined
    const last = node.children.at(-1)
    if (last?.type === 'text' && /\S/.test(last.value)) last.value = last.value.trimEnd()
    if (node.tagName === 'li') return undefined
    const empty = node.children.every((child) => child.type === 'text' && child.value.trim() === '')
    if (!empty || !parent || index === undefined) return undefined
    parent.children.splice(index, 1)
    return index
  })
  return root
}
